import '../limb-changes/define.js';
import { LimbVisits } from './element.js';

if (!customElements.get('limb-visits')) customElements.define('limb-visits', LimbVisits);

export { LimbVisits };
