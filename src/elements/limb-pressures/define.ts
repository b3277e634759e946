import { LimbPressures } from './element.js';

if (!customElements.get('limb-pressures')) customElements.define('limb-pressures', LimbPressures);

export { LimbPressures };
