export type { Span } from './groups.js';
export { LONGEST_NOTE, type NoteOptions, readNote } from './read.js';
export * from './reading.js';
export { writeNote } from './write.js';
