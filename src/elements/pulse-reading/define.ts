import { PulseReading } from './element.js';

if (!customElements.get('pulse-reading')) customElements.define('pulse-reading', PulseReading);

export { PulseReading };
export { OpenPlaceEvent, ReadingChangeEvent } from './events.js';
