import { LimbLetter } from './element.js';

if (!customElements.get('limb-letter')) customElements.define('limb-letter', LimbLetter);

export { LimbLetter };
