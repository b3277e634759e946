import { html, nothing, type TemplateResult } from 'lit';
import type * as z from 'zod/mini';
import { type Side, SIDES } from '../../anatomy/index.js';
import { readRefill } from '../../bedside/index.js';
import {
  AGE_BANDS,
  type AgeBand,
  ARM_LEVELS,
  type ArmInspection,
  DIGITS,
  foundDeficit,
  foundInfection,
  foundUlcer,
  type Inspection,
  inspectionSchema,
  LEG_LEVELS,
  type LegInspection,
  tidyInspection,
} from '../../examination/index.js';
import { partStyles } from '../common/part-styles.js';
import { oneOf, property } from '../common/property.js';
import { type FieldRow, type LimbKind, SidedPart } from '../common/sided-part.js';
import { type SidedRow, sidedRows, sidedRowStyles } from '../common/sided-rows.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';

type Found = Partial<
  Omit<LegInspection, 'temperatureLevel'> & Pick<ArmInspection, 'temperatureLevel' | 'vertebralFlow'>
>;
type Field = keyof LegInspection | keyof ArmInspection;
type When = (found: Found) => boolean;

const LONGEST_REFILL = 60;
const WIDEST_REDNESS = 50;
const WIDEST_ULCER = 500;
const COMPARTMENT = [
  'stretchPain',
  'painOutOfProportion',
  'reperfused',
  'injurySigns',
  'falseAneurysmSigns',
] as const;
const VEINS = ['varices', 'pigment', 'thrombosisSigns'] as const;
const REST = [
  'hair',
  'nails',
  'muscle',
  'oedema',
  'lymphoedema',
  'lymphNodes',
  'charcotSuspected',
  'couldNotExamine',
  'note',
] as const;

/**
 * What is seen and touched on each limb: skin, nutrition, wounds and infection, movement and feeling, compartments and injury, veins,
 * and the digits one by one. Nothing is compulsory; what depends on a finding appears with it, and what is seldom needed is folded away
 * until it holds something.
 *
 * @tag limb-inspection
 * @attr value - The inspection as JSON; what a form reset returns to.
 */
export class LimbInspectionElement extends SidedPart<Inspection> {
  static override styles = [tokenStyles, controlStyles, unreadStyles, partStyles, sidedRowStyles];

  /** Age of the patient, for the usual refill time. */
  @property({ attribute: false, shape: oneOf(AGE_BANDS) }) age: AgeBand | undefined = undefined;

  protected override get schema(): z.ZodMiniType<Inspection> {
    return inspectionSchema;
  }

  /** Removes what depends on a finding that was removed. */
  protected override tidied(next: Inspection | undefined): Inspection | undefined {
    return tidyInspection(next);
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { inspection: words } = this.words;
    const main = (kind: LimbKind): SidedRow[] => [
      ...this.#skin(kind),
      ...this.#nerves(kind),
      ...this.#wounds(kind),
      ...this.#rest(kind),
    ];
    const folds = (kind: LimbKind) => [
      {
        heading: words.compartmentOf[kind],
        rows: this.#compartment(kind),
        folded: !this.#holds(kind, COMPARTMENT),
      },
      { heading: words.digitsOf[kind], rows: this.#digits(kind), folded: !this.#holds(kind, ['digits']) },
    ];
    return html`${sidedRows(
      [
        { heading: words.skin, rows: this.#skin('leg') },
        { heading: words.nerves, rows: this.#nerves('leg') },
        { heading: words.wounds, rows: this.#wounds('leg') },
        ...folds('leg'),
        { heading: words.veins, rows: this.#veins(), folded: !this.#holds('leg', VEINS) },
        { heading: words.rest, rows: this.#rest('leg'), folded: !this.#holds('leg', REST) },
        { heading: this.words.whole.arms, rows: main('arm'), folded: this.value?.arm === undefined },
        ...folds('arm'),
      ],
      this.shown,
      this.show,
      this.words,
    )}`;
  }

  #holds(kind: LimbKind, fields: readonly Field[]): boolean {
    return SIDES.some((side) => fields.some((field) => this.#found(kind, side)[field] !== undefined));
  }

  #found(kind: LimbKind, side: Side): Found {
    return (this.value?.[kind]?.[side] ?? {}) as Found;
  }

  #at(kind: LimbKind, field: Field, label: string, when?: When): FieldRow {
    return {
      label,
      kind,
      at: (side) => [kind, side, field],
      ...(when && { where: (side: Side) => when(this.#found(kind, side)) }),
    };
  }

  /** A field that holds one of the words of its choice. */
  #choose<K extends string>(
    kind: LimbKind,
    field: Field,
    { label, words }: { readonly label: string; readonly words: Readonly<Record<K, string>> },
    when?: When,
  ): SidedRow {
    return this.wordRow(this.#at(kind, field, label, when), words);
  }

  /** The refill time with the limit it is compared with. */
  #refill(kind: LimbKind): SidedRow {
    const { inspection: words } = this.words;
    const row = this.numberRow(this.#at(kind, 'refill', words.refill), words.seconds, LONGEST_REFILL);
    return {
      ...row,
      how: words.refillHow,
      cell: (side) => {
        const { refill } = this.#found(kind, side);
        // One template with and without a number, or the field would be recreated while the user types.
        return html`${row.cell(side)} ${refill === undefined ? nothing : this.#refillSaid(refill)}`;
      },
    };
  }

  #refillSaid(refill: number): TemplateResult {
    const { code, limit } = readRefill(refill, this.age);
    return html`<span class="hint">${this.words.inspection.refillSaid(code, limit)}</span>`;
  }

  #skin(kind: LimbKind): SidedRow[] {
    const { inspection: words } = this.words;
    const levels = kind === 'leg' ? LEG_LEVELS : ARM_LEVELS;
    return [
      this.#choose(kind, 'colour', words.colour),
      this.#choose(kind, 'temperature', words.temperature),
      this.wordRow(
        this.#at(
          kind,
          'temperatureLevel',
          words.temperatureLevel,
          ({ temperature }) => temperature === 'cool' || temperature === 'cold',
        ),
        Object.fromEntries(levels.map((level) => [level, words.levels[level]])),
      ),
      this.#refill(kind),
    ];
  }

  #nerves(kind: LimbKind): SidedRow[] {
    const { inspection: words } = this.words;
    return [
      this.wordRow(this.#at(kind, 'sensation', words.sensation.label), words.sensationOptions[kind]),
      this.#choose(kind, 'movement', words.movement),
      this.#choose(kind, 'venousDoppler', words.venousDoppler),
      this.marksRow(
        {
          label: words.deficit,
          kind,
          at: (side) => [kind, side],
          where: (side) => foundDeficit(this.#found(kind, side)),
        },
        { deficitKnown: words.deficitKnown },
      ),
      ...(kind === 'arm' ? [this.#choose(kind, 'vertebralFlow', words.vertebralFlow)] : []),
      ...(kind === 'leg' ? [this.#choose(kind, 'monofilament', words.filament)] : []),
    ];
  }

  #wounds(kind: LimbKind): SidedRow[] {
    const { inspection: words } = this.words;
    const at = (field: Field, label: string, when?: When): FieldRow => this.#at(kind, field, label, when);
    return [
      this.#choose(kind, 'ulcer', words.ulcer),
      this.#choose(
        kind,
        'ulcerPlace',
        words.ulcerPlace,
        ({ ulcer }) => ulcer !== undefined && ulcer !== 'none',
      ),
      this.#choose(kind, 'ulcerCause', words.ulcerCause, foundUlcer),
      this.numberRow(at('ulcerSizeMm', words.ulcerSize, foundUlcer), words.millimetres, WIDEST_ULCER),
      this.yesNoRow(at('probeToBone', words.probeToBone, foundUlcer)),
      this.#choose(kind, 'gangrene', words.gangrene),
      this.wordRow(
        at(
          'gangreneExtent',
          words.gangreneExtent.label,
          ({ gangrene }) => gangrene === 'wet' || gangrene === 'dry',
        ),
        words.extentOptions[kind],
      ),
      this.wordsRow(at('infection', words.infection.label), words.infection.words, words.noInfection),
      this.numberRow(
        at('rednessCm', words.rednessCm, ({ infection }) => infection?.includes('redness') === true),
        words.centimetres,
        WIDEST_REDNESS,
      ),
      this.yesNoRow(at('deepInfection', words.deepInfection, foundInfection)),
      this.wordsRow(
        at('systemic', words.systemic.label, foundInfection),
        words.systemicShort,
        words.noInfection,
      ),
    ];
  }

  #compartment(kind: LimbKind): SidedRow[] {
    const { inspection: words } = this.words;
    const none = words.noInfection;
    return [
      this.yesNoRow(this.#at(kind, 'stretchPain', words.stretchPain)),
      this.yesNoRow(this.#at(kind, 'painOutOfProportion', words.outOfProportion)),
      this.marksRow(
        { label: words.flow, kind, at: (side) => [kind, side] },
        { reperfused: words.reperfused },
      ),
      this.wordsRow(this.#at(kind, 'injurySigns', words.injurySigns), words.injuryOptions[kind], none),
      this.wordsRow(
        this.#at(kind, 'falseAneurysmSigns', words.falseAneurysm),
        words.falseAneurysmOptions,
        none,
      ),
      ...(kind === 'arm'
        ? [
            this.wordsRow(
              this.#at(kind, 'thrombosisSigns', words.thrombosis.label),
              words.thrombosis.words,
              none,
            ),
          ]
        : []),
    ];
  }

  #digits(kind: LimbKind): SidedRow[] {
    const { inspection: words } = this.words;
    return DIGITS.map((digit) =>
      this.wordRow(
        { label: words.digits[kind][digit], kind, at: (side) => [kind, side, 'digits', digit] },
        words.digitStates,
      ),
    );
  }

  #veins(): SidedRow[] {
    const { inspection: words } = this.words;
    return [
      this.yesNoRow(this.#at('leg', 'varices', words.varices)),
      this.yesNoRow(this.#at('leg', 'pigment', words.pigment)),
      this.wordsRow(
        this.#at('leg', 'thrombosisSigns', words.thrombosis.label),
        words.thrombosis.words,
        words.noInfection,
      ),
    ];
  }

  #rest(kind: LimbKind): SidedRow[] {
    const { inspection: words } = this.words;
    return [
      this.#choose(kind, 'hair', words.hair),
      this.#choose(kind, 'nails', words.nails),
      this.#choose(kind, 'muscle', words.muscle),
      this.#choose(kind, 'oedema', words.oedema),
      this.#choose(kind, 'lymphoedema', words.lymphoedema),
      this.#choose(kind, 'lymphNodes', words.lymphNodes),
      ...(kind === 'leg' ? [this.yesNoRow(this.#at(kind, 'charcotSuspected', words.charcot))] : []),
      this.wordRow(
        this.#at(kind, 'couldNotExamine', words.couldNotExamine),
        this.mapWords.examination.reasons,
      ),
      this.textRow(this.#at(kind, 'note', words.note)),
    ];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-inspection': LimbInspectionElement;
  }
}
