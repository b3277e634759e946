import { css, html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import * as z from 'zod/mini';
import type { Side } from '../../anatomy/index.js';
import {
  ARM_CLAUDICATION,
  contextSchema,
  fieldAt,
  historySchema,
  LEG_CLAUDICATION,
  LONGEST_TEXT,
  type LimbHistory,
  ONSETS,
  patchAt,
  type RiskFactor,
} from '../../examination/index.js';
import { choices, optionsOf, toggles } from '../common/choices.js';
import { numberField, textField } from '../common/fields.js';
import { PartElement } from '../common/part-element.js';
import { partStyles } from '../common/part-styles.js';
import { type SidedRow, sidedRows, sidedRowStyles } from '../common/sided-rows.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';

const historyPartSchema = z.strictObject({
  onset: z.optional(z.enum(ONSETS)),
  history: z.optional(historySchema),
  context: z.optional(contextSchema),
});
/** What this element edits: onset and history, and of the context where it hurts on exertion. */
export type HistoryPart = z.infer<typeof historyPartSchema>;

type Kind = 'leg' | 'arm';
const LONGEST_HOURS = 87_600;
const FARTHEST = 10_000;

/**
 * What the patient tells, limb by limb: symptom, where and when it hurts, how and when it began; rhythm, risks, operations. Nothing is
 * compulsory.
 *
 * @tag limb-history
 * @attr value - Onset, history and context as JSON; what a form reset returns to.
 * @fires input - A person changed something.
 * @fires change - A person changed something.
 */
export class LimbHistoryElement extends PartElement<HistoryPart> {
  static override styles = [
    tokenStyles,
    controlStyles,
    unreadStyles,
    partStyles,
    sidedRowStyles,
    css`
      .operations {
        max-inline-size: 60ch;
      }
    `,
  ];

  @state() private shown: Side = 'right';

  protected override get schema(): z.ZodMiniType<HistoryPart> {
    return historyPartSchema;
  }

  /** Removes what depends on a symptom when there is none. */
  protected override tidied(next: HistoryPart | undefined): HistoryPart | undefined {
    let tidy = next;
    for (const kind of ['leg', 'arm'] as const)
      for (const side of ['right', 'left'] as const) {
        const told = next?.history?.[kind]?.[side];
        if (told?.symptom !== 'claudication') {
          tidy = patchAt(tidy, ['history', kind, side, 'distance'], undefined);
          tidy = patchAt(tidy, ['history', kind, side, 'severity'], undefined);
        }
        if (told?.symptom === 'none') {
          for (const field of ['onset', 'hours'])
            tidy = patchAt(tidy, ['history', kind, side, field], undefined);
        }
      }
    return tidy;
  }

  protected override render(): TemplateResult {
    const { unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { history: words } = this.words;
    const { examination } = this.mapWords;
    const show = (side: Side): void => void (this.shown = side);
    const arms = this.value?.history?.arm !== undefined;
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
      </div>
      ${sidedRows(
        [
          { heading: this.words.whole.legs, rows: this.#rows('leg') },
          { heading: this.words.whole.arms, rows: this.#rows('arm'), folded: !arms },
        ],
        this.shown,
        show,
        this.words,
      )}
      <div class="loose">${this.#whole()}</div>
    `;
  }

  #told(kind: Kind, side: Side): LimbHistory {
    return this.value?.history?.[kind]?.[side] ?? {};
  }

  #label(what: string, kind: Kind, side: Side): string {
    return `${what}, ${this.mapWords.anatomy.limbs[`${side} ${kind}`]}`;
  }

  #chips<V extends string>(
    what: string,
    kind: Kind,
    side: Side,
    words: Readonly<Record<V, string>>,
    path: readonly string[],
    then?: (picked: V | undefined, part: HistoryPart | undefined) => HistoryPart | undefined,
  ): TemplateResult {
    const label = this.#label(what, kind, side);
    return this.known(path, label, () =>
      choices<V>({
        label,
        options: optionsOf(words),
        value: fieldAt(this.value, path) as V | undefined,
        disabled: !this.editable,
        pick: (picked) => {
          const next = patchAt(this.value, path, picked);
          this.replace(then ? then(picked, next) : next);
        },
      }),
    );
  }

  #number(
    what: string,
    kind: Kind,
    side: Side,
    field: 'distance' | 'hours',
    unit: string,
    max: number,
  ): TemplateResult {
    const id = `${kind}-${side}-${field}`;
    return numberField({
      id,
      label: this.#label(what, kind, side),
      quiet: true,
      unit,
      value: this.#told(kind, side)[field],
      shown: this.words.whole.number,
      max,
      disabled: !this.editable,
      refusal: this.refusals.get(id),
      complain: (typed) => this.words.bedside.refusedTime(typed, max, unit),
      typing: this.typing,
      set: (value) => this.edit(['history', kind, side, field], value),
    });
  }

  #rows(kind: Kind): SidedRow[] {
    const { history: words } = this.words;
    const at = (side: Side, field: string): string[] => ['history', kind, side, field];
    const pain = kind === 'leg' ? 'legClaudication' : 'armClaudication';
    const hurts = kind === 'leg' ? LEG_CLAUDICATION : ARM_CLAUDICATION;
    const muscles = Object.fromEntries(
      hurts.filter((m) => m !== 'none').map((m) => [m, words.muscles[m]]),
    ) as Record<string, string>;
    const claudicates = (side: Side): boolean => this.#told(kind, side).symptom === 'claudication';
    const suffers = (side: Side): boolean => !['none', undefined].includes(this.#told(kind, side).symptom);
    const when = (condition: boolean, cell: () => TemplateResult) => (condition ? cell() : nothing);
    return [
      {
        label: words.symptom,
        cell: (side) =>
          this.#chips(words.symptom, kind, side, words.symptomOptions, at(side, 'symptom'), (symptom, part) =>
            // Asked for and denied is known of the muscles too; another symptom takes only the denial back.
            symptom === 'none'
              ? patchAt(part, ['context', pain, side], 'none')
              : part?.context?.[pain]?.[side] === 'none'
                ? patchAt(part, ['context', pain, side], undefined)
                : part,
          ),
      },
      {
        label: kind === 'leg' ? words.claudicates : words.tires,
        cell: (side) =>
          when(claudicates(side), () =>
            this.#chips(kind === 'leg' ? words.claudicates : words.tires, kind, side, muscles, [
              'context',
              pain,
              side,
            ]),
          ),
      },
      {
        label: words.distance,
        cell: (side) =>
          when(claudicates(side) && kind === 'leg', () =>
            this.#number(words.distance, kind, side, 'distance', words.metres, FARTHEST),
          ),
      },
      {
        label: words.severity,
        cell: (side) =>
          when(claudicates(side), () =>
            this.#chips(words.severity, kind, side, words.severities, at(side, 'severity')),
          ),
      },
      {
        label: words.began,
        cell: (side) =>
          when(suffers(side), () =>
            this.#chips(words.began, kind, side, words.beganOptions, at(side, 'onset')),
          ),
      },
      {
        label: words.hours,
        cell: (side) =>
          when(suffers(side) && this.#told(kind, side).onset !== 'gradual', () =>
            this.#number(words.hours, kind, side, 'hours', words.hoursUnit, LONGEST_HOURS),
          ),
      },
    ];
  }

  #whole(): TemplateResult {
    const { history: words } = this.words;
    const { history } = this.value ?? {};
    return html`<div>
        <span class="hint" aria-hidden="true">${words.rhythm}</span>
        ${choices({
          label: words.rhythm,
          options: optionsOf(words.rhythms),
          value: history?.rhythm,
          disabled: !this.editable,
          pick: (rhythm) => this.edit(['history', 'rhythm'], rhythm),
        })}
      </div>
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
