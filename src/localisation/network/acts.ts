import {
  type Limb,
  limbKey,
  type LimbKey,
  LIMBS,
  LISTENING_PLACES,
  type Place,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  SIDES,
} from '../../anatomy/index.js';
import { bruitAt, type Examination, isStated, pulseAt } from '../../examination/index.js';
import { takenAt } from './evidence.js';
import { type Feet } from './feet.js';
import {
  acrossEnd,
  endPieces,
  type Finding,
  heardPiece,
  isMute,
  limbsAt,
  pulsePiece,
  stretchPiece,
} from './finding.js';
import { bandsOf, bruit, byStrength, type Likelihood, palpation } from './likelihoods.js';
import { lostPieces } from './model.js';
import type { Factor } from './propagate.js';
import { piecesOfStretch } from './tree.js';
import type { ByStrength, Tables } from './types.js';

/** Something that could be done next. */
export type ActId =
  | { readonly kind: 'feel' | 'listen'; readonly place: Place }
  | { readonly kind: 'doppler'; readonly place: Place<PulseSiteId> }
  | { readonly kind: 'ankle-pressure' | 'toe-pressure'; readonly side: Side }
  | { readonly kind: 'arm-pressures' }
  | { readonly kind: 'delay'; readonly of: 'radio-radial' | 'radio-femoral' }
  | { readonly kind: 'pain-level'; readonly limb: Limb }
  | { readonly kind: 'onset' };
export type ActKind = ActId['kind'];

/** What an act costs in time and trouble, in nats of what it must tell to be worth it. Judgement, no source. */
export const COST: Readonly<Record<ActKind, number>> = {
  onset: 0.005,
  'pain-level': 0.01,
  feel: 0.01,
  delay: 0.015,
  listen: 0.02,
  doppler: 0.03,
  'arm-pressures': 0.03,
  'ankle-pressure': 0.04,
  'toe-pressure': 0.06,
};

export interface Act {
  readonly id: ActId;
  /** The limbs it is done on. */
  readonly limbs: readonly LimbKey[];
  /** The pieces that its report bears on, and for each outcome its likelihoods. */
  readonly pieces: readonly number[];
  readonly outcomes: readonly (readonly Factor[])[];
  /** Whether exactly one of the outcomes must come, so that their likelihoods sum to one. */
  readonly exhaustive: boolean;
}

const GRADES = ['absent', 'reduced', 'normal', 'bounding'] as const;
const PAIN_ACTS = { leg: ['none', 'buttock', 'calf-upper'], arm: ['none', 'arm'] } as const;

/** What is left out of the likelihoods given: the outcome "anything else". */
function rest(given: readonly Likelihood[]): Likelihood {
  const most = Math.max(...given.map(({ by }) => by.length));
  return {
    by: Array.from({ length: most }, (_, t) =>
      Array.from({ length: 6 }, (_, x) =>
        Math.max(0, 1 - given.reduce((sum, { by }) => sum + (by[t] ?? by[0]!)[x]!, 0)),
      ),
    ),
  };
}

/** The pulse reports; bounding counts with normal, since it says nearly the same of the arteries above. */
function felt(
  place: Place<PulseSiteId>,
  examination: Examination,
  tables: Tables,
  feet: readonly Feet[],
): Factor[][] {
  const piece = pulsePiece(place);
  const taken = takenAt(place, examination, tables);
  const weak = GRADES.slice(0, 2).map((grade) => palpation(place.site, grade, tables, feet, taken));
  return [...weak, rest(weak)].map((likelihood) => [{ piece, ...likelihood }]);
}

class Acts {
  readonly list: Act[] = [];
  readonly #lost: Set<number>;
  constructor(
    readonly examination: Examination,
    readonly findings: readonly Finding[],
    readonly tables: Tables,
    readonly feet: readonly Feet[],
    readonly wanted: ReadonlySet<LimbKey>,
  ) {
    this.#lost = lostPieces(examination.context);
  }

  add(
    id: ActId,
    limbs: readonly LimbKey[],
    outcomes: readonly (readonly Factor[])[],
    exhaustive = true,
  ): void {
    const pieces = [...new Set(outcomes.flatMap((one) => one.map(({ piece }) => piece)))];
    if (!limbs.some((limb) => this.wanted.has(limb)) || pieces.some((i) => this.#lost.has(i))) return;
    this.list.push({ id, limbs, pieces, outcomes, exhaustive });
  }

  has(holds: (id: Finding['id']) => boolean): boolean {
    return this.findings.some(({ id }) => holds(id));
  }

  pulses(): void {
    const { examination, tables } = this;
    for (const place of PULSE_PLACES) {
      const found = pulseAt(examination, place);
      if (isMute(place, examination.context)) continue;
      if (!isStated(found)) {
        this.add({ kind: 'feel', place }, limbsAt(place), felt(place, examination, tables, this.feet));
      }
      const weak = found?.grade === 'absent' || found?.grade === 'reduced';
      if (!weak || found.doppler || !/tibial|pedis|radial|ulnar/.test(place.site)) continue;
      const piece = pulsePiece(place);
      this.add(
        { kind: 'doppler', place },
        limbsAt(place),
        Object.entries(tables.doppler).flatMap(([signal, values]) =>
          signal === 'source' ? [] : [[{ piece, ...byStrength(values as ByStrength) }]],
        ),
      );
    }
  }

  bruits(): void {
    for (const place of LISTENING_PLACES) {
      const found = bruitAt(this.examination, place);
      if (found?.bruit || found?.couldNotExamine) continue;
      const piece = heardPiece(place, this.tables);
      const silent = bruit(place.site, 'none', this.tables);
      this.add(
        { kind: 'listen', place },
        limbsAt(place),
        [silent, rest([silent])].map((one) => [{ piece, ...one }]),
      );
    }
  }

  pressures(): void {
    for (const side of SIDES) {
      const leg = { side, kind: 'leg' } as const;
      const known = this.has(
        (id) =>
          (id.kind === 'ankle-index' && id.side === side) ||
          ((id.kind === 'index' || id.kind === 'incompressible') &&
            id.place.side === side &&
            /tibial|pedis/.test(id.place.site)),
      );
      const spread = (cuff: 'ankle' | 'toe'): Factor[][] =>
        bandsOf(cuff, cuff === 'ankle' ? [0.4, 0.9] : [0.3, 0.7], this.tables).map((band) =>
          acrossEnd(leg, band),
        );
      if (!known) this.add({ kind: 'ankle-pressure', side }, [limbKey(leg)], spread('ankle'), false);
      const digit = this.has((id) => id.kind === 'digit-index' && limbKey(id.limb) === limbKey(leg));
      if (known && !digit) this.add({ kind: 'toe-pressure', side }, [limbKey(leg)], spread('toe'), false);
    }
    const measured = this.has((id) => id.kind === 'index' && id.place.site === 'brachial');
    if (measured) return;
    const pieces = SIDES.map((side) => pulsePiece({ site: 'brachial', side }));
    const bands = bandsOf('arm', [0.7, 0.9], this.tables);
    const best = bands.at(-1)!;
    // The higher arm is the reference, so what is told is which side is lower and how far.
    const pairs = bands.flatMap((band, i) =>
      i === bands.length - 1
        ? [[best, best]]
        : [
            [band, best],
            [best, band],
          ],
    );
    this.add(
      { kind: 'arm-pressures' },
      ['right arm', 'left arm'],
      pairs.map((pair) => pair.map((own, j) => ({ piece: pieces[j]!, ...own }))),
      false,
    );
  }

  told(): void {
    const { delays, context } = this.examination;
    const { delay, claudication } = this.tables;
    const late = (pieces: readonly number[]): Factor[][] =>
      [delay.later, delay.none].map((values) => pieces.map((piece) => ({ piece, ...byStrength(values) })));
    if (!delays?.radioFemoral) {
      this.add(
        { kind: 'delay', of: 'radio-femoral' },
        ['right leg', 'left leg'],
        late([piecesOfStretch('suprarenal-aorta')[0]!]),
      );
    }
    for (const limb of LIMBS) {
      if (limb.kind === 'head') continue;
      const { side, kind } = limb;
      const known = kind === 'leg' ? context?.legClaudication?.[side] : context?.armClaudication?.[side];
      if (known) continue;
      const outcomes = PAIN_ACTS[kind].map((muscle) => {
        const { at, pain } = (claudication[kind] as Record<string, (typeof claudication.leg)['none']>)[
          muscle
        ]!;
        return [{ piece: stretchPiece(at, side), ...byStrength(pain) }];
      });
      this.add({ kind: 'pain-level', limb }, [limbKey(limb)], outcomes, false);
    }
  }
}

/** Every act not yet done that the record leaves open on limbs in question. */
export function actsLeft(
  examination: Examination,
  findings: readonly Finding[],
  tables: Tables,
  feet: readonly Feet[],
  wanted: ReadonlySet<LimbKey>,
): readonly Act[] {
  const acts = new Acts(examination, findings, tables, feet, wanted);
  acts.pulses();
  acts.bruits();
  acts.pressures();
  acts.told();
  return acts.list;
}

/** Whether a limb still has an end at which something can be measured. */
export function hasEnd(limb: Limb, lost: ReadonlySet<number>): boolean {
  return !endPieces(limb).some((piece) => lost.has(piece));
}
