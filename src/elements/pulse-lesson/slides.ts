import { html, nothing, type TemplateResult } from 'lit';
import {
  agreementOf,
  findingAt,
  type Lesson,
  type LessonAct,
  type LessonStep,
  textIn,
} from '../../lesson/index.js';
import { glyphIcon, markIcon } from '../common/glyph.js';
import { cautionOf, findingsSaid, readingSaid, shownRecord, type Speech } from './said.js';
import type { Show } from './show.js';
import { renderPicture } from './site-picture.js';

/** All that a slide is made of. */
export interface SlideView {
  readonly lesson: Lesson;
  readonly steps: readonly LessonStep[];
  readonly show: Show;
  readonly speech: Speech;
}

/** Most findings that a slide lists one below the other. */
const IN_ONE_COLUMN = 4;

/** Height of the picture above a list, in slide units: the fewer findings, the larger. */
const ABOVE_LIST = { short: 560, long: 400 } as const;

/** The glyphs of what a pulse or an artery can show, in the order of their meanings. */
const SIGNS: Readonly<Partial<Record<LessonAct['kind'], readonly (TemplateResult | typeof nothing)[]>>> = {
  pulse: (['normal', 'reduced', 'absent'] as const).map(
    (kind, i) => html`<span class="sign">${glyphIcon({ kind, numeral: 2 - i, marks: [] }, 24)}</span>`,
  ),
  listen: [
    html`<span class="sign"></span>`,
    html`<span class="sign">${markIcon('systolic', 24)}</span>`,
    html`<span class="sign">${markIcon('continuous', 24)}</span>`,
  ],
};

/** Height of the picture on the first slide, which stands beside the story and may be as high as the slide, in its units. */
const OPENING = 960;

function titleSlide({ lesson, show, speech }: SlideView): TemplateResult {
  const { tag, parts } = speech;
  const words = parts.lesson;
  const record = shownRecord(lesson, show.revealed);
  return html`<div class="opening">
    <div>
      <h2>${textIn(lesson.title, tag)}</h2>
      <p class="story">${textIn(lesson.story, tag)}</p>
      <p class="by">
        ${lesson.minutes ? html`${words.minutes(lesson.minutes)}. ` : nothing}${lesson.real ? words.real : words.patient}.
      </p>
    </div>
    ${renderPicture({ act: undefined, lesson, record, messages: speech.messages, height: OPENING })}
  </div>`;
}

/** What the step found, once revealed; until then that it is hidden, and nothing of it. */
function findingBand({ lesson, show, speech }: SlideView, step: LessonStep): TemplateResult {
  const words = speech.parts.lesson;
  const open = show.revealed.includes(step.id);
  const record = shownRecord(lesson, show.revealed);
  const reading = readingSaid(record, speech);
  const found = open ? findingsSaid(findingAt(lesson, step.id), speech) : [];
  const lines = open
    ? found.length
      ? html`<ul class=${found.length > IN_ONE_COLUMN ? 'found many' : 'found'}>
          ${found.map(({ text, weight }) => html`<li class=${weight === 'abnormal' ? 'abnormal' : ''}>${text}</li>`)}
        </ul>`
      : html`<p>${words.nothing}</p>`
    : html`<p class="hidden">${words.hidden}</p>`;
  return html`<div class="band ${open ? 'open' : ''}">
    <h3>${words.finding}</h3>
    ${lines}
    <h3>${words.reading}</h3>
    <p class="reading">${reading.length ? reading.join('. ') : words.nothingYet}</p>
  </div>`;
}

function conclusionBand({ lesson, show, speech }: SlideView): TemplateResult {
  const words = speech.parts.lesson;
  const record = shownRecord(lesson, show.revealed);
  const reading = readingSaid(record, speech);
  const open = show.revealed.includes('conclusion');
  const { text, differs } = lesson.answer;
  return html`<div class="answer">
    <h3>${words.reading}</h3>
    <p>${reading.length ? reading.join('. ') : words.nothingYet}</p>
    <h3>${words.answer}</h3>
    ${
      open
        ? html`<p class="truth">${textIn(text, speech.tag)}</p>
            ${differs ? html`<p>${textIn(differs, speech.tag)}</p>` : nothing}
            ${(lesson.real ? [] : agreementOf(lesson))
              .filter(({ told, concluded }) => told.length || concluded)
              .map(
                ({ limb, agrees }) =>
                  html`<p class="second">${agrees ? words.agrees(limb) : words.differs(limb)}</p>`,
              )}`
        : html`<p class="hidden">${words.hidden}</p>`
    }
  </div>`;
}

function stepSlide(view: SlideView, step: LessonStep): TemplateResult {
  const { lesson, steps, show, speech } = view;
  const { messages, parts, tag } = speech;
  const words = parts.lesson;
  const { act } = step;
  const record = shownRecord(lesson, show.revealed);
  const caution = cautionOf(step, speech);
  const meanings = words.meanings(act);
  const ends = act.kind === 'conclusion';
  const listed = !['pulse', 'listen', 'conclusion'].includes(act.kind);
  // As large before the finding is revealed as after, so that nothing jumps.
  const many = listed && findingsSaid(findingAt(lesson, step.id), speech).length > IN_ONE_COLUMN;
  const height = listed ? ABOVE_LIST[many ? 'long' : 'short'] : undefined;
  return html`<div class="step ${listed ? 'listed' : ''}">
    <div class="seen">
      ${renderPicture({ act, lesson, record, messages, ...(height && { height }) })}
      ${ends ? nothing : findingBand(view, step)}
    </div>
    <div class="told">
      <p class="count">${words.step(steps.indexOf(step) + 1, steps.length)}</p>
      <h2>${words.act(act)}</h2>
      <p class="how">${words.how(act)}</p>
      ${step.question ? html`<p class="question"><b>${words.question}</b> ${textIn(step.question, tag)}</p>` : nothing}
      ${
        meanings.length
          ? html`<ul class="meanings">
              ${meanings.map(
                (one, i) =>
                  html`<li>
                    ${SIGNS[act.kind]?.[i] ?? nothing}<span><b>${one.name}</b> ${one.says}</span>
                  </li>`,
              )}
            </ul>`
          : nothing
      }
      ${ends ? conclusionBand(view) : nothing}
      ${caution ? html`<p class="caution"><i></i><span>${caution}</span></p>` : nothing}
    </div>
  </div>`;
}

/** The slide that stands on the screen. */
export function renderSlide(view: SlideView): TemplateResult {
  const step = view.steps[view.show.at - 1];
  return step ? stepSlide(view, step) : titleSlide(view);
}

/** Every step by number and name, to be jumped to; `wanted` narrows it to the names that hold it. */
export function renderOverview(
  { steps, show, speech }: SlideView,
  wanted: string,
  go: (at: number) => void,
  want: (text: string) => void,
): TemplateResult {
  const words = speech.parts.lesson;
  const plain = (text: string): string => text.toLocaleLowerCase(speech.tag);
  const shown = steps
    .map((step, i) => ({ step, at: i + 1, name: words.act(step.act) }))
    .filter(({ name }) => plain(name).includes(plain(wanted.trim())));
  return html`<div class="sequence">
    <h2>${words.sequence}</h2>
    <input
      type="search"
      aria-label=${words.goTo}
      placeholder=${words.goTo}
      autocomplete="off"
      .value=${wanted}
      @input=${(event: Event) => want((event.target as HTMLInputElement).value)}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === 'Enter' && shown[0]) go(shown[0].at);
      }}
    />
    <ol>
      ${shown.map(
        ({ step, at, name }) =>
          html`<li>
            <button
              type="button"
              class=${show.revealed.includes(step.id) ? 'done' : ''}
              aria-current=${at === show.at ? 'step' : nothing}
              @click=${() => go(at)}
            >
              <b>${at}</b><span>${name}</span>
            </button>
          </li>`,
      )}
    </ol>
  </div>`;
}
