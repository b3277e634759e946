import { BedsideTest } from './element.js';

if (!customElements.get('bedside-test')) customElements.define('bedside-test', BedsideTest);

export { BedsideTest };
