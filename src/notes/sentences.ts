import { isListed, type Piece } from './columns.js';
import { means, stops, type Token } from './meanings.js';

/** A part of a sentence between commas, "but", brackets and the like. */
export interface Segment {
  readonly pieces: Piece[];
  /** Of another time or another person, or of what may be. */
  past: boolean;
  /** It begins with "now": what was past ends here. */
  readonly now: boolean;
  /** It is taken out of what was said before: "except …". */
  readonly except: boolean;
  /** It stands in brackets. */
  readonly aside: boolean;
  readonly question: boolean;
}

export interface Sentence {
  readonly segments: Segment[];
  /** An empty line stands before it. */
  readonly afresh: boolean;
}

const tokenAt = (pieces: readonly Piece[], at: number): Token | undefined => {
  const piece = pieces[at];
  return isListed(piece) ? undefined : piece;
};

const is = (pieces: readonly Piece[], at: number, ...what: Parameters<typeof means>[1][]): boolean =>
  means(tokenAt(pieces, at), ...what);

/** Whether a dash means "not felt", divides, or joins two words. */
function dashAt(pieces: readonly Piece[], at: number, plussed: boolean): 'grade' | 'divides' | 'joins' {
  const dash = tokenAt(pieces, at)!;
  const after = tokenAt(pieces, at + 1);
  const graded = is(pieces, at + 1, 'grade', 'figure', 'pluses', 'not', 'degree');
  const ends = at + 1 >= pieces.length || (after !== undefined && means(after, 'stop', 'and'));
  let before = at - 1;
  while (is(pieces, before, 'filler')) before--;
  const behindSide = plussed && is(pieces, before, 'side');
  const behindSite = is(pieces, before, 'site', 'letter', 'pulse') || behindSide;
  const cell =
    plussed &&
    is(pieces, at - 1, 'pluses', 'grade') &&
    !dash.glued &&
    (after === undefined || stops(after, 'line'));
  if (cell) return 'grade';
  if (dash.glued && behindSite && (!dash.tight || ends) && !graded) return 'grade';
  const spaced = !dash.glued && (!dash.tight || ends);
  if (spaced && plussed && behindSite && (ends || is(pieces, at + 1, 'site', 'letter'))) return 'grade';
  return spaced ? 'divides' : 'joins';
}

/** Dashes as what they are: nothing felt, a comma, or nothing. */
function settled(pieces: readonly Piece[]): Piece[] {
  const plussed = pieces.some((_, at) => is(pieces, at, 'pluses'));
  return pieces.map((piece, at): Piece => {
    if (isListed(piece) || !stops(piece, 'dash')) return piece;
    const says = dashAt(pieces, at, plussed);
    if (says === 'grade') return { ...piece, means: { is: 'grade', grade: 'absent' } };
    return { ...piece, means: says === 'divides' ? { is: 'stop', stop: 'comma' } : { is: 'filler' } };
  });
}

/** Whether a strength with a colon behind it begins here, and sites follow. */
function heads(pieces: readonly Piece[], at: number): boolean {
  if (is(pieces, at - 1, 'not', 'degree', 'grade', 'unknown')) return false;
  let next = at;
  while (is(pieces, next, 'not', 'degree', 'grade')) next++;
  const colon = tokenAt(pieces, next);
  return (
    next > at && stops(colon, 'colon') && is(pieces, next + 1, 'site', 'side', 'letter', 'filler', 'pulse')
  );
}

/** Divides a note into sentences and these into segments, each told whether it is of today. */
export function sentencesOf(listed: readonly Piece[]): Sentence[] {
  const pieces = settled(listed);
  const sentences: Sentence[] = [];
  let segments: Segment[] = [];
  let lines = 0;
  let afresh = false;
  let depth = 0;

  let open: { -readonly [K in keyof Segment]: Segment[K] } = fresh();
  function fresh(from: Partial<Segment> = {}): { -readonly [K in keyof Segment]: Segment[K] } {
    return { pieces: [], past: false, now: false, except: false, aside: depth > 0, question: false, ...from };
  }
  function close(from: Partial<Segment> = {}): void {
    if (open.pieces.length) segments.push(open);
    open = fresh(from);
  }
  function end(): void {
    close();
    if (segments.length) {
      sentences.push({ segments, afresh });
      afresh = false;
    }
    segments = [];
    depth = 0;
  }

  pieces.forEach((piece, at) => {
    if (isListed(piece)) {
      open.pieces.push(piece);
      lines = 0;
      return;
    }
    lines = stops(piece, 'line') ? lines + 1 : 0;
    if (lines > 1) afresh = true;
    // "Palpable: fem R. Not palpable: pop L.": a strength with a colon heads what follows.
    if (heads(pieces, at) && open.pieces.some((one) => !isListed(one) && means(one, 'site'))) end();
    if (stops(piece, 'sentence', 'semicolon', 'line')) end();
    else if (stops(piece, 'comma', 'cell')) close();
    else if (stops(piece, 'open')) {
      depth = Math.min(depth + 1, 9);
      close();
    } else if (stops(piece, 'close')) {
      depth = Math.max(depth - 1, 0);
      close();
    } else if (means(piece, 'but')) close();
    else if (means(piece, 'now')) close({ now: true });
    else if (means(piece, 'except')) close({ except: true });
    else {
      if (stops(piece, 'question')) {
        open.question = true;
        // "DP felt? PT absent.": it ends what it asks; "?absent DP" begins it.
        if (piece.glued && !piece.tight && open.pieces.length) {
          open.pieces.push(piece);
          end();
          return;
        }
      }
      if (means(piece, 'past', 'kin')) open.past = true;
      open.pieces.push(piece);
    }
  });
  end();
  return sentences.map(datedSentence);
}

const says = (segment: Segment): boolean =>
  segment.pieces.some(
    (piece) => isListed(piece) || means(piece, 'grade', 'figure', 'pluses', 'site', 'bruit'),
  );

const once = (segment: Segment): boolean =>
  segment.pieces.some((piece) => !isListed(piece) && means(piece, 'past') && piece.means.once);

/** A word of the past at the head of a sentence, and kin anywhere before, cover all that follows up to "now". */
function datedSentence(sentence: Sentence): Sentence {
  let covers = false;
  for (const segment of sentence.segments) {
    if (segment.now) covers = false;
    const first = segment.pieces.find((piece) => !isListed(piece) && !means(piece, 'filler', 'over', 'stop'));
    const leads = first !== undefined && !isListed(first) && means(first, 'past') && !first.means.once;
    const kin = segment.pieces.some((piece) => !isListed(piece) && means(piece, 'kin'));
    if (
      segment.past &&
      !segment.aside &&
      (kin || (leads && segment === sentence.segments[0]) || (!says(segment) && !once(segment)))
    ) {
      covers = true;
    }
    if (covers) segment.past = true;
  }
  return sentence;
}
