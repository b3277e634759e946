import { html, nothing, type TemplateResult } from 'lit';
import { placeFromKey, type PlaceKey, placeKey } from '../../anatomy/index.js';
import { travel, type View } from '../../drawing/index.js';
import { keyAct } from '../pulse-map/hand/keys.js';
import { type Tool, TOOLS } from './examining.js';
import type { Speech } from './said.js';

/** The parts of the map that can be shown. */
const VIEWS = ['whole', 'legs', 'arms'] as const satisfies readonly View[];
export type MapView = (typeof VIEWS)[number];

const KEYS: Readonly<Record<string, Tool>> = { f: 'feel', l: 'listen', d: 'doppler' };

/** The site that an event on the map is about. */
export function placeOf(event: Event, host: EventTarget): PlaceKey | undefined {
  for (const node of event.composedPath()) {
    if (node === host) return undefined;
    const key = node instanceof Element ? node.getAttribute('data-place') : null;
    if (key) return key as PlaceKey;
  }
  return undefined;
}

/** What a key pressed on a site does: `use` the tool in hand where none is named. */
export type MapKey =
  | { readonly kind: 'use'; readonly tool?: Tool }
  | { readonly kind: 'close' }
  | { readonly kind: 'travel'; readonly to: PlaceKey | undefined };

export function mapKey(event: KeyboardEvent, from: PlaceKey, shown: readonly PlaceKey[]): MapKey | undefined {
  if (event.ctrlKey || event.metaKey || event.altKey) return undefined;
  const tool = KEYS[event.key.toLowerCase()];
  if (tool) return { kind: 'use', tool };
  if (event.key === 'Enter' || event.key === ' ') return { kind: 'use' };
  if (event.key === 'Escape') return { kind: 'close' };
  const act = keyAct(event);
  const place = placeFromKey(from);
  if (act?.kind !== 'travel' || !place) return undefined;
  const to = travel(
    place,
    act.direction,
    shown.flatMap((key) => placeFromKey(key) ?? []),
  );
  return { kind: 'travel', to: to && placeKey(to) };
}

/** The tools above the map, and the part shown; no tools once the answer was given. */
export function renderTools(
  now: { readonly tool: Tool | undefined; readonly view: View },
  { parts: { practice: words } }: Speech,
  take: (tool: Tool) => void,
  show: (view: MapView) => void,
): TemplateResult {
  return html`<div class="tools">
    ${
      now.tool
        ? html`<div role="group" aria-label=${words.tools}>
            ${TOOLS.map(
              (tool) =>
                html`<button
                  type="button"
                  class="button"
                  data-tool=${tool}
                  aria-pressed=${now.tool === tool}
                  @click=${() => take(tool)}
                >
                  ${words.tool[tool]}
                </button>`,
            )}
          </div>`
        : nothing
    }
    <div role="group" aria-label=${words.views}>
      ${VIEWS.map(
        (view) =>
          html`<button
            type="button"
            class="button"
            data-view=${view}
            aria-pressed=${now.view === view}
            @click=${() => show(view)}
          >
            ${words.view[view]}
          </button>`,
      )}
    </div>
  </div>`;
}
