import { PulseLesson } from './element.js';

if (!customElements.get('pulse-lesson')) customElements.define('pulse-lesson', PulseLesson);

export { PulseLesson };
