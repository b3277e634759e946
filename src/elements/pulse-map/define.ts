import '../pulse-reading/define.js';
import { PulseMap } from './element.js';

// In a chunk of their own: they bring the staging rules with them.
PulseMap.loadFlags = () => import('../limb-flags/define.js');

if (!customElements.get('pulse-map')) customElements.define('pulse-map', PulseMap);
