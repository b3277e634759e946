import { LimbFlags } from './element.js';

if (!customElements.get('limb-flags')) customElements.define('limb-flags', LimbFlags);

export { LimbFlags };
