import { fold } from './fold.js';
import { type Meaning, means, type Stop, type Token } from './meanings.js';
import type { Vocabulary } from './vocabulary.js';

/** A word, number or sign as it stands in the text. */
interface Raw {
  readonly kind: 'word' | 'number' | 'sign';
  readonly text: string;
  readonly folded: string;
  readonly start: number;
  readonly end: number;
  readonly glued: boolean;
}

const PIECES = /(\p{L}[\p{L}\p{M}]*(?:['’]\p{L}+)?)|(\d+(?:[.,]\d+)*)|(\++|[\n\t]|[^\s])/gu;
const DASHES = /^[-‐‑‒–—−]$/u;
/** Highest figure of any scale of strength. */
const HIGHEST = 4;

function rawOf(text: string): Raw[] {
  const raws: Raw[] = [];
  const add = (kind: Raw['kind'], piece: string, start: number): void => {
    const before = raws.at(-1);
    const end = start + piece.length;
    const folded = kind === 'word' ? fold(piece.replace(/['’]/g, '')) : piece;
    raws.push({ kind, text: piece, folded, start, end, glued: before?.end === start });
  };
  for (const match of text.replaceAll('＋', '+').matchAll(PIECES)) {
    const [piece, word, number] = match;
    if (word) add('word', piece, match.index);
    else if (!number) add('sign', piece, match.index);
    // "2,2,1,0" is four figures; "0,62" and "26.11.2020" are numbers.
    else if (/^\d(,\d){2,}$/.test(piece)) {
      for (let i = 0; i < piece.length; i++) add(i % 2 ? 'sign' : 'number', piece[i]!, match.index + i);
    } else add('number', piece, match.index);
  }
  return raws;
}

const SIGNS: Readonly<Record<string, Stop>> = {
  ',': 'comma',
  '،': 'comma',
  ';': 'semicolon',
  ':': 'colon',
  '=': 'colon',
  '/': 'slash',
  '|': 'cell',
  '\t': 'cell',
  '\n': 'line',
  '(': 'open',
  '[': 'open',
  ')': 'close',
  ']': 'close',
  '?': 'question',
  '!': 'sentence',
  '…': 'sentence',
};

const stop = (at: Stop): Meaning => ({ is: 'stop', stop: at });

/** What a dot ends: a sentence, a part of it, or nothing when it belongs to an abbreviation or a row of dots. */
function dot(
  raws: readonly Raw[],
  at: number,
  short: ReadonlySet<string>,
  capitals: boolean | undefined,
  [behind, side]: readonly (Token | undefined)[],
): Meaning {
  const before = raws[at - 1];
  const after = raws[at + 1];
  if (!before?.glued && before?.kind === undefined) return { is: 'filler' };
  if (before.kind !== 'word' || !raws[at]!.glued || !short.has(before.folded)) return stop('sentence');
  if (!after || after.text === '\n') return stop('sentence');
  const capital =
    capitals !== undefined &&
    after.kind === 'word' &&
    !after.glued &&
    after.text[0] !== after.text[0]!.toLowerCase();
  if (!capital) return { is: 'filler' };
  // "Geräusch re. Leiste": the side leads the next word, unless it stands behind a site or a strength.
  const leads = means(side, 'side') && !means(behind, 'site', 'grade', 'figure', 'pluses', 'pulse');
  return before.folded.length === 1 || leads ? { is: 'filler' } : stop(capitals ? 'comma' : 'sentence');
}

/** Signs that stand between the words of one phrase: "non-palpable", "A. tib. post.", "b/l". */
function joins(raws: readonly Raw[], at: number): boolean {
  const sign = raws[at];
  const [before, after] = [raws[at - 1], raws[at + 1]];
  if (sign?.kind !== 'sign' || before?.kind !== 'word' || after?.kind !== 'word' || !sign.glued) return false;
  if (sign.text === '.') return true;
  if (DASHES.test(sign.text)) return after.glued;
  return sign.text === '/' && after.glued && before.text.length === 1 && after.text.length === 1;
}

/** The longest phrase of the lexicon that begins here. */
function phraseAt(raws: readonly Raw[], at: number, { root }: Vocabulary) {
  let node = root;
  let found: { readonly means: Meaning; readonly next: number } | undefined;
  for (let i = at; i < raws.length;) {
    if (i > at && joins(raws, i)) i++;
    const raw = raws[i];
    if (raw?.kind !== 'word') break;
    const next = node.next.get(raw.folded);
    if (!next) break;
    node = next;
    i++;
    if (node.means) found = { means: node.means, next: i };
  }
  return found;
}

/** Reads a text into tokens: every word, figure and sign with what it means in this language. */
export function tokensOf(text: string, vocabulary: Vocabulary): Token[] {
  const { lexicon } = vocabulary;
  // In a note all in capitals they tell nothing.
  const capitals = text === text.toUpperCase();
  const short = new Set(lexicon.short.split('|'));
  const raws = rawOf(text);
  const tokens: Token[] = [];
  const put = (meaning: Meaning, from: Raw, to: Raw = from, start = from.start, end = to.end): void => {
    tokens.push({ means: meaning, start, end, glued: from.glued || start > from.start, tight: false });
  };
  const plusWord = (raw: Raw | undefined): boolean =>
    raw?.kind === 'word' && lexicon.plus.includes(raw.folded);

  for (let i = 0; i < raws.length;) {
    const raw = raws[i]!;
    if (raw.kind === 'number') {
      const figure = /^[0-4]$/.test(raw.text) ? Number(raw.text) : undefined;
      const plus = figure !== undefined && raws[i + 1]?.text[0] === '+' && raws[i + 1]!.glued;
      put(figure === undefined ? { is: 'number' } : { is: 'figure', figure }, raw, plus ? raws[i + 1] : raw);
      i += plus || (figure !== undefined && plusWord(raws[i + 1])) ? 2 : 1;
    } else if (raw.kind === 'sign') {
      i = sign(i);
    } else {
      i = word(i);
    }
  }
  return tokens.map((token, i) => ({ ...token, tight: tokens[i + 1]?.glued ?? false }));

  function sign(i: number): number {
    const raw = raws[i]!;
    const after = raws[i + 1];
    if (raw.text[0] === '+') {
      const minus = after && DASHES.test(after.text) && after.glued;
      if (minus && raw.text === '+' && raws[i + 2]?.kind !== 'number') {
        put({ is: 'grade', grade: 'doubtful' }, raw, after);
        return i + 2;
      }
      if (raw.text === '+' && after?.kind === 'number' && after.glued && /^[1-4]$/.test(after.text)) {
        put({ is: 'figure', figure: Number(after.text) }, raw, after);
        return i + 2;
      }
      put(raw.text.length > HIGHEST ? { is: 'number' } : { is: 'pluses', count: raw.text.length }, raw);
    } else if (raw.text === '(' && after?.text === '+' && raws[i + 2]?.text === ')') {
      put({ is: 'grade', grade: 'reduced' }, raw, raws[i + 2]);
      return i + 3;
    } else if (raw.text === '±') put({ is: 'grade', grade: 'doubtful' }, raw);
    else if (raw.text === '∅') put({ is: 'grade', grade: 'absent' }, raw);
    else if (raw.text === '✓' || raw.text === '✔') put({ is: 'grade', grade: 'present' }, raw);
    else if (raw.text === '↓') put({ is: 'grade', grade: 'reduced' }, raw);
    else if (raw.text === '&') put({ is: 'and' }, raw);
    else if (raw.text === '%' || raw.text === '°') put({ is: 'unit' }, raw);
    else if (raw.text === '<' || raw.text === '>') put({ is: 'unknown', near: true }, raw);
    else if (raw.text === '.')
      put(dot(raws, i, short, capitals ? undefined : lexicon.capitals, [tokens.at(-2), tokens.at(-1)]), raw);
    else if (DASHES.test(raw.text)) put(stop('dash'), raw);
    else put(SIGNS[raw.text] ? stop(SIGNS[raw.text]!) : { is: 'filler' }, raw);
    return i + 1;
  }

  function word(i: number): number {
    const raw = raws[i]!;
    if (plusWord(raw)) {
      let end = i + 1;
      while (plusWord(raws[end])) end++;
      const minus = raws[end]?.kind === 'word' && lexicon.minus.includes(raws[end]!.folded);
      if (minus && end === i + 1) put({ is: 'grade', grade: 'doubtful' }, raw, raws[end]);
      else put(end - i > HIGHEST ? { is: 'number' } : { is: 'pluses', count: end - i }, raw, raws[end - 1]);
      return minus && end === i + 1 ? end + 1 : end;
    }
    const figure = Object.hasOwn(lexicon.figures, raw.folded) ? lexicon.figures[raw.folded] : undefined;
    const before = tokens.at(-1)?.means.is;
    if (figure !== undefined && (plusWord(raws[i + 1]) || raws[i + 1]?.text === '+')) {
      put({ is: 'figure', figure }, raw, raws[i + 1]);
      return i + 2;
    }
    if (figure !== undefined && (figure !== 1 || before === 'site' || before === 'figure')) {
      put({ is: 'figure', figure }, raw);
      return i + 1;
    }
    if (lexicon.minus.includes(raw.folded)) {
      put({ is: 'grade', grade: 'absent' }, raw);
      return i + 1;
    }
    const phrase = phraseAt(raws, i, vocabulary);
    if (phrase) {
      put(phrase.means, raw, raws[phrase.next - 1]);
      return phrase.next;
    }
    const known = vocabulary.word(raw.folded);
    const behind = known ? undefined : raw.folded.slice(1);
    const site = behind && behind.length < 6 ? vocabulary.word(behind) : undefined;
    if (site?.is === 'site' && /^[rl]$/.test(raw.folded[0]!)) {
      put({ is: 'side', side: raw.folded[0] === 'r' ? 'right' : 'left' }, raw, raw, raw.start, raw.start + 1);
      put(site, raw, raw, raw.start + 1);
    } else put(known ?? vocabulary.guess(raw.folded), raw);
    return i + 1;
  }
}
