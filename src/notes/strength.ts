import type { Grade, ScaleId } from '../examination/index.js';
import type { Strength, Token } from './meanings.js';
import { means } from './meanings.js';

/** A grade as the record holds it. */
export interface Graded {
  readonly grade: Grade;
  readonly increased?: true;
}

/** Why a strength is a question: see `DOUBTS`. */
export type StrengthDoubt = 'scale' | 'strength' | 'felt';

/** What strength words say: one grade, or several of which the first is the likeliest. */
export interface StrengthRead {
  readonly grades: readonly Graded[];
  /** Missing where there is nothing to ask. */
  readonly doubt?: StrengthDoubt;
  /** The likeliest may be taken before anyone has answered: no other choice makes a felt pulse absent. */
  readonly taken: boolean;
}

const sure = (grade: Grade): StrengthRead => ({ grades: [{ grade }], taken: true });
const either = (doubt: StrengthDoubt, taken: boolean, ...grades: Grade[]): StrengthRead => ({
  grades: grades.map((grade) => ({ grade })),
  doubt,
  taken,
});

const OF_WORDS: Readonly<Record<Strength, StrengthRead>> = {
  absent: sure('absent'),
  reduced: sure('reduced'),
  normal: sure('normal'),
  bounding: sure('bounding'),
  present: either('strength', true, 'normal', 'reduced'),
  strong: either('strength', true, 'normal', 'bounding'),
  abnormal: either('strength', false, 'reduced', 'absent', 'bounding'),
  doubtful: either('felt', false, 'reduced', 'absent'),
  prominent: either('strength', false, 'bounding', 'normal'),
};

/** What a note as a whole tells of its own signs. */
export interface Manner {
  readonly scale: ScaleId;
  /** Most plus signs in a row; one alone means "felt" where there are never two. */
  readonly mostPluses: number;
}

/** The manner of a note. */
export function mannerOf(tokens: readonly Token[], scale: ScaleId): Manner {
  const counts = tokens.map(({ means }) => (means.is === 'pluses' ? means.count : 0));
  return { scale, mostPluses: counts.reduce((most, count) => Math.max(most, count), 0) };
}

/** A figure on the scale of the form, on the one it names itself ("2/4"), or on either. */
function ofFigure(figure: number, of: number | undefined, { scale }: Manner): StrengthRead {
  if (figure === 0) return sure('absent');
  if (figure === 1) return sure('reduced');
  const named = of === 3 ? '0-3' : of === 4 ? '0-4' : undefined;
  // On some scales of four, 4 is normal and 2 weak: what a form of another scale means by it is not known.
  if (named === '0-4' && scale !== '0-4') {
    return figure === 4
      ? either('scale', false, 'normal', 'bounding')
      : either('scale', false, 'normal', 'reduced');
  }
  const on = named ?? scale;
  if (on === '0-4') {
    if (figure === 2) return sure('normal');
    return {
      grades: [figure === 3 ? { grade: 'bounding', increased: true } : { grade: 'bounding' }],
      taken: true,
    };
  }
  if (figure === 4) return either('scale', false, 'bounding', 'normal');
  if (figure === 3) return on === 'words' ? either('scale', true, 'bounding', 'normal') : sure('bounding');
  return on === 'words' ? either('scale', true, 'normal', 'reduced') : sure('normal');
}

/** A row of plus signs; one alone is "felt" in a note that never has two. */
function ofPluses(count: number, manner: Manner): StrengthRead {
  if (count === 1) {
    return manner.mostPluses > 1 ? either('scale', true, 'reduced', 'normal') : OF_WORDS.present;
  }
  if (count === 2) return either('scale', true, 'normal', 'reduced');
  if (count === 3 && manner.scale === '0-4') {
    return {
      grades: [{ grade: 'bounding', increased: true }, { grade: 'normal' }],
      doubt: 'scale',
      taken: true,
    };
  }
  return either('scale', true, 'bounding', 'normal');
}

/** "Not" before a strength: not felt is absent; not normal leaves open what it is. */
function negated(strength: Strength, certainly: boolean): Strength {
  if (strength === 'present') return certainly ? 'doubtful' : 'absent';
  if (strength === 'absent') return 'present';
  if (strength === 'normal' || strength === 'strong') return 'abnormal';
  return 'doubtful';
}

const VAGUE: readonly Strength[] = ['present', 'strong'];

/** Two words about one pulse: the exact one counts beside a vague one ("weak, but palpable"); two exact ones leave it open. */
function both(a: Strength, b: Strength): Strength {
  if (a === b) return a;
  if (a === 'doubtful' || b === 'doubtful') return 'doubtful';
  if (a === 'present' && b !== 'absent') return b;
  if (b === 'present' && a !== 'absent') return a;
  if (VAGUE.includes(a) && b === 'normal') return b;
  if (VAGUE.includes(b) && a === 'normal') return a;
  if (a === 'absent' || b === 'absent') return 'doubtful';
  return 'abnormal';
}

/** The strength of a row of words such as "not definitely palpable"; `undefined` when there is none. `bare`: only "no". */
export function strengthOf(
  tokens: readonly Token[],
  manner: Manner,
): { readonly read: StrengthRead; readonly bare: boolean; readonly felt: boolean } | undefined {
  let not = false;
  let degree: string | undefined;
  let word: Strength | undefined;
  let figure: StrengthRead | undefined;
  for (const token of tokens) {
    if (means(token, 'not')) not = !not;
    else if (means(token, 'degree')) degree = token.means.degree;
    else if (means(token, 'grade')) {
      let next = token.means.grade;
      if (not) next = negated(next, degree === 'sure');
      else if (degree === 'doubtful') next = 'doubtful';
      else if (degree === 'little' && next === 'present') next = 'reduced';
      else if (degree === 'sure' && next === 'present') next = 'normal';
      word = word === undefined ? next : both(word, next);
      not = false;
      degree = undefined;
    } else if (means(token, 'figure', 'pluses')) {
      const own =
        token.means.is === 'figure'
          ? ofFigure(token.means.figure, token.means.of, manner)
          : ofPluses(token.means.count, manner);
      figure = figure === undefined || not ? own : OF_WORDS.doubtful;
      if (not) figure = OF_WORDS.doubtful;
    }
  }
  if (figure && (word === undefined || word === 'present')) {
    const says = word === 'present' && figure.grades[0]?.grade === 'absent' ? OF_WORDS.doubtful : figure;
    return { read: says, bare: false, felt: word === 'present' };
  }
  if (figure && word) {
    const agree = OF_WORDS[word].grades.some(({ grade }) => figure.grades.some((own) => own.grade === grade));
    return {
      read: agree
        ? ({
            ...OF_WORDS[word],
            doubt: undefined,
            grades: figure.grades.slice(0, 1),
            taken: true,
          } as StrengthRead)
        : OF_WORDS.doubtful,
      bare: false,
      felt: true,
    };
  }
  if (word) return { read: OF_WORDS[word], bare: false, felt: true };
  if (not) return { read: OF_WORDS.absent, bare: true, felt: false };
  if (degree === 'little') return { read: OF_WORDS.reduced, bare: false, felt: true };
  if (degree === 'sure') return undefined;
  return undefined;
}
