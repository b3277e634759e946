import { PulseMap } from './element.js';

PulseMap.defineLater = ({ LimbFlags, PulseReading }) => {
  if (!customElements.get('limb-flags')) customElements.define('limb-flags', LimbFlags);
  if (!customElements.get('pulse-reading')) customElements.define('pulse-reading', PulseReading);
};

if (!customElements.get('pulse-map')) customElements.define('pulse-map', PulseMap);

export { PulseMap };
