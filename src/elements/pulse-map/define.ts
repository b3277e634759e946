import '../pulse-reading/define.js';
import { PulseMap } from './element.js';

if (!customElements.get('pulse-map')) customElements.define('pulse-map', PulseMap);

// Red flags bring the staging rules with them: they come right after the first paint, in a chunk of their own.
void import('../limb-flags/define.js');
