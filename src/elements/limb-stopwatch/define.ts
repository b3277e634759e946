import { LimbStopwatch } from './element.js';

if (!customElements.get('limb-stopwatch')) customElements.define('limb-stopwatch', LimbStopwatch);

export { LimbStopwatch };
