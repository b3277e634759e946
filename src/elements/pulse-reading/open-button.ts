import { html, type TemplateResult } from 'lit';
import { type Place, placeKey } from '../../anatomy/index.js';
import { OpenPlaceEvent } from './events.js';

/** A button that opens a site on the map around or beside. */
export function openButton(place: Place, name: string, text: string): TemplateResult {
  return html`<button
    type="button"
    class="button"
    data-place=${placeKey(place)}
    aria-label=${name}
    @click=${(event: Event) => event.currentTarget?.dispatchEvent(new OpenPlaceEvent(place))}
  >
    ${text}
  </button>`;
}
