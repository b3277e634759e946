import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bruitAt,
  emptyExamination,
  type Examination,
  pulseAt,
  setBruit,
  setPulse,
} from '../../../src/examination/index.js';
import { LANGUAGES } from '../../../src/locale/list.js';
import { chosenFindings, noteEffect, notePieces, readNote, writeNote } from '../../../src/notes/index.js';
import { readNoteItems } from '../../notes/score.js';
import { anyExamination } from '../../tools/arbitraries.js';

/* Notes invented, common practice. */
const NOTES = readNoteItems(new URL('../../notes/notes.json', import.meta.url).pathname);
const femoral = { site: 'femoral', side: 'left' } as const;
const noted = (text: string) => readNote(text, { scale: '0-3', language: 'en' }).findings;
const recordOf = (grade: 'absent' | 'normal'): Examination =>
  setPulse(emptyExamination(), femoral, { grade, note: 'typed' });

describe('what a finding of a note does to a record', () => {
  it('adds beside what is recorded, repeats it, replaces it', () => {
    const [said] = noted('left femoral absent');
    expect(noteEffect(emptyExamination(), said!)).toBe('adds');
    expect(noteEffect(recordOf('absent'), said!)).toBe('recorded');
    expect(noteEffect(recordOf('normal'), said!)).toBe('replaces');
    const [heard] = noted('bruit over left femoral');
    expect(noteEffect(recordOf('normal'), heard!)).toBe('adds');
    expect(noteEffect(setBruit(recordOf('normal'), femoral, { bruit: 'none' }), heard!)).toBe('replaces');
    const [swollen] = noted('left femoral not examined, oedema');
    expect(noteEffect(recordOf('normal'), swollen!)).toBe('replaces');
  });

  it('never calls "adds" what takes something away, over random records and every note', () => {
    fc.assert(
      fc.property(anyExamination, fc.constantFrom(...NOTES), (examination, { text, scale, language }) => {
        for (const finding of chosenFindings(readNote(text, { scale, language }))) {
          const effect = noteEffect(examination, finding);
          const at = (record: Examination): object =>
            (finding.part === 'pulses' ? pulseAt(record, finding.place) : bruitAt(record, finding.place)) ??
            {};
          const next = writeNote(examination, [finding]);
          expect(effect === 'recorded' || effect === 'locked').toBe(next === examination);
          if (effect === 'adds') expect(at(next)).toMatchObject(at(examination));
        }
      }),
    );
  });
});

describe('the pieces of a note', () => {
  it('are the note itself, whole and in order', () => {
    const text = fc.oneof(fc.constantFrom(...NOTES.map((note) => note.text)), fc.string({ unit: 'binary' }));
    fc.assert(
      fc.property(text, fc.constantFrom(...LANGUAGES), (written, { tag }) => {
        const reading = readNote(written, { scale: '0-3', language: tag });
        const pieces = notePieces(written, reading);
        expect(pieces.map((piece) => piece.text).join('')).toBe(written);
        const numbered = pieces.flatMap(({ question }) => (question === undefined ? [] : [question]));
        expect(numbered.every((number) => reading.doubts[number - 1] !== undefined)).toBe(true);
      }),
    );
  });

  it('tell what was read, what is open, what was not understood', () => {
    const text = 'left femoral absent, DP present, xyzzy';
    const pieces = notePieces(text, readNote(text, { scale: '0-3', language: 'en' }));
    expect(pieces.filter(({ kind }) => kind !== 'plain')).toEqual([
      { text: 'left femoral absent', kind: 'read' },
      expect.objectContaining({ text: 'DP present', kind: 'open', question: 1 }),
      { text: 'xyzzy', kind: 'unread' },
    ]);
  });
});
