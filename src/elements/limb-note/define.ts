import { LimbNote } from './element.js';

if (!customElements.get('limb-note')) customElements.define('limb-note', LimbNote);

export { LimbNote };
