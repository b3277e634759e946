import { html, nothing, type TemplateResult } from 'lit';
import { type Examination, bruitAt, pulseAt } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { NoteWords } from '../../locale/note.js';
import type { NoteAnswer, NoteFinding, Span } from '../../notes/index.js';
import type * as Notes from '../../notes/index.js';
import type { Asked, Planned } from './plan.js';

/** What reading a note back takes. */
export interface ReadBack {
  readonly text: string;
  readonly examination: Examination;
  readonly words: NoteWords;
  readonly messages: Messages;
  readonly notes: Pick<typeof Notes, 'quotesOf'>;
  /** Keys of the findings that may replace what is recorded. */
  readonly replacing: ReadonlySet<string>;
  readonly replace: (key: string, on: boolean) => void;
}

const saidOf = ({ part, patch }: NoteFinding, { messages, examination }: ReadBack): string =>
  part === 'pulses'
    ? messages.map.findings(patch, undefined, examination.scale)
    : messages.map.findings(undefined, patch, examination.scale);

/** Neighbours of which the same is said are said together. */
function inRows<T>(all: readonly T[], alike: (one: T) => string): T[][] {
  const rows: { key: string; of: T[] }[] = [];
  for (const one of all) {
    const key = alike(one);
    const last = rows.at(-1);
    if (last?.key === key) last.of.push(one);
    else rows.push({ key, of: [one] });
  }
  return rows.map(({ of }) => of);
}

/** "Left femoral and left popliteal: 2, normal". */
function saidTogether(findings: readonly NoteFinding[], context: ReadBack): string {
  const places = findings.map(({ place }) => context.messages.anatomy.place(place));
  return context.words.at(places, saidOf(findings[0]!, context));
}

/** What a choice of a question would write, in words. */
function choiceSaid(choice: readonly NoteFinding[], context: ReadBack): string {
  return inRows(choice, ({ part, patch }) => JSON.stringify([part, patch]))
    .map((row) => saidTogether(row, context))
    .join('; ');
}

/** A finding that would take something recorded away: what stands there, and a box to tick. */
function replaces({ finding, key }: Planned, context: ReadBack): TemplateResult {
  const { words, messages, examination, replacing, replace } = context;
  const { place } = finding;
  const recorded =
    finding.part === 'pulses'
      ? messages.map.findings(pulseAt(examination, finding.place), undefined, examination.scale)
      : messages.map.findings(undefined, bruitAt(examination, finding.place), examination.scale);
  return html`<span class="instead">
    ${words.now(recorded)}
    <label class="tick">
      <input
        type="checkbox"
        .checked=${replacing.has(key)}
        aria-label=${`${words.replace}: ${messages.anatomy.place(place)}`}
        @change=${(event: Event) => {
          event.stopPropagation();
          replace(key, (event.target as HTMLInputElement).checked);
        }}
      />
      ${words.replace}
    </label>
  </span>`;
}

/** What is certain, finding by finding, with the words it was read from. */
export function renderSure(sure: readonly Planned[], context: ReadBack): TemplateResult | typeof nothing {
  if (!sure.length) return nothing;
  const { words, text, notes } = context;
  const rows = inRows(sure, ({ finding: { part, patch, spans }, effect, key }) =>
    JSON.stringify([part, patch, spans, effect, effect === 'replaces' && key]),
  );
  return html`<section part="findings" aria-labelledby="understood">
    <h3 id="understood">${words.understood}</h3>
    <ul>
      ${rows.map((row) => {
        const { effect, finding } = row[0]!;
        const findings = row.map((one) => one.finding);
        return html`<li class=${effect}>
          <span class="finding">${saidTogether(findings, context)}</span>
          <span class="hint">${words.from(notes.quotesOf(text, finding.spans))}</span>
          ${effect === 'recorded' ? html`<span class="hint">${words.recordedAlready}</span>` : nothing}
          ${effect === 'locked' ? html`<span class="hint">${words.locked}</span>` : nothing}
          ${effect === 'replaces' ? replaces(row[0]!, context) : nothing}
        </li>`;
      })}
    </ul>
  </section>`;
}

/** A question with its choices, and the one to leave it out. */
export function renderAsked(
  { doubt, number, answer, planned }: Asked,
  context: ReadBack,
  take: (answer: NoteAnswer) => void,
): TemplateResult {
  const { words, text, notes } = context;
  const option = (value: NoteAnswer, label: string): TemplateResult =>
    html`<label class="tick">
      <input
        type="radio"
        name=${`question-${number}`}
        .checked=${answer === value}
        @change=${(event: Event) => {
          event.stopPropagation();
          take(value);
        }}
      />
      ${label}
    </label>`;
  return html`<fieldset
    id=${`question-${number}`}
    class=${answer === undefined ? 'open' : ''}
    part="question"
  >
    <legend>${words.question(number, doubt.code)}</legend>
    <p class="hint">${words.from(notes.quotesOf(text, doubt.spans))}</p>
    ${doubt.choices.map((choice, i) => option(i, choiceSaid(choice, context)))}
    ${option('leave', words.leaveOut)}
    ${planned.filter(({ effect }) => effect === 'replaces').map((one) => replaces(one, context))}
  </fieldset>`;
}

/** What nothing was understood of. */
export function renderNotUnderstood(
  unread: readonly Span[],
  { words, text, notes }: ReadBack,
): TemplateResult | typeof nothing {
  if (!unread.length) return nothing;
  return html`<section aria-labelledby="not-understood">
    <h3 id="not-understood">${words.notUnderstood}</h3>
    <ul class="passages">
      ${notes.quotesOf(text, unread).map((quote) => html`<li>${quote}</li>`)}
    </ul>
    <p class="hint">${words.changesNothing}</p>
  </section>`;
}
