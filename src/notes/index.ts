export { noteEffect, NOTE_EFFECTS, type NoteEffect } from './against.js';
export type { Span } from './groups.js';
export { LONGEST_NOTE, type NoteOptions, readNote } from './read.js';
export { type NotePiece, notePieces, quotesOf } from './pieces.js';
export * from './reading.js';
export { writeNote } from './write.js';
