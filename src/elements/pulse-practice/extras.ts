import { html, nothing, type TemplateResult } from 'lit';
import {
  checklistOf,
  type HiddenPatient,
  type MarkSheet,
  parseCounts,
  type Presentation,
  PRESENTED_VERDICTS,
  type PresentedFinding,
  spreadOf,
} from '../../practice/index.js';
import { quotesOf } from '../../notes/index.js';
import { flagWordsFor } from '../../locale/flags.js';
import { option } from '../common/option.js';
import { styled } from '../common/styled.js';
import { choicesOf } from './answering.js';
import { actSaid, findingsSaid, type Speech } from './said.js';
import { rightSaid } from './sheet.js';

/** What a pulse or bruit of a presentation is called. */
function valueSaid(value: PresentedFinding['said'], part: 'pulses' | 'bruits', { messages }: Speech): string {
  if (value === undefined) return '';
  const { grades, bruits } = messages.examination;
  return part === 'pulses' ? grades[value as keyof typeof grades] : bruits[value as keyof typeof bruits];
}

/** What was made of a presentation, with the text that it was made of: spans of it lie elsewhere in any other. */
export interface CheckedPresentation extends Presentation {
  readonly of: string;
}

/** The field for a presentation, and what was made of it. */
export function renderPresentation(
  text: string,
  read: CheckedPresentation | undefined,
  speech: Speech,
  on: { readonly type: (text: string) => void; readonly check: () => void },
): TemplateResult {
  const { messages, parts } = speech;
  const words = parts.practice;
  return html`<section class="extra">
    <h4 id="present">${words.present}</h4>
    <p class="hint" id="present-how">${words.presentHow}</p>
    <textarea
      class="field"
      rows="4"
      aria-labelledby="present"
      aria-describedby="present-how"
      .value=${text}
      @input=${(event: Event) => on.type((event.target as HTMLTextAreaElement).value)}
    ></textarea>
    <p class="row">
      <button type="button" class="button" data-do="check" @click=${on.check}>${words.check}</button>
    </p>
    <div role="status">
      ${
        read
          ? html`<ul class="presented">
                ${PRESENTED_VERDICTS.flatMap((verdict) =>
                  read.findings
                    .filter((one) => one.verdict === verdict)
                    .map(
                      ({ part, place, said, there, found }) =>
                        html`<li class=${verdict}>
                          <b>${words.verdicts[verdict]}</b>
                          <span
                            >${messages.map.siteTitle(place)}:
                            ${[said, verdict === 'right' ? undefined : there]
                              .filter((value) => value !== undefined)
                              .map(
                                (value, i) =>
                                  `${i && said !== undefined ? `${words.truth}: ` : ''}${valueSaid(value, part, speech)}`,
                              )
                              .join('. ')}${found ? html` <i>${words.erred}</i>` : nothing}</span
                          >
                        </li>`,
                    ),
                )}
              </ul>
              ${
                read.reading.unread.length
                  ? html`<p class="hint">
                      ${words.unread}: ${quotesOf(read.of, read.reading.unread).join(', ')}
                    </p>`
                  : nothing
              }`
          : nothing
      }
    </div>
  </section>`;
}

export interface Vote {
  readonly question: 'cause' | 'stage' | 'urgency' | 'first';
  readonly text: string;
  /** The counts that were read; missing until they are, and where they could not be. */
  readonly counts?: readonly number[];
  readonly wrong?: true;
}
export const NO_VOTE: Vote = { question: 'urgency', text: '' };

/** Reads the line of counts of a vote. */
function counted(vote: Vote, choices: number): Vote {
  const { question, text } = vote;
  const counts = parseCounts(text, choices);
  return counts ? { question, text, counts } : { question, text, wrong: true };
}

/** The room's hands: entered in one line, shown as a spread, the truth marked once the answer was given. */
export function renderVote(
  vote: Vote,
  sheet: MarkSheet | undefined,
  speech: Speech,
  change: (vote: Vote) => void,
): TemplateResult {
  const words = speech.parts.practice;
  const questions = choicesOf(speech);
  const { choices } = questions.find(({ name }) => name === vote.question)!;
  const spread = vote.counts && spreadOf(vote.counts);
  const right = sheet ? rightValues(vote.question, sheet) : [];
  return html`<details class="extra vote">
    <summary>${words.vote}</summary>
    <form
      @submit=${(event: Event) => {
        event.preventDefault();
        const { value } = (event.target as HTMLFormElement).elements.namedItem('counts') as HTMLInputElement;
        change(counted({ ...vote, text: value }, choices.length));
      }}
    >
      <label
        ><span class="hint">${words.voteOn}</span>
        <select
          class="field"
          name="question"
          @change=${(event: Event) =>
            change({ question: (event.target as HTMLSelectElement).value as Vote['question'], text: '' })}
        >
          ${questions.map(({ name, legend }) => option(name, legend, name === vote.question))}
        </select>
      </label>
      <label
        ><span class="hint">${words.voteHow(choices.length)}</span>
        <input
          class="field"
          name="counts"
          inputmode="numeric"
          autocomplete="off"
          aria-invalid=${vote.wrong ? 'true' : nothing}
          .value=${vote.text}
          @input=${(event: Event) => change({ question: vote.question, text: (event.target as HTMLInputElement).value })}
        />
      </label>
      <button class="button">${words.count}</button>
      ${vote.wrong ? html`<p role="alert">${words.voteWrong}</p>` : nothing}
    </form>
    <ul class="told" role="status">
      ${choices.map(
        ([value, text], i) =>
          html`<li class=${right.includes(value) ? 'true' : ''}>
            <span>${text}${right.includes(value) ? html` <b>(${words.truth})</b>` : nothing}</span>
            ${
              spread
                ? html`<span class="bar"
                      ><i
                        aria-hidden="true"
                        ${styled({ 'inline-size': `${(100 * (spread.shares[i] ?? 0)).toFixed(0)}%` })}
                      ></i></span
                    ><span class="n">${spread.counts[i]} ${words.hands}</span>`
                : nothing
            }
          </li>`,
      )}
    </ul>
    ${sheet ? nothing : html`<p class="hint">${words.voteHidden}</p>`}
  </details>`;
}

function rightValues(question: Vote['question'], { right }: MarkSheet): readonly string[] {
  switch (question) {
    case 'cause':
      return right.causes;
    case 'stage':
      return right.stages;
    case 'urgency':
      return [right.urgency];
    case 'first':
      return right.first;
  }
}

/** The sheet of an examiner beside a practical examination, to be ticked on paper or screen. */
export function renderExaminer(patient: HiddenPatient, speech: Speech): TemplateResult {
  const words = speech.parts.practice;
  const { items, right } = checklistOf(patient);
  const said = rightSaid(right, speech);
  return html`<section class="sheet examiner" part="sheet">
    <h2>${words.examiner}: ${words.patient(patient.code)}</h2>
    <p>${words.examinerHow}</p>
    <table class="marks">
      <tbody>
        ${(
          [
            ['level', said.lesions],
            ['cause', said.cause],
            ['stage', said.stage],
            ['urgency', said.urgency],
            ['first', said.first],
          ] as const
        )
          .filter(([, text]) => text)
          .map(
            ([part, text]) =>
              html`<tr>
                <th scope="row">${words.parts[part]}</th>
                <td>${text}</td>
                <td><input type="checkbox" aria-label=${`${words.mark}: ${words.parts[part]}`} /></td>
              </tr>`,
          )}
        ${right.flags.map((flag) => {
          const heading = flagWordsFor(speech.tag).heading(flag);
          return html`<tr class="less">
            <th scope="row">${words.flag}</th>
            <td>${heading}</td>
            <td><input type="checkbox" aria-label=${`${words.mark}: ${heading}`} /></td>
          </tr>`;
        })}
      </tbody>
    </table>
    ${right.flags.length ? nothing : html`<p>${words.flags}: ${words.noFlags}</p>`}
    <table class="marks">
      <thead>
        <tr>
          <th scope="col">${words.candidateDoes}</th>
          <th scope="col">${words.expected}</th>
          <th scope="col">${words.mark}</th>
        </tr>
      </thead>
      <tbody>
        ${items.map(({ id, expected }) => {
          const lines = findingsSaid(expected, speech);
          if (!lines.length) return nothing;
          return html`<tr class=${lines.some(({ weight }) => weight === 'abnormal') ? 'less' : ''}>
            <th scope="row">${actSaid(id, speech)}</th>
            <td>${lines.map(({ text }) => text).join(' ')}</td>
            <td><input type="checkbox" aria-label=${`${words.mark}: ${actSaid(id, speech)}`} /></td>
          </tr>`;
        })}
      </tbody>
    </table>
    <p class="row no-print">
      <button type="button" class="button" @click=${() => print()}>${words.print}</button>
    </p>
    <p class="hint">${words.wristSignal}</p>
    <p class="hint">${words.invented} ${words.notAdvice}</p>
  </section>`;
}
