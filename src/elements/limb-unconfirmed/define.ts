import { LimbUnconfirmed } from './element.js';

if (!customElements.get('limb-unconfirmed')) customElements.define('limb-unconfirmed', LimbUnconfirmed);

export { LimbUnconfirmed };
