import { LimbContext } from './element.js';

if (!customElements.get('limb-context')) customElements.define('limb-context', LimbContext);

export { LimbContext };
