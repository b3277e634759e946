import { css, html, nothing, type TemplateResult } from 'lit';
import { portionNormal } from '../../examination/index.js';
import { showNormals, unstatedHere } from './normals.js';
import type { Recorder } from './recorder.js';
import type { Session } from './session.js';

export const normalsStyles = css`
  .normals {
    padding: 10px 16px 12px;
    border-block-end: 1px solid var(--_line);
  }
  .normals ul {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin: 6px 0 0;
    padding: 0;
    list-style: none;
  }
  .normals .button {
    display: block;
    padding-block: 6px;
    text-align: start;
    white-space: normal;
  }
  .normals .hint {
    display: block;
    font-weight: 400;
  }
`;

/** The list of what can be stated as normal: each act names what it writes before it writes. */
export function renderNormals(session: Session, recorder: Recorder): TemplateResult | typeof nothing {
  const { map } = session.allWords;
  const all = session.editable ? unstatedHere(session) : [];
  if (!all.length) return nothing;
  return html`<section
    class="normals"
    aria-label=${map.markNormal}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      showNormals(session, false);
    }}
  >
    <p class="hint">${map.normals}</p>
    <ul>
      ${all.map((unstated) => {
        const { portion, places } = unstated;
        const names = places.map((place) =>
          'side' in portion ? map.siteShort(place.site) : session.words.anatomy.place(place),
        );
        return html`<li>
          <button
            type="button"
            class="button"
            @click=${() => {
              recorder.whole(portionNormal(session.examination, unstated), (changed) =>
                changed ? map.portionNormal(portion, places.length) : undefined,
              );
              showNormals(session, unstatedHere(session).length > 0);
            }}
          >
            ${map.portionNormal(portion, places.length)}<span class="hint">${names.join(', ')}</span>
          </button>
        </li>`;
      })}
    </ul>
  </section>`;
}
