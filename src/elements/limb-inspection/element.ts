import { html, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type * as z from 'zod/mini';
import type { Side } from '../../anatomy/index.js';
import { readRefill } from '../../bedside/index.js';
import {
  type AgeBand,
  ARM_LEVELS,
  fieldAt,
  type Inspection,
  inspectionSchema,
  LEG_LEVELS,
  type LimbInspection,
  LONGEST_TEXT,
  patchAt,
} from '../../examination/index.js';
import { choices, optionsOf, toggles } from '../common/choices.js';
import { numberField, selectField, textField } from '../common/fields.js';
import { PartElement } from '../common/part-element.js';
import { partStyles } from '../common/part-styles.js';
import { type SidedRow, sidedRows, sidedRowStyles } from '../common/sided-rows.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';

type Kind = 'leg' | 'arm';
/** Above this number of options a select replaces the buttons. */
const MOST_BUTTONS = 6;
type Cell = TemplateResult | typeof nothing;
const LONGEST_REFILL = 60;
const REST = ['hair', 'nails', 'muscle', 'oedema', 'lymphNodes', 'couldNotExamine', 'note'] as const;
const WIDEST_REDNESS = 50;

/**
 * What is seen and touched on each limb: skin, nutrition, wounds and infection, movement and feeling. Nothing is compulsory, and what depends
 * on a finding appears with it.
 *
 * @tag limb-inspection
 * @attr value - The inspection as JSON; what a form reset returns to.
 * @fires input - A person changed something.
 * @fires change - A person changed something.
 */
export class LimbInspectionElement extends PartElement<Inspection> {
  static override styles = [tokenStyles, controlStyles, unreadStyles, partStyles, sidedRowStyles];

  /** Age of the patient, for the usual refill time. */
  @property({ attribute: false }) age: AgeBand | undefined;
  @state() private shown: Side = 'right';

  protected override get schema(): z.ZodMiniType<Inspection> {
    return inspectionSchema;
  }

  /** Removes what depends on a finding that was removed. */
  protected override tidied(next: Inspection | undefined): Inspection | undefined {
    let tidy = next;
    for (const kind of ['leg', 'arm'] as const)
      for (const side of ['right', 'left'] as const) {
        const f = next?.[kind]?.[side];
        const drop = (field: string, gone: boolean): void => {
          if (gone) tidy = patchAt(tidy, [kind, side, field], undefined);
        };
        drop('temperatureLevel', !f?.temperature || f.temperature === 'warm');
        drop('ulcerPlace', !f?.ulcer || f.ulcer === 'none');
        drop('gangreneExtent', !f?.gangrene || f.gangrene === 'none');
        drop('rednessCm', !f?.infection?.includes('redness'));
        drop('deepInfection', !f?.infection?.length);
        drop('systemic', !f?.infection?.length);
      }
    return tidy;
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { inspection: words } = this.words;
    const show = (side: Side): void => void (this.shown = side);
    const all = (kind: Kind): SidedRow[] => [
      ...this.#skin(kind),
      ...this.#nerves(kind),
      ...this.#wounds(kind),
      ...this.#rest(kind),
    ];
    return html`${sidedRows(
      [
        { heading: words.skin, rows: this.#skin('leg') },
        { heading: words.nerves, rows: this.#nerves('leg') },
        { heading: words.wounds, rows: this.#wounds('leg') },
        { heading: words.rest, rows: this.#rest('leg'), folded: !this.#hasRest },
        { heading: this.words.whole.arms, rows: all('arm'), folded: this.value?.arm === undefined },
      ],
      this.shown,
      show,
      this.words,
    )}`;
  }

  get #hasRest(): boolean {
    return (['right', 'left'] as const).some((side) =>
      REST.some((field) => this.value?.leg?.[side]?.[field]),
    );
  }

  #found(kind: Kind, side: Side): Partial<LimbInspection> {
    return this.value?.[kind]?.[side] ?? {};
  }

  #label(what: string, kind: Kind, side: Side): string {
    return `${what}, ${this.mapWords.anatomy.limbs[`${side} ${kind}`]}`;
  }

  /** A row of words of which one can be chosen. */
  #row(
    kind: Kind,
    field: keyof LimbInspection | 'temperatureLevel',
    label: string,
    words: Readonly<Record<string, string>>,
    where: (found: Partial<LimbInspection>) => boolean = () => true,
  ): SidedRow {
    return {
      label,
      cell: (side) =>
        where(this.#found(kind, side))
          ? this.#pick(kind, side, field, this.#label(label, kind, side), optionsOf(words))
          : nothing,
    };
  }

  /** Buttons for few options, a select for many. */
  #pick(
    kind: Kind,
    side: Side,
    field: string,
    label: string,
    options: (readonly [string, string])[],
  ): TemplateResult {
    const value = fieldAt(this.value, [kind, side, field]) as string | undefined;
    const disabled = !this.editable;
    const set = (picked: string | undefined): boolean => this.edit([kind, side, field], picked);
    return this.known([kind, side, field], label, () =>
      options.length > MOST_BUTTONS
        ? selectField({
            label,
            quiet: true,
            empty: this.words.whole.notStated,
            options,
            value,
            disabled,
            set,
          })
        : choices({ label, options, value, disabled, pick: set }),
    );
  }

  #numberRow(
    kind: Kind,
    field: 'refill' | 'rednessCm',
    label: string,
    unit: string,
    max: number,
    where: (found: Partial<LimbInspection>) => boolean = () => true,
  ): SidedRow {
    return {
      label,
      cell: (side) => {
        if (!where(this.#found(kind, side))) return nothing;
        const id = `${kind}-${side}-${field}`;
        return numberField({
          id,
          label: this.#label(label, kind, side),
          quiet: true,
          unit,
          value: this.#found(kind, side)[field],
          shown: this.words.whole.number,
          max,
          disabled: !this.editable,
          refusal: this.refusals.get(id),
          complain: (typed) => this.words.bedside.refusedTime(typed, max, unit),
          typing: this.typing,
          set: (value) => this.edit([kind, side, field], value),
        });
      },
    };
  }

  #refillSaid(refill: number): TemplateResult {
    const { code, limit } = readRefill(refill, this.age);
    return html`<span class="hint">${this.words.inspection.refillSaid[code](limit)}</span>`;
  }

  /** The refill time with the limit it is compared with. */
  #refill(kind: Kind): SidedRow {
    const { inspection: words } = this.words;
    const row = this.#numberRow(kind, 'refill', words.refill, words.seconds, LONGEST_REFILL);
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

  #skin(kind: Kind): SidedRow[] {
    const { inspection: words } = this.words;
    const levels = kind === 'leg' ? LEG_LEVELS : ARM_LEVELS;
    return [
      this.#row(kind, 'colour', words.colour, words.colours),
      this.#row(kind, 'temperature', words.temperature, words.temperatures),
      this.#row(
        kind,
        'temperatureLevel',
        words.temperatureLevel,
        Object.fromEntries(levels.map((level) => [level, words.levels[level]])),
        ({ temperature }) => temperature === 'cool' || temperature === 'cold',
      ),
      this.#refill(kind),
    ];
  }

  #nerves(kind: Kind): SidedRow[] {
    const { inspection: words } = this.words;
    return [
      this.#row(kind, 'sensation', words.sensation, words.sensationOptions[kind]),
      this.#row(kind, 'movement', words.movement, words.movements),
      this.#row(kind, 'venousDoppler', words.venousDoppler, words.venous),
    ];
  }

  #wounds(kind: Kind): SidedRow[] {
    const { inspection: words } = this.words;
    const infected = (f: Partial<LimbInspection>): boolean => (f.infection?.length ?? 0) > 0;
    return [
      this.#row(kind, 'ulcer', words.ulcer, words.ulcerOptions),
      this.#row(
        kind,
        'ulcerPlace',
        words.ulcerPlace,
        words.ulcerPlaces,
        ({ ulcer }) => ulcer !== undefined && ulcer !== 'none',
      ),
      this.#row(kind, 'gangrene', words.gangrene, words.gangreneOptions),
      this.#row(
        kind,
        'gangreneExtent',
        words.gangreneExtent,
        words.extentOptions[kind],
        ({ gangrene }) => gangrene === 'wet' || gangrene === 'dry',
      ),
      this.#toggleRow(kind, 'infection', words.infection, words.infectionOptions),
      this.#numberRow(
        kind,
        'rednessCm',
        words.rednessCm,
        words.centimetres,
        WIDEST_REDNESS,
        ({ infection }) => infection?.includes('redness') === true,
      ),
      {
        label: words.depth,
        cell: (side): Cell =>
          infected(this.#found(kind, side))
            ? toggles<'deepInfection'>({
                label: this.#label(words.depth, kind, side),
                options: optionsOf({ deepInfection: words.deepInfection }),
                value: this.#found(kind, side).deepInfection ? ['deepInfection'] : undefined,
                disabled: !this.editable,
                pick: (picked) => this.edit([kind, side, 'deepInfection'], picked ? true : undefined),
              })
            : nothing,
      },
      this.#toggleRow(kind, 'systemic', words.systemic, words.systemicShort, infected),
    ];
  }

  #toggleRow(
    kind: Kind,
    field: 'infection' | 'systemic',
    label: string,
    words: Readonly<Record<string, string>>,
    where: (found: Partial<LimbInspection>) => boolean = () => true,
  ): SidedRow {
    return {
      label,
      cell: (side) =>
        where(this.#found(kind, side))
          ? this.known([kind, side, field], this.#label(label, kind, side), () =>
              toggles({
                label: this.#label(label, kind, side),
                options: optionsOf(words),
                value: this.#found(kind, side)[field],
                none: this.words.inspection.noInfection,
                disabled: !this.editable,
                pick: (picked) => this.edit([kind, side, field], picked),
              }),
            )
          : nothing,
    };
  }

  #rest(kind: Kind): SidedRow[] {
    const { inspection: words } = this.words;
    return [
      this.#row(kind, 'hair', words.hair, words.hairOptions),
      this.#row(kind, 'nails', words.nails, words.nailOptions),
      this.#row(kind, 'muscle', words.muscle, words.muscleOptions),
      this.#row(kind, 'oedema', words.oedema, words.oedemaOptions),
      this.#row(kind, 'lymphNodes', words.lymphNodes, words.lymphNodeOptions),
      this.#row(kind, 'couldNotExamine', words.couldNotExamine, this.mapWords.examination.reasons),
      {
        label: words.note,
        cell: (side) =>
          textField({
            label: this.#label(words.note, kind, side),
            quiet: true,
            value: this.#found(kind, side).note,
            longest: LONGEST_TEXT,
            disabled: !this.editable,
            typing: this.typing,
            set: (note) => this.edit([kind, side, 'note'], note),
          }),
      },
    ];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-inspection': LimbInspectionElement;
  }
}
