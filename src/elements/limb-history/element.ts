import { css, html, type TemplateResult } from 'lit';
import * as z from 'zod/mini';
import { type Side, SIDES } from '../../anatomy/index.js';
import {
  ARM_CLAUDICATION,
  type ArmHistory,
  circulationSchema,
  contextSchema,
  emptyExamination,
  HIGHEST_HEART_RATE,
  HIGHEST_SYSTOLIC,
  historySchema,
  LEG_CLAUDICATION,
  LONGEST_HOURS,
  LONGEST_TEXT,
  type LimbHistory,
  ONSETS,
  patchAt,
  type RiskFactor,
  type SymptomElsewhere,
} from '../../examination/index.js';
import { type OnsetEntry, setLimbOnset } from '../../triage/index.js';
import { choices, optionsOf, toggles } from '../common/choices.js';
import { textField, timeField } from '../common/fields.js';
import { fold } from '../common/fold.js';
import { partStyles } from '../common/part-styles.js';
import { property, TEXT } from '../common/property.js';
import { type FieldRow, type LimbKind, SidedPart } from '../common/sided-part.js';
import { type SidedRow, sidedRows, sidedRowStyles } from '../common/sided-rows.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';

const historyPartSchema = z.strictObject({
  onset: z.optional(z.enum(ONSETS)),
  history: z.optional(historySchema),
  context: z.optional(contextSchema),
  circulation: z.optional(circulationSchema),
});
/** What this element edits: onset, history and circulation, and of the context where it hurts on exertion. */
export type HistoryPart = z.infer<typeof historyPartSchema>;

const FARTHEST = 10_000;
const HOUR = 3_600_000;
const ONSET_FIELDS = ['onset', 'hours', 'onsetAt'] as const;

/** Whether the fold of a limb holds what its onset does not tell: an acute onset writes by itself what is new. */
const hasMore = ({ onset, hours, onsetAt, note, suddenPain, newComplaint }: LimbHistory): boolean =>
  onsetAt !== undefined ||
  note !== undefined ||
  (onset === undefined && hours === undefined && (suddenPain ?? newComplaint) !== undefined);

/**
 * What the patient tells, limb by limb: symptom, where it hurts, what is new, how and when it began; rhythm, symptoms elsewhere,
 * circulation, risks, operations. Nothing is compulsory.
 *
 * @tag limb-history
 * @attr value - Onset, history and context as JSON; what a form reset returns to.
 */
export class LimbHistoryElement extends SidedPart<HistoryPart> {
  static override styles = [
    tokenStyles,
    controlStyles,
    unreadStyles,
    partStyles,
    sidedRowStyles,
    css`
      .circulation {
        display: flex;
        flex-wrap: wrap;
        align-items: end;
        gap: 16px;
        padding-block: 8px;
      }
      .operations {
        max-inline-size: 60ch;
      }
    `,
  ];

  /** When the examination took place, from which hours since an onset are counted; without it, now. */
  @property({ attribute: false, shape: TEXT }) examinedAt: string | undefined = undefined;

  protected override get schema(): z.ZodMiniType<HistoryPart> {
    return historyPartSchema;
  }

  /** Removes what depends on a symptom when there is none. */
  protected override tidied(next: HistoryPart | undefined): HistoryPart | undefined {
    let tidy = next;
    for (const kind of ['leg', 'arm'] as const)
      for (const side of SIDES) {
        const told = next?.history?.[kind]?.[side];
        if (told?.symptom !== 'claudication') {
          tidy = patchAt(tidy, ['history', kind, side, 'distance'], undefined);
          tidy = patchAt(tidy, ['history', kind, side, 'severity'], undefined);
        }
        if (told?.symptom === 'none' && !told.suddenPain && !told.newComplaint) {
          for (const field of ONSET_FIELDS) tidy = patchAt(tidy, ['history', kind, side, field], undefined);
        }
      }
    return tidy;
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { history: words } = this.words;
    const { examination } = this.mapWords;
    const arms = this.value?.history?.arm !== undefined;
    const exactly = SIDES.some((side) => hasMore(this.#told('leg', side)));
    return html`
      <div class="loose">
        <div>
          <span class="hint" aria-hidden="true">${words.onset}</span>
          ${choices({
            label: words.onset,
            options: optionsOf(examination.onsets),
            value: this.value?.onset,
            disabled: !this.editable,
            pick: (onset) => this.edit(['onset'], onset),
          })}
        </div>
        <div>
          <span class="hint" aria-hidden="true">${words.rhythm}</span>
          ${choices({
            label: words.rhythm,
            options: optionsOf(words.rhythms),
            value: this.value?.history?.rhythm,
            disabled: !this.editable,
            pick: (rhythm) => this.edit(['history', 'rhythm'], rhythm),
          })}
        </div>
      </div>
      ${sidedRows(
        [
          { heading: this.words.whole.legs, rows: this.#rows('leg') },
          { heading: words.exactly, rows: this.#exactly('leg'), folded: !exactly },
          {
            heading: this.words.whole.arms,
            rows: [...this.#rows('arm'), ...this.#exactly('arm')],
            folded: !arms,
          },
        ],
        this.shown,
        this.show,
        this.words,
      )}
      <div class="loose">${this.#whole()}</div>
    `;
  }

  #told(kind: LimbKind, side: Side): LimbHistory & ArmHistory {
    return this.value?.history?.[kind]?.[side] ?? {};
  }

  #at(
    kind: LimbKind,
    field: keyof LimbHistory,
    label: string,
    when?: (told: LimbHistory) => boolean,
  ): FieldRow {
    return {
      label,
      kind,
      at: (side) => ['history', kind, side, field],
      ...(when && { where: (side: Side) => when(this.#told(kind, side)) }),
    };
  }

  /** Changes when a limb's trouble began; what is new about it stays when the time is taken away. */
  #began(kind: LimbKind, side: Side, entry: Partial<OnsetEntry>): boolean {
    const { history, ...rest } = this.beforeTyping ?? {};
    const before = { ...emptyExamination(), ...rest, ...(history && { history }) };
    const after = setLimbOnset(before, { kind, side }, entry).history;
    return this.replace({ ...rest, ...(after && { history: after }) } as HistoryPart);
  }

  /** Hours from a time on the clock to the examination; none for a time that is yet to come. */
  #hoursSince(onsetAt: string): number | undefined {
    const now = this.examinedAt ? Date.parse(this.examinedAt) : Date.now();
    const hours = Math.round((now - Date.parse(onsetAt)) / (HOUR / 10)) / 10;
    return hours >= 0 && hours <= LONGEST_HOURS ? hours : undefined;
  }

  #onsetAt(kind: LimbKind, row: FieldRow): SidedRow {
    return {
      label: row.label,
      cell: (side) => {
        const { onsetAt, hours: counted } = this.#told(kind, side);
        const label = this.limbLabel(row.label, kind, side);
        const id = row.at(side).join('-');
        return timeField({
          id,
          label,
          value: onsetAt,
          disabled: !this.editable,
          refusal: this.refusals.get(id),
          complain: (typed) => this.words.history.refusedTime(typed.replace('T', ' ')),
          typing: this.typing,
          set: (value) => {
            const hours = value && this.#hoursSince(value);
            if (value && hours === undefined) return false;
            // Hours that were counted from the time go with it; hours that were told stay.
            const own = onsetAt === undefined || this.#hoursSince(onsetAt) !== counted;
            if (!value)
              return this.#began(kind, side, { onsetAt: undefined, ...(!own && { hours: undefined }) });
            return this.#began(kind, side, { onsetAt: value, hours: hours as number });
          },
        });
      },
    };
  }

  #rows(kind: LimbKind): SidedRow[] {
    const { history: words } = this.words;
    const at = (field: keyof LimbHistory, label: string, when?: (told: LimbHistory) => boolean): FieldRow =>
      this.#at(kind, field, label, when);
    const pain = kind === 'leg' ? 'legClaudication' : 'armClaudication';
    const hurts = kind === 'leg' ? LEG_CLAUDICATION : ARM_CLAUDICATION;
    const muscles = Object.fromEntries(
      hurts.filter((m) => m !== 'none').map((m) => [m, words.muscles[m]]),
    ) as Record<string, string>;
    const claudicates = ({ symptom }: LimbHistory): boolean => symptom === 'claudication';
    const asked = ({ symptom, suddenPain, newComplaint }: LimbHistory): boolean =>
      symptom !== 'none' || suddenPain === true || newComplaint === true;
    const began = (told: LimbHistory): boolean =>
      ONSET_FIELDS.some((field) => told[field] !== undefined) || !['none', undefined].includes(told.symptom);
    return [
      this.wordRow(at('symptom', words.symptom), words.symptomOptions, (symptom, side) => {
        const part = patchAt(this.value, ['history', kind, side, 'symptom'], symptom);
        // Asked for and denied is known of the muscles too; another symptom takes only the denial back.
        this.replace(
          symptom === 'none'
            ? patchAt(part, ['context', pain, side], 'none')
            : part?.context?.[pain]?.[side] === 'none'
              ? patchAt(part, ['context', pain, side], undefined)
              : part,
        );
      }),
      this.wordRow(
        {
          label: kind === 'leg' ? words.claudicates : words.tires,
          kind,
          at: (side) => ['context', pain, side],
          where: (side) => claudicates(this.#told(kind, side)),
        },
        muscles,
      ),
      ...(kind === 'leg'
        ? [this.numberRow(at('distance', words.distance, claudicates), words.metres, FARTHEST)]
        : []),
      this.wordRow(at('severity', words.severity, claudicates), words.severities),
      ...(kind === 'arm'
        ? [
            this.marksRow(
              { label: words.armSign, kind, at: (side) => ['history', kind, side] },
              words.armSigns,
            ),
          ]
        : []),
      this.wordRow(at('onset', words.began, asked), words.beganOptions, (onset, side) =>
        this.#began(kind, side, { onset: onset as LimbHistory['onset'] }),
      ),
      this.numberRow(
        at('hours', words.hours, (told) => began(told) && asked(told)),
        words.hoursUnit,
        LONGEST_HOURS,
        (hours, side) => this.#began(kind, side, { hours }),
      ),
    ];
  }

  /** What is new or sudden, the time on the clock and a note: seldom needed, so folded away. */
  #exactly(kind: LimbKind): SidedRow[] {
    const { history: words } = this.words;
    return [
      this.marksRow({ label: words.newSign, kind, at: (side) => ['history', kind, side] }, words.newSigns),
      this.#onsetAt(kind, this.#at(kind, 'onsetAt', words.onsetAt)),
      this.textRow(this.#at(kind, 'note', words.note)),
    ];
  }

  #circulation(): TemplateResult {
    const { history: words } = this.words;
    const { circulation } = this.value ?? {};
    const pressure = (field: 'systolic' | 'diastolic'): TemplateResult =>
      this.number(['circulation', field], words.bloodPressure[field], 'mmHg', HIGHEST_SYSTOLIC);
    return fold(
      words.circulationTitle,
      circulation !== undefined,
      () =>
        html`<div class="circulation">
          <div>
            <span class="hint" aria-hidden="true">${words.shock}</span>
            ${this.yesNo(['circulation', 'shock'], words.shock)}
          </div>
          ${pressure('systolic')} ${pressure('diastolic')}
          ${this.number(['circulation', 'heartRate'], words.heartRate, words.aMinute, HIGHEST_HEART_RATE)}
        </div>`,
      { look: 'fold' },
    );
  }

  #whole(): TemplateResult {
    const { history: words } = this.words;
    const { history } = this.value ?? {};
    return html`<div>
        <span class="hint" aria-hidden="true">${words.elsewhere}</span>
        ${toggles<SymptomElsewhere>({
          label: words.elsewhere,
          options: optionsOf(words.elsewhereOptions),
          value: history?.elsewhere,
          none: words.noRisks,
          disabled: !this.editable,
          pick: (elsewhere) => this.edit(['history', 'elsewhere'], elsewhere),
        })}
      </div>
      ${this.#circulation()}
      <div>
        <span class="hint" aria-hidden="true">${words.risks}</span>
        ${toggles<RiskFactor>({
          label: words.risks,
          options: optionsOf(words.riskOptions),
          value: history?.risks,
          none: words.noRisks,
          disabled: !this.editable,
          pick: (risks) => this.edit(['history', 'risks'], risks),
        })}
      </div>
      <div class="operations">
        ${textField({
          label: words.operations,
          value: history?.operations,
          longest: LONGEST_TEXT,
          disabled: !this.editable,
          typing: this.typing,
          set: (operations) => this.edit(['history', 'operations'], operations),
        })}
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-history': LimbHistoryElement;
  }
}
