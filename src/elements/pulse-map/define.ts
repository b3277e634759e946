import '../pulse-reading/define.js';
import { PulseMap } from './element.js';

if (!customElements.get('pulse-map')) customElements.define('pulse-map', PulseMap);
