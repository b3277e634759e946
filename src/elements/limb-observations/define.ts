import '../limb-flags/define.js';
import { LimbObservations } from './element.js';

if (!customElements.get('limb-observations')) customElements.define('limb-observations', LimbObservations);

export { LimbObservations };
