import { html, noChange, nothing, type TemplateResult } from 'lit';
import type * as z from 'zod/mini';
import { SIDES, type Side } from '../../anatomy/index.js';
import {
  ACUTE_CLASSES,
  emptyExamination,
  type Examination,
  FONTAINE_STAGES,
  LONGEST_TEXT,
  type Method,
  parseExaminationText,
  patchAt,
  RUTHERFORD_CATEGORIES,
  type Staging,
  stagingSchema,
  WIFI_GRADES,
  WIFI_STAGES,
} from '../../examination/index.js';
import { firstUses } from '../../locale/first-use.js';
import type { SchemeId } from '../../locale/staging.js';
import {
  type AcuteStage,
  type Derived,
  finalStage,
  type LegStages,
  stageArm,
  stageLeg,
  type StagingSettings,
} from '../../staging/index.js';
import { methodOf } from '../../pressures/index.js';
import { sourcesOf, usedMethods } from '../../statements/index.js';
import {
  asksCompression,
  COMPRESSION_SOURCES,
  type CompressionReading,
  type Pathway,
  flowHours,
  readCompression,
  withPathway,
  triageSettings,
} from '../../triage/index.js';
import { textField } from '../common/fields.js';
import { GivenRecord } from '../common/given-record.js';
import { Later } from '../common/later.js';
import { PartElement } from '../common/part-element.js';
import { partStyles } from '../common/part-styles.js';
import { pathwayOf } from '../common/pathway.js';
import { OBJECT, property, RECORD } from '../common/property.js';
import { selectField } from '../common/select.js';
import { sourcesMark, sourcesStyles } from '../common/sources-mark.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { stagingStyles } from './styles.js';

type Kind = 'leg' | 'arm';
type AnyDerived = Derived<string | number>;

const STAGES: Readonly<Record<SchemeId, readonly (string | number)[]>> = {
  acute: ACUTE_CLASSES,
  fontaine: FONTAINE_STAGES,
  rutherford: RUTHERFORD_CATEGORIES,
  wound: WIFI_GRADES,
  ischaemia: WIFI_GRADES,
  infection: WIFI_GRADES,
  wifi: WIFI_STAGES,
};

/** The methods of pressures that stages depend on. */
const STAGED_BY = ['threat', 'standard', 'ankle', 'arm', 'exercise'] as const;

const WIFI_SCHEMES = ['wound', 'ischaemia', 'infection', 'wifi'] as const;

/** The part checks what it edits, so that what reads a record is there from the start. */
const READER = Later.ready({ parseExaminationText });

/**
 * The stages of every limb by each scheme, worked out from the record: what each rests on, what is missing, and the clinician's own
 * beside it where that differs. The value holds only what the clinician set; the rest follows from `examination`.
 *
 * @tag limb-staging
 * @attr value - The clinician's own stages as JSON; what a form reset returns to.
 * @fires input - A person set or took back a stage.
 * @fires change - A person set or took back a stage.
 * @csspart scheme - One scheme of one limb.
 * @csspart compression - Whether compression of a leg is within the limits.
 */
export class LimbStaging extends PartElement<Staging> {
  static override styles = [
    tokenStyles,
    controlStyles,
    unreadStyles,
    partStyles,
    sourcesStyles,
    stagingStyles,
  ];

  /**
   * The record the stages are worked out from; its own `staging` gives way to `value`. Of one that cannot be read, such as one of a
   * later version, nothing is worked out.
   */
  @property({ attribute: false, shape: RECORD }) examination: Examination = emptyExamination();
  /** Choices where sources disagree or leave something open; they go before those of the pathway, and both before the record's own. */
  @property({ attribute: false, shape: OBJECT }) settings: Partial<StagingSettings> = {};
  /** The hospital's own pathway, of which the limits count here. Parts that cannot be used are left out with a warning. */
  @property({ attribute: false, shape: OBJECT }) pathway: Pathway | undefined = undefined;

  readonly #given = new GivenRecord(READER);

  protected override get schema(): z.ZodMiniType<Staging> {
    return stagingSchema;
  }

  /** What the page decides: the limits of its pathway, and before them its settings. */
  get #choices(): Partial<StagingSettings> {
    return withPathway(pathwayOf(this.pathway).settings, this.settings);
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { staging: words } = this.words;
    const held = this.#given.held(this.examination);
    if (held.state !== 'readable')
      return html`<div class="unread"><p role="status">${words.unread}</p></div>`;
    const record = { ...held.value, staging: this.recorded };
    const choices = this.#choices;
    const arms = SIDES.map((side) => ({ side, stage: stageArm(record, side, choices) })).filter(
      ({ side, stage }) => stage.applies !== 'no' || stage.overrule || this.unknownAt(['arm', side]),
    );
    return html`<div class="limbs">
        ${SIDES.map((side) => this.#leg(stageLeg(record, side, choices), readCompression(record, side, choices)))}
        ${arms.map(
          ({ side, stage }) =>
            html`<section class="limb">
              <h3>${this.#limb('arm', side)}</h3>
              ${this.#acute('arm', side, stage)}
            </section>`,
        )}
      </div>
      <p class="hint">${this.#method(record.method, choices)}</p>
      <p class="hint">${words.edition}</p>
      <p class="hint">${this.mapWords.map.caution}</p>`;
  }

  /** The methods that the stages rest on, and which of them nobody chose. */
  #method(own: Method | undefined, { pressures }: Partial<StagingSettings>): string {
    const words = this.words.pressures;
    const method = methodOf({ method: own }, pressures);
    return words.methodsUsed(usedMethods(method, STAGED_BY, own, pressures));
  }

  #limb(kind: Kind, side: Side): string {
    return this.words.staging.sentence(this.mapWords.anatomy.limbs[`${side} ${kind}`]);
  }

  #leg(stages: LegStages, compression: CompressionReading): TemplateResult {
    const { staging: words } = this.words;
    const { side, wifi } = stages;
    const grades = [
      this.#scheme('leg', side, 'wound', wifi.wound),
      this.#scheme('leg', side, 'ischaemia', wifi.ischaemia),
      this.#scheme('leg', side, 'infection', wifi.infection),
    ];
    const graded =
      [wifi.wound, wifi.ischaemia, wifi.infection].some((g) => g.candidates.length || g.overrule) ||
      WIFI_SCHEMES.some((scheme) => this.unknownAt(['leg', side, scheme]));
    return html`<section class="limb">
      <h3>${this.#limb('leg', side)}</h3>
      ${this.#acute('leg', side, stages.acute)}
      ${this.#scheme('leg', side, 'fontaine', stages.fontaine, this.#chronicLines(stages.fontaine))}
      ${this.#scheme('leg', side, 'rutherford', stages.rutherford, [
        ...this.#chronicLines(stages.rutherford),
        ...(stages.schemesDiffer ? [words.differ] : []),
      ])}
      <h4 class="group">${words.wifiTitle}</h4>
      ${
        wifi.excluded
          ? html`<p class="hint">${words.excluded[wifi.excluded]}</p>
              ${WIFI_SCHEMES.map((scheme) => this.#unknown('leg', side, scheme))}`
          : html`${this.#scheme('leg', side, 'wifi', wifi.stage, [
                ...(wifi.risk ? [words.risk(wifi.risk)] : []),
                ...(wifi.benefit ? [words.benefit(wifi.benefit)] : []),
              ])}
              <details class="own" ?open=${graded || noChange}>
                <summary>${words.grades}</summary>
                <div class="grades">${grades}</div>
              </details>`
      }
      ${asksCompression(compression) ? this.#compression(compression) : nothing}
    </section>`;
  }

  /** Whether the arteries and the rest of the leg allow compression; asked where the veins are diseased. */
  #compression(reading: CompressionReading): TemplateResult {
    const { compression: words, flags } = this.words;
    const inFull = firstUses(flags.abbreviations);
    return html`<div
      part="compression"
      class="scheme"
      role="group"
      aria-label="${words.title}, ${this.#limb('leg', reading.side)}"
    >
      <h4>${words.title}</h4>
      <p class="stage">
        <span><b>${words.verdict(reading.verdict)}</b></span>
      </p>
      ${words.lines(reading).map((line) => html`<p class="hint">${inFull(line)}</p>`)}
      ${sourcesMark(COMPRESSION_SOURCES, flags)}
    </div>`;
  }

  #chronicLines(stage: LegStages['fontaine'] | LegStages['rutherford']): string[] {
    const { staging: words } = this.words;
    return [
      ...(stage.beside.length ? [words.beside(stage.beside.map((g) => this.words.flags.ground(g)))] : []),
      ...(stage.objective ? [words.objective[stage.objective]] : []),
    ];
  }

  #acute(kind: Kind, side: Side, stage: AcuteStage): TemplateResult {
    const { staging: words } = this.words;
    if (stage.applies === 'no' && !stage.overrule) {
      return html`<p class="hint">${words.acuteTitle}: ${words.notAcute}</p>
        ${this.#unknown(kind, side, 'acute')}`;
    }
    const timed = finalStage(stage) ?? stage.atLeast;
    return this.#scheme(kind, side, 'acute', stage, [
      ...(stage.stage === undefined && stage.atLeast && stage.atMost
        ? [words.between(stage.atLeast, stage.atMost)]
        : []),
      ...(stage.applies === 'unknown' ? [words.acuteUnknown] : []),
      ...(timed ? [words.timing(flowHours(timed, triageSettings(this.#choices.triage)))] : []),
    ]);
  }

  /** One scheme: the stage large, what it rests on, what is missing, and the clinician's own. */
  #scheme(
    kind: Kind,
    side: Side,
    scheme: SchemeId,
    derived: AnyDerived,
    more: readonly string[] = [],
  ): TemplateResult {
    const { staging: words, flags } = this.words;
    const inFull = firstUses(flags.abbreviations);
    const { overrule, stage, candidates, grounds, missing, notes } = derived;
    const shown = overrule?.stage ?? stage;
    const line =
      shown !== undefined
        ? words.meaning(scheme, shown)
        : candidates.length
          ? words.open(scheme, candidates)
          : words.nothing;
    const own = overrule
      ? words.yours(
          words.stage(scheme, overrule.stage),
          stage === undefined ? undefined : words.stage(scheme, stage),
        )
      : undefined;
    return html`<div
      part="scheme"
      class="scheme"
      role="group"
      aria-label="${words.schemes[scheme]}, ${this.#limb(kind, side)}"
    >
      <h4>${words.schemes[scheme]}</h4>
      <p class="stage">${shown === undefined ? nothing : html`<b>${shown}</b>`} <span>${line}</span></p>
      ${own ? html`<p><b>${own}</b></p>` : nothing} ${more.map((text) => html`<p>${inFull(text)}</p>`)}
      ${grounds.length ? html`<p class="hint">${inFull(words.from(grounds.map((g) => flags.ground(g))))}</p>` : nothing}
      ${missing.length ? html`<p class="hint">${inFull(flags.stillMissing(missing))}</p>` : nothing}
      ${notes.map((note) => html`<p class="hint">${inFull(words.notes[note])}</p>`)}
      ${sourcesMark(shown === undefined && !candidates.length ? [] : sourcesOf({ code: 'stage', scheme }), flags)}
      ${this.#overrule(kind, side, scheme, derived)}
    </div>`;
  }

  /** Says that the clinician's own stage is there and not known to this version; nothing where it is not so. */
  #unknown(kind: Kind, side: Side, scheme: SchemeId): TemplateResult | typeof nothing {
    if (!this.unknownAt([kind, side, scheme])) return nothing;
    const { staging: words } = this.words;
    return html`<p>${this.unknownNote(words.setTo(words.schemes[scheme]), true)}</p>`;
  }

  #overrule(kind: Kind, side: Side, scheme: SchemeId, derived: AnyDerived): TemplateResult | typeof nothing {
    const { staging: words } = this.words;
    const { overrule, stage } = derived;
    if (this.unknownAt([kind, side, scheme])) return this.#unknown(kind, side, scheme);
    if (!this.editable && !overrule) return nothing;
    const path = [kind, side, scheme];
    const set = (picked: string | undefined): void => {
      const own = STAGES[scheme].find((s) => String(s) === picked);
      const next =
        own === undefined
          ? undefined
          : {
              stage: own,
              ...(stage !== undefined && { derived: stage }),
              ...(overrule?.why && { why: overrule.why }),
            };
      this.replace(patchAt(this.value, path, next));
    };
    return html`<details class="own" ?open=${overrule !== undefined || noChange}>
      <summary>${words.set}</summary>
      <div class="row">
        ${selectField({
          label: words.setTo(words.schemes[scheme]),
          quiet: true,
          empty: words.asDerived,
          options: STAGES[scheme].map((s) => [String(s), words.stage(scheme, s)] as const),
          value: overrule && String(overrule.stage),
          disabled: !this.editable,
          set,
        })}
        ${
          overrule
            ? textField({
                id: path.join(' '),
                label: words.why,
                value: overrule.why,
                longest: LONGEST_TEXT,
                disabled: !this.editable,
                typing: this.typing,
                set: (why) => this.replace(patchAt(this.value, [...path, 'why'], why)),
              })
            : nothing
        }
      </div>
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-staging': LimbStaging;
  }
}
