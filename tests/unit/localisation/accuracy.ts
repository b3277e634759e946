import { type PieceKey, type Side } from '../../../src/anatomy/index.js';
import { type Context, emptyExamination, type Examination } from '../../../src/examination/index.js';
import { beginnings } from '../../../src/localisation/network/begin.js';
import { acrossEnd, heardPiece, pulsePiece } from '../../../src/localisation/network/finding.js';
import { bandsOf, bruit, type Likelihood, palpation } from '../../../src/localisation/network/likelihoods.js';
import { TABLES } from '../../../src/localisation/network/index.js';
import { modelOf } from '../../../src/localisation/network/model.js';
import type { Factor } from '../../../src/localisation/network/columns.js';
import { Propagation } from '../../../src/localisation/network/propagate.js';
import { indexOf, PARENT } from '../../../src/localisation/network/tree.js';

/*
 * What the network says of tests as studies report them: sensitivity, specificity and likelihood ratios of "any of these
 * signs" for "any disease on this way", reckoned exactly from the probability that every sign is normal.
 */

type PulseSite = Parameters<typeof palpation>[0];

/** A pulse reported felt, of whatever fullness. */
export function felt(site: PulseSite, side: Side): Factor {
  const [normal, bounding] = (['normal', 'bounding'] as const).map((grade) => palpation(site, grade, TABLES));
  const sum = (a: ArrayLike<number>, b: ArrayLike<number>): number[] => Array.from(a, (v, x) => v + b[x]!);
  return {
    piece: pulsePiece({ site, side }),
    by: normal!.by.map((values, t) => sum(values, bounding!.by[t]!)),
  };
}

/** A pulse reported absent. */
export function gone(site: PulseSite, side: Side): Factor {
  return { piece: pulsePiece({ site, side }), ...palpation(site, 'absent', TABLES) };
}

/** No bruit heard at a site. */
export function silent(site: Parameters<typeof heardPiece>[0]['site'], side: Side): Factor {
  return { piece: heardPiece({ site, side }, TABLES), ...bruit(site, 'none', TABLES) };
}

/** The pieces from the heart to one, as an order of a way. */
export function wayTo(...ends: readonly PieceKey[]): number[] {
  const way = new Set<number>();
  for (const end of ends) {
    const path: number[] = [];
    for (let i = indexOf(end); i >= 0; i = PARENT[i]!) path.unshift(i);
    for (const i of path) way.add(i);
  }
  return [...way].sort((a, b) => a - b);
}

export interface Accuracy {
  readonly prevalence: number;
  /** Probability of the finding given disease on the way, and without it. */
  readonly given: number;
  readonly without: number;
}

/** How likely a set of reports is with and without disease of some pieces of a way. */
export function chanceOf(
  factors: readonly Factor[],
  way: readonly number[],
  context: Context = { ageBand: '60-79' },
  onset: Examination['onset'] = 'chronic',
  diseased: (piece: number) => boolean = () => true,
): Accuracy {
  const model = modelOf({ ...emptyExamination(), onset, context }, TABLES);
  const look = (made: readonly Factor[]): { ill: number; well: number } => {
    const net = new Propagation(model, made);
    const begin = beginnings(
      net,
      way,
      way.map((_, j) => j),
      new Float64Array(way.length + 1),
    );
    const total = net.total();
    const ill = way.reduce((sum, piece, j) => sum + (diseased(piece) ? begin[j]! : 0), 0);
    return { ill: total * ill, well: total * begin.at(-1)! };
  };
  const before = look([]);
  const after = look(factors);
  return { prevalence: before.ill, given: after.ill / before.ill, without: after.well / before.well };
}

/** The same against an ankle index as the reference standard: 0.90 or less, or above. */
export function againstIndex(
  factors: readonly Factor[],
  side: Side,
  context: Context = { ageBand: '60-79' },
): Accuracy {
  const model = modelOf({ ...emptyExamination(), onset: 'chronic', context }, TABLES);
  const total = (made: readonly Factor[]): number => new Propagation(model, made).total();
  const index = (band: Likelihood): Factor[] => acrossEnd({ side, kind: 'leg' }, band);
  const [ill, well] = bandsOf('ankle', [0.9], TABLES).map(index) as [Factor[], Factor[]];
  return {
    prevalence: total(ill),
    given: total([...factors, ...ill]) / total(ill),
    without: total([...factors, ...well]) / total(well),
  };
}
