import type { LanguageTag } from '../locale/list.js';
import { fold, gaps, oneSlipApart } from './fold.js';
import { LEXICONS } from './languages.js';
import type { Lexicon, Meaning } from './meanings.js';

/** Shortest word whose slip of the hand is understood; in shorter ones a slip makes another word too easily. */
const SHORTEST_MISSPELT = 5;
/** Longest word that is looked up, so that no text can make one slow. */
const LONGEST_WORD = 40;

interface Node {
  means?: Meaning;
  readonly next: Map<string, Node>;
}

/** The words of one language made ready to be looked up. */
export interface Vocabulary {
  readonly lexicon: Lexicon;
  readonly root: Node;
  /** What one word alone means. */
  word(folded: string): Meaning | undefined;
  /** What a word that stands in no lexicon may mean: that of the one word a slip away, or unknown. */
  guess(folded: string): Meaning;
}

const stripped = (phrase: string): string[] =>
  fold(phrase)
    .split(/[\s.-]+/)
    .filter(Boolean);

function trieOf(lexicon: Lexicon): Node {
  const root: Node = { next: new Map() };
  for (const [means, phrases] of lexicon.phrases) {
    for (const phrase of phrases.split('|')) {
      let node = root;
      for (const word of stripped(phrase)) {
        let next = node.next.get(word);
        if (!next) node.next.set(word, (next = { next: new Map() }));
        node = next;
      }
      // The first entry of a phrase counts; a test keeps entries from contradicting each other.
      node.means ??= means;
    }
  }
  return root;
}

/** Whether a phrase that begins here takes something out of what was said before. */
const excepts = (node: Node): boolean =>
  node.means?.is === 'except' || [...node.next.values()].some((next) => excepts(next));

/** A word that begins such a phrase and stands alone: perhaps the rest of it is misspelt. */
const HALF: Meaning = { is: 'unknown', near: true };

/** A meaning as a text, to tell whether two are the same. */
const named = (meaning: Meaning): string => JSON.stringify(meaning);

function make(lexicon: Lexicon): Vocabulary {
  const root = trieOf(lexicon);
  const near = new Map<string, Set<string>>();
  const singles = new Map<string, Meaning>();
  for (const [word, node] of root.next) {
    singles.set(word, node.means ?? (excepts(node) ? HALF : { is: 'filler' }));
    for (const gap of gaps(word)) {
      let words = near.get(gap);
      if (!words) near.set(gap, (words = new Set()));
      words.add(word);
    }
  }

  const ended = (folded: string): Meaning | undefined => {
    for (const [ending, several] of Object.entries(lexicon.pulseEndings)) {
      if (!folded.endsWith(ending)) continue;
      const stem = root.next.get(folded.slice(0, -ending.length))?.means;
      if (stem?.is === 'site' && !stem.foot) return several ? { ...stem, plural: true } : stem;
    }
    return undefined;
  };

  return {
    lexicon,
    root,
    word: (folded) => {
      const single = singles.get(folded);
      return root.next.get(folded)?.means ?? (single === HALF ? HALF : ended(folded));
    },
    guess(folded) {
      if (folded.length > LONGEST_WORD) return { is: 'unknown', near: false };
      const found = new Map<string, Meaning>();
      for (const gap of gaps(folded)) {
        for (const word of near.get(gap) ?? []) {
          if (!oneSlipApart(word, folded)) continue;
          const meaning = singles.get(word)!;
          found.set(named(meaning), meaning);
        }
      }
      const telling = [...found.values()].filter((meaning) => meaning.is !== 'filler');
      const [only] = telling;
      if (!only) return { is: 'unknown', near: folded.length < 4 };
      // A slip of "not" is never taken for it, nor one of a word that two meanings lie beside.
      if (found.size > 1 || only.is === 'not' || only.is === 'unknown' || folded.length < SHORTEST_MISSPELT) {
        return { is: 'unknown', near: true };
      }
      return only;
    },
  };
}

const made = new Map<LanguageTag, Vocabulary>();

/** The vocabulary of a language; made when it is first asked for. */
export function vocabularyOf(language: LanguageTag): Vocabulary {
  let vocabulary = made.get(language);
  if (!vocabulary) made.set(language, (vocabulary = make(LEXICONS[language])));
  return vocabulary;
}
