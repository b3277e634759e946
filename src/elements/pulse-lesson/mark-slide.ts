import { html, type TemplateResult } from 'lit';
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

export function renderMark({ speech, store, mirror, map, leave }: MarkView): TemplateResult {
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
  return html`<div class="marking" @keydown=${remote}>
    <div class="whose">
      <h2>${words.marks.title}</h2>
      <p class="how">${mirror ? words.marks.mirror : words.marks.whose}</p>
    </div>
    ${
      map === 'there'
        ? html`<pulse-map
            .store=${store}
            ?readonly=${mirror}
            lang=${speech.tag}
            label=${words.marks.title}
          ></pulse-map>`
        : html`<p role="status">${map === 'failed' ? words.marks.failed : words.marks.loading}</p>`
    }
  </div>`;
}
