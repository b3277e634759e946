import '../pulse-reading/define.js';
import { PulseMap } from './element.js';

PulseMap.defineFlags = (element) => {
  if (!customElements.get('limb-flags')) customElements.define('limb-flags', element);
};

if (!customElements.get('pulse-map')) customElements.define('pulse-map', PulseMap);

export { PulseMap };
