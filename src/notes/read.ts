import type { ScaleId } from '../examination/index.js';
import type { LanguageTag } from '../locale/list.js';
import { withLists } from './columns.js';
import type { Span } from './groups.js';
import type { NoteReading } from './reading.js';
import { refined } from './refine.js';
import { sentencesOf } from './sentences.js';
import { settle } from './settle.js';
import { sidesOf } from './sides.js';
import { mannerOf } from './strength.js';
import { tokensOf } from './tokens.js';
import { vocabularyOf } from './vocabulary.js';
import type { Walker } from './story.js';
import { tellSentence } from './walk.js';

export interface NoteOptions {
  /** The scale that figures are on where the note does not say. */
  readonly scale: ScaleId;
  readonly language: LanguageTag;
}

/** Longest note that is read, in UTF-16 units; what stands beyond is marked as not understood. */
export const LONGEST_NOTE = 20_000;

function merged(spans: readonly Span[]): Span[] {
  const out: { start: number; end: number }[] = [];
  for (const { start, end } of [...spans].sort((a, b) => a.start - b.start)) {
    const last = out.at(-1);
    if (last && start <= last.end + 1) last.end = Math.max(last.end, end);
    else out.push({ start, end });
  }
  return out;
}

/**
 * Reads a clinician's typed or dictated note: which pulses were felt and how strongly, which bruits were heard, what could not be
 * examined. What is doubtful becomes a question with its choices; what is of another time or person says nothing; what is not
 * understood is marked. Pure and total: any text gives a reading, and nothing is written (see `writeNote`).
 *
 * @param text the note; offsets of the reading are UTF-16 units in it
 */
export function readNote(text: string, { scale, language }: NoteOptions): NoteReading {
  const read = text.slice(0, LONGEST_NOTE);
  const tokens = refined(tokensOf(read, vocabularyOf(language)));
  const manner = mannerOf(tokens, scale);
  const walker: Walker = { limb: 'leg' };
  const told = sentencesOf(withLists(tokens, manner)).map((sentence) =>
    tellSentence(sentence, manner, walker),
  );
  const { findings, doubts } = settle(sidesOf(told));
  const unread = told.flatMap((one) => one.unread);
  if (text.length > LONGEST_NOTE) unread.push({ start: LONGEST_NOTE, end: text.length });
  const spans = <T extends { readonly spans: readonly Span[] }>(one: T): T => ({
    ...one,
    spans: merged(one.spans),
  });
  return {
    findings: findings.map(spans),
    doubts: doubts.map((doubt) => ({
      ...spans(doubt),
      choices: doubt.choices.map((choice) => choice.map(spans)),
    })),
    unread: merged(unread),
  };
}
