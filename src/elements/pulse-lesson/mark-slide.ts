import { html, type TemplateResult } from 'lit';
import type { LessonAct } from '../../lesson/index.js';
import { limbOfAct } from '../../lesson/steps.js';
import type { SlideView } from './slides.js';
import type { Stage } from './stage.js';

/** The map on which the room marks, in place of the slide. */
export interface MarkView extends SlideView {
  readonly store: Stage['marks']['store'];
  /** Shows what is marked elsewhere, and takes nothing. */
  readonly mirror: boolean;
  /** Whether the map is there, is still fetched, or cannot be had. */
  readonly map: 'there' | 'fetched' | 'failed';
  readonly leave: (way: 'next' | 'back') => void;
}

/** A remote leads out of the map wherever its focus is: these two keys are not the map's here. */
const WAYS: Readonly<Record<string, 'next' | 'back'>> = { PageDown: 'next', PageUp: 'back' };

/** The part of the body that a step is about. */
function viewOf(act: LessonAct | undefined): 'arms' | 'legs' | 'auto' {
  const limb = act && limbOfAct(act);
  if (limb === 'leg') return 'legs';
  return limb ? 'arms' : 'auto';
}

export function renderMark(view: MarkView): TemplateResult {
  const { steps, show, speech, store, mirror, map, leave } = view;
  const act = steps[show.at - 1]?.act;
  const words = speech.parts.lesson;
  const remote = {
    capture: true,
    handleEvent: (event: KeyboardEvent): void => {
      const way = WAYS[event.key];
      if (!way || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      event.stopPropagation();
      leave(way);
    },
  };
  const ready = map === 'there';
  const title = html`<strong slot="tools">${words.marks.title}</strong>`;
  return html`<div class="marking" @keydown=${remote}>
    ${ready ? '' : html`<p role="status">${map === 'failed' ? words.marks.failed : words.marks.loading}</p>`}
    ${
      ready
        ? html`<pulse-map
            .store=${store}
            ?readonly=${mirror}
            view=${viewOf(act)}
            lang=${speech.tag}
            label=${words.marks.title}
            >${mirror ? '' : title}</pulse-map
          >`
        : ''
    }
    <p class="how">${mirror ? words.marks.mirror : words.marks.whose}</p>
  </div>`;
}
