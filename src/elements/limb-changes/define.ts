import { LimbChanges } from './element.js';

if (!customElements.get('limb-changes')) customElements.define('limb-changes', LimbChanges);

export { LimbChanges };
