import '../../../src/index.js';
