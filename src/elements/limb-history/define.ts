import { LimbHistoryElement } from './element.js';

if (!customElements.get('limb-history')) customElements.define('limb-history', LimbHistoryElement);

export { LimbHistoryElement };
