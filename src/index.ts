/** Everything: the core, and the elements, registered by importing this module. For the core alone see `pulse-map/core`. */
export * from './core.js';
