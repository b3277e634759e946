import { html, nothing, type TemplateResult } from 'lit';
import type { LessonWords } from '../../locale/lesson.js';
import type { Heard } from './ear.js';
import type { FullScreen } from './full-screen.js';
import type { KeyAct } from './keys.js';
import type { Over } from './over.js';
import type { Show } from './show.js';

/** What the buttons below a slide show. */
export interface ControlsView {
  readonly words: LessonWords;
  readonly show: Show;
  /** Whether the finding of the step was revealed. */
  readonly open: boolean;
  readonly presenter: boolean;
  readonly over: Pick<Over, 'light' | 'ink'>;
  readonly full: Pick<FullScreen, 'on' | 'refused'>;
  readonly heard: Heard | undefined;
  /** What the step lets one hear; missing where it is nothing. */
  readonly next: Heard | undefined;
  readonly act: (what: KeyAct) => void;
}

/** Everything that the keys do, as buttons. */
export function renderControls(view: ControlsView): TemplateResult {
  const { words, show, open, presenter, over, full, heard, next, act } = view;
  const button = (what: KeyAct, name: string, pressed?: boolean, kind = ''): TemplateResult =>
    html`<button
      type="button"
      class="button ${kind}"
      data-act=${String(what)}
      aria-pressed=${pressed ?? nothing}
      @click=${() => act(what)}
    >
      ${name}
    </button>`;
  return html`<div class="controls" part="controls" role="group" aria-label=${words.controls}>
    ${button('back', words.back)} ${button('next', words.next, undefined, 'solid')}
    ${button('reveal', open ? words.hide : words.reveal)} ${button('overview', words.overview, show.overview)}
    ${button('wave', words.wave.title, show.wave)} ${button('mark', words.marks.name, show.marking)}
    ${button('black', words.blackScreen, show.black)}
    ${!presenter && next ? button('hear', words.sound[next.by](next.place), heard !== undefined) : nothing}
    ${button('spotlight', words.spotlight, over.light)} ${button('ink', words.ink, over.ink)}
    ${button('wipe', show.marking ? words.marks.wipe : words.wipe)}
    ${presenter ? button('restart', words.restart) : button('full', words.fullScreen, full.on)}
    ${full.refused ? html`<p class="hint" role="status">${words.fullRefused}</p>` : nothing}
    <p class="hint">${words.keys}</p>
  </div>`;
}
