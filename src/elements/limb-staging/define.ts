import { LimbStaging } from './element.js';

if (!customElements.get('limb-staging')) customElements.define('limb-staging', LimbStaging);

export { LimbStaging };
