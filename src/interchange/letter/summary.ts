import type { Examination } from '../../examination/index.js';
import {
  type LetterContext,
  type LetterLength,
  letterOf,
  type LetterPart,
  type LetterPartId,
  type LetterStatement,
} from '../../letter/index.js';
import { firstUses } from '../../locale/first-use.js';
import { partMessagesFor } from '../../locale/parts.js';
import type { LetterWords } from '../../locale/letter.js';
import type { Register } from '../../locale/terms.js';
import type { FindingPath } from '../../report/index.js';

/** What a summary is made with. */
export interface SummaryOptions extends Partial<LetterContext> {
  /** How much is said; `short` where not given. */
  readonly length?: LetterLength;
  /** BCP 47 tag of a registered language; English where not given or not registered. */
  readonly language?: string;
  /** Terms of the trade, or plain words for patients. */
  readonly register?: Register;
}

/** A sentence of a summary in words, and where in the record what it says stands. */
export interface SummarySentence {
  readonly code: LetterStatement['code'];
  readonly text: string;
  /** Paths into the record, such as `pulses.femoral.left`; empty for a sentence that rests on no single finding. */
  readonly from: readonly FindingPath[];
}

/** A paragraph of a summary. */
export interface SummaryParagraph {
  readonly id: LetterPartId;
  /** Empty where the paragraph has none; only a handover has headings. */
  readonly heading: string;
  readonly sentences: readonly SummarySentence[];
}

/** A record in words: plain data, to be shown, edited, or rendered by `summaryText`, `summaryMarkdown` and `summaryHtml`. */
export interface Summary {
  readonly length: LetterLength;
  /** The tag of the language it is in, as it was asked for. */
  readonly language: string;
  /** How the reader is addressed, after the flags; empty where nobody is. */
  readonly greeting: string;
  readonly paragraphs: readonly SummaryParagraph[];
}

const isHeaded = (id: LetterPartId, headings: LetterWords['headings']): id is keyof typeof headings =>
  Object.hasOwn(headings, id);

function paragraphOf(
  { id, sentences }: LetterPart,
  words: LetterWords,
  inFull: (text: string) => string,
  headed: boolean,
): SummaryParagraph {
  return {
    id,
    heading: headed && isHeaded(id, words.headings) ? words.headings[id] : '',
    sentences: once(
      sentences.map(({ says, from }) => ({ code: says.code, text: inFull(words.said(says)), from })),
    ),
  };
}

/** Sentences that say the very same in the place of the first, with the findings of all: two flags may ask for one act. */
function once(sentences: readonly SummarySentence[]): SummarySentence[] {
  const told = new Map<string, SummarySentence>();
  for (const one of sentences) {
    const before = told.get(one.text);
    told.set(one.text, before ? { ...before, from: [...new Set([...before.from, ...one.from])] } : one);
  }
  return [...told.values()];
}

/**
 * A record in words: one line, a summary, a clinic letter, or a handover by situation, background, assessment and recommendation.
 * Flags stand first, findings from proximal to distal and side by side apart, normal ones in few words; what was not recorded
 * is not said. It suggests a place and never names a diagnosis as found; recommendations are those of the flags alone.
 * @param examination a record that was read
 * @returns sentences, each with the findings it comes from; the same record and options give the same words
 */
export function summaryOf(examination: Examination, options: SummaryOptions = {}): Summary {
  const { length = 'short', language = 'en', register = 'trade', ...context } = options;
  const { letter: words, flags } = partMessagesFor(language, register);
  const parts = letterOf(examination, { ...context, length });
  const inFull = firstUses(flags.abbreviations);
  return {
    length,
    language,
    greeting: length === 'letter' && register === 'trade' ? words.greeting : '',
    paragraphs: parts.map((part) => paragraphOf(part, words, inFull, length === 'handover')),
  };
}
