import '../pulse-lesson/define.js';
import { PulseLessonEditor } from './element.js';

if (!customElements.get('pulse-lesson-editor'))
  customElements.define('pulse-lesson-editor', PulseLessonEditor);

export { PulseLessonEditor };
