import '../../../src/elements/pulse-map/define.js';
