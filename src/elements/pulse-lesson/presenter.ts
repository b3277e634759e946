import { html, type TemplateResult } from 'lit';
import { textIn } from '../../lesson/index.js';
import { styled } from '../common/styled.js';
import { clock } from '../common/clock.js';
import type { Hand } from './hand.js';
import type { Show } from './show.js';
import { renderSlide, type SlideView } from './slides.js';

const MINUTE = 60_000;

function two(n: number): string {
  return String(n).padStart(2, '0');
}

/** Minutes and seconds since the lesson began. */
function runningText({ began }: Show, now: number): string {
  const seconds = began === undefined ? 0 : Math.max(0, Math.floor((now - began) / 1000));
  return `${two(Math.floor(seconds / 60))}:${two(seconds % 60)}`;
}

/**
 * The presenter's own window: clocks, what is on the screen, what comes next with its finding still hidden, and notes.
 * @param shown what is on the screen
 * @param hand points and draws on it
 * @param kind class of the slide
 */
export function renderPresenter(
  view: SlideView,
  shown: TemplateResult,
  hand: Hand,
  kind: string,
  controls: TemplateResult,
): TemplateResult {
  const { lesson, steps, show, speech } = view;
  const words = speech.parts.lesson;
  const now = clock.now();
  const step = steps[show.at - 1];
  const next = steps[show.at];
  const hidden: Show = {
    ...show,
    at: show.at + 1,
    revealed: show.revealed.filter((id) => id !== next?.id),
    overview: false,
    marking: false,
  };
  const passed = show.began === undefined ? 0 : Math.floor((now - show.began) / MINUTE);
  const notes = step?.notes ?? (show.at === 0 ? lesson.story : undefined);
  return html`<div class="desk">
    <div class="clocks">
      <p><span>${words.running}</span><b class="running">${runningText(show, now)}</b></p>
      ${lesson.minutes ? html`<p><span>${words.left(lesson.minutes - passed)}</span></p>` : ''}
      <p>
        <span>${words.time}</span
        ><b
          >${new Date(now).toLocaleTimeString(speech.tag, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })}</b
        >
      </p>
      <p class="way">
        <span>${step ? words.step(show.at, steps.length) : words.title}</span>
        <span class="track" aria-hidden="true"
          ><i ${styled({ 'inline-size': `${((100 * show.at) / steps.length).toFixed(1)}%` })}></i
        ></span>
      </p>
    </div>
    <section class="now">
      <h2>
        ${words.onScreen}${show.black ? html`: ${words.black}` : show.wave ? html`: ${words.wave.title}` : show.marking ? html`: ${words.marks.title}` : ''}
      </h2>
      <div class="frame">
        <div
          class=${kind}
          @pointerdown=${hand.down}
          @pointermove=${hand.move}
          @pointerup=${hand.up}
          @pointercancel=${hand.cancel}
        >
          ${shown}
        </div>
      </div>
    </section>
    <section class="soon">
      <h2>${words.upNext}${next ? html`: ${words.act(next.act)}` : ''}</h2>
      ${
        next
          ? html`<div class="frame" inert>
              <div class="slide">${renderSlide({ ...view, show: hidden })}</div>
            </div>`
          : html`<p>${words.end}</p>`
      }
      <div class="notes">
        <h2>${words.notes}</h2>
        <p>${notes ? textIn(notes, speech.tag) : words.noNotes}</p>
        ${step?.question ? html`<p><b>${words.question}</b> ${textIn(step.question, speech.tag)}</p>` : ''}
      </div>
    </section>
    ${controls}
  </div>`;
}
