import { PulseLesson } from './element.js';

// The map is fetched when the room first marks on one.
PulseLesson.defineMap = () => import('../pulse-map/define.js');

if (!customElements.get('pulse-lesson')) customElements.define('pulse-lesson', PulseLesson);

export { PulseLesson };
