import { PulsePractice } from './element.js';

if (!customElements.get('pulse-practice')) customElements.define('pulse-practice', PulsePractice);

export { PulsePractice };
