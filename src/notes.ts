/** Typed and dictated notes read into findings. No DOM; loaded by nothing else of the core, since it carries its own words. */
export * from './notes/index.js';
