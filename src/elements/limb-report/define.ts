import { LimbReport } from './element.js';

if (!customElements.get('limb-report')) customElements.define('limb-report', LimbReport);

export { LimbReport };
