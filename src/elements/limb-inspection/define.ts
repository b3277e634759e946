import { LimbInspectionElement } from './element.js';

if (!customElements.get('limb-inspection')) customElements.define('limb-inspection', LimbInspectionElement);

export { LimbInspectionElement };
