import type { ListeningSiteId, PulseSiteId } from '../../anatomy/index.js';
import type { Bruit, Grade } from '../../examination/index.js';
import { type Feet, feetName, rowIn } from './feet.js';
import { kept } from './kept.js';
import type { Factor } from './columns.js';
import {
  type Bell,
  type ByReport,
  type ByStrength,
  type Cuff,
  HARD_SITES,
  type HardSite,
  type Tables,
} from './types.js';

/** What a finding says at one point, without the piece it stands at. */
export type Likelihood = Pick<Factor, 'by'>;

const doubled = ([n, r, a]: ByStrength): number[] => [n, r, a, n, r, a];

export function byStrength(values: ByStrength): Likelihood {
  return { by: [doubled(values)] };
}

/** Cold skin: with low flow every limb is cold, whatever its arteries. */
export function coldSkin(values: ByStrength, { lowFlow }: Tables): Likelihood {
  const { weak, gone } = lowFlow.cold;
  const atLeast = (least: number): ByStrength => [
    Math.max(values[0], least),
    Math.max(values[1], least),
    Math.max(values[2], least),
  ];
  return { by: [values, atLeast(weak), atLeast(gone)].map(doubled) };
}

export function bySound([silent, sounding]: readonly [number, number]): Likelihood {
  return { by: [[silent, silent, silent, sounding, sounding, sounding]] };
}

/** A likelihood that counts for part of its weight. */
export function tempered({ by }: Likelihood, power: number): Likelihood {
  return { by: by.map((values) => Array.from(values, (value) => value ** power)) };
}

/** The column of a palpation table that a grade stands in. */
const COLUMN = { absent: 0, reduced: 1, normal: 2, bounding: 2 } as const;

const isHardSite = (site: PulseSiteId): site is HardSite => (HARD_SITES as readonly string[]).includes(site);

/**
 * Likelihood of a grade at a site.
 * @param feet states of the feet that are told apart
 * @param taken probability that there is no pulse to feel whatever the artery
 */
export function palpation(
  site: PulseSiteId,
  grade: Grade,
  tables: Tables,
  feet: readonly Feet[] = [],
  taken = 0,
): Likelihood {
  if (taken > 0) return palpated(site, grade, tables, feet, taken);
  return kept(tables, `${site} ${grade} ${isHardSite(site) ? feetName(feet) : ''}`, () =>
    palpated(site, grade, tables, feet, 0),
  );
}

function palpated(
  site: PulseSiteId,
  grade: Grade,
  tables: Tables,
  feet: readonly Feet[],
  taken: number,
): Likelihood {
  const table = tables.palpation[site];
  const nerve = table.peripheral ? 'peripheral' : 'central';
  const column = COLUMN[grade];
  const [bn, br, ba] = tables.bounding.share;
  const [fn, fr, fa] =
    grade === 'bounding' ? [bn, br, ba] : grade === 'normal' ? [1 - bn, 1 - br, 1 - ba] : [1, 1, 1];
  const missing = 1 - (1 - table.missing) * (1 - taken);
  const gone = column === 0 ? missing : 0;
  const of = (row: ByReport, share: number): number => (1 - missing) * row[column]! * share + gone;
  const three = (normal: ByReport, reduced: ByReport, absent: ByReport): ByStrength => [
    of(normal, fn),
    of(reduced, fr),
    of(absent, fa),
  ];
  const usual = three(table.normal, table.reduced, table.absent);
  // With low flow the pulse of an open artery is either felt as reduced, or reported as ever; or it is gone.
  const low = tables.lowFlow.weak[nerve];
  const weak: ByStrength = [(1 - low) * usual[0] + (grade === 'reduced' ? low : 0), usual[1], usual[2]];
  const by = [usual, weak, three(...tables.lowFlow.gone[nerve])];
  if (isHardSite(site)) {
    for (const state of feet) {
      by.push(
        three(
          rowIn(site, 'normal', state[site], tables),
          rowIn(site, 'reduced', state[site], tables),
          table.absent,
        ),
      );
    }
  }
  return { by: by.map(doubled) };
}

export function bruit(site: ListeningSiteId, heard: Bruit, { sound }: Tables): Likelihood {
  const systolic = site === 'carotid' ? sound.carotid : sound.systolic;
  const { continuous } = sound;
  if (heard === 'systolic') return bySound(systolic);
  if (heard === 'continuous') return bySound(continuous);
  return bySound([1 - systolic[0] - continuous[0], 1 - systolic[1] - continuous[1]]);
}

/** Likelihood of a pressure index under one kind of cuff. Density in units of the index; only ratios count. */
export function indexLikelihood(cuff: Cuff, value: number, { index }: Tables): Likelihood {
  if (cuff === 'ankle' && value > index.incompressible) return byStrength(index.stiff);
  const floor = index.blunder / index.widest;
  const at = Math.min(value, index.widest);
  const [n, r, a] = index.cuffs[cuff].map(([mean, sd]) => {
    const z = (at - mean) / sd;
    return ((1 - index.blunder) * Math.exp(-0.5 * z * z)) / (sd * Math.sqrt(2 * Math.PI)) + floor;
  });
  return byStrength([n!, r!, a!]);
}

/** Probability of a value up to a limit under a bell curve; Abramowitz and Stegun 7.1.26, good to 1e-7. */
function below(limit: number, [mean, sd]: Bell): number {
  const z = (limit - mean) / (sd * Math.SQRT2);
  const t = 1 / (1 + 0.3275911 * Math.abs(z));
  const tail =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) *
    Math.exp(-z * z);
  return z > 0 ? 1 - tail / 2 : tail / 2;
}

/** Likelihood of each band of an index, lowest first. */
export function bandsOf(cuff: Cuff, limits: readonly number[], { index }: Tables): Likelihood[] {
  const chances = index.cuffs[cuff].map((bell) => limits.map((limit) => below(limit, bell)));
  return Array.from({ length: limits.length + 1 }, (_, k) => {
    const [n, r, a] = chances.map((upTo) => (upTo[k] ?? 1) - (upTo[k - 1] ?? 0));
    return byStrength([n!, r!, a!]);
  });
}
