import { LISTENING_PLACES, type Place, PULSE_PLACES, type Side, SIDES } from '../../anatomy/index.js';
import { bruitAt, type Examination, isStated, pulseAt } from '../../examination/index.js';
import {
  anklePiece,
  bruit,
  byStrength,
  type Finding,
  heardPiece,
  isMute,
  limbsAt,
  palpation,
  pulsePiece,
} from './evidence.js';
import { lostPieces } from './model.js';
import type { Factor } from './propagate.js';
import type { Tables } from './types.js';

/** Something that could be done next. */
export type ActId =
  | { readonly kind: 'feel' | 'listen'; readonly place: Place }
  | { readonly kind: 'ankle-pressure'; readonly side: Side }
  | { readonly kind: 'arm-pressures' };

export interface Act {
  readonly id: ActId;
  /** The pieces that its report bears on, and for each outcome its likelihoods. */
  readonly pieces: readonly number[];
  readonly outcomes: readonly (readonly Factor[])[];
  /** Whether exactly one of the outcomes must come, so that their likelihoods sum to one. */
  readonly exhaustive: boolean;
}

const GRADES = ['absent', 'reduced', 'normal', 'bounding'] as const;

/** The pulse reports; bounding counts with normal, since it says nearly the same of the arteries above. */
function felt(place: (typeof PULSE_PLACES)[number], tables: Tables): Factor[][] {
  const piece = pulsePiece(place);
  const [absent, reduced, normal, bounding] = GRADES.map((grade) => palpation(place.site, grade, tables));
  const sum = (a: ArrayLike<number>, b: ArrayLike<number>): number[] =>
    Array.from(a, (value, x) => value + b[x]!);
  const full = { usual: sum(normal!.usual, bounding!.usual), second: sum(normal!.second, bounding!.second) };
  return [absent!, reduced!, full].map((likelihood) => [{ piece, ...likelihood }]);
}

/** Every act not yet done that the record leaves open, on the kinds of limb that were examined. */
export function actsLeft(examination: Examination, findings: readonly Finding[], tables: Tables): Act[] {
  const kinds = new Set(findings.flatMap(({ limbs }) => limbs.map((limb) => limb.split(' ')[1])));
  const wanted = (place: Place): boolean => limbsAt(place).some((limb) => kinds.has(limb.split(' ')[1]));
  const { context } = examination;
  const lost = lostPieces(context);
  const acts: Act[] = [];
  for (const place of PULSE_PLACES) {
    const piece = pulsePiece(place);
    if (!wanted(place) || isStated(pulseAt(examination, place)) || isMute(place, context) || lost.has(piece))
      continue;
    acts.push({
      id: { kind: 'feel', place },
      pieces: [piece],
      outcomes: felt(place, tables),
      exhaustive: true,
    });
  }
  for (const place of LISTENING_PLACES) {
    const found = bruitAt(examination, place);
    const piece = heardPiece(place, tables);
    if (!wanted(place) || found?.bruit || found?.couldNotExamine || lost.has(piece)) continue;
    const silent = bruit(place.site, 'none', tables).usual;
    const heard = Array.from(silent, (value) => 1 - value);
    const outcomes = [silent, heard].map((usual) => [{ piece, usual, second: usual }]);
    acts.push({ id: { kind: 'listen', place }, pieces: [piece], outcomes, exhaustive: true });
  }
  for (const side of SIDES) {
    const piece = anklePiece(side);
    const known = findings.some(({ id }) =>
      id.kind === 'ankle-index'
        ? id.side === side
        : id.kind === 'index' && id.place.side === side && /tibial|pedis/.test(id.place.site),
    );
    if (known || lost.has(piece) || !kinds.has('leg')) continue;
    const outcomes = tables.index.bands.map((band) => [{ piece, ...byStrength(band) }]);
    acts.push({ id: { kind: 'ankle-pressure', side }, pieces: [piece], outcomes, exhaustive: true });
  }
  const arms = SIDES.map((side) => pulsePiece({ site: 'brachial', side }));
  const measured = findings.some(({ id }) => id.kind === 'index' && id.place.site === 'brachial');
  if (!measured && kinds.has('arm') && !arms.some((piece) => lost.has(piece)))
    acts.push(armPressures(arms, tables));
  return acts;
}

/** Both arms at once: the higher one is the reference, so what is told is which side is lower and how far. */
function armPressures(pieces: readonly number[], tables: Tables): Act {
  const { bands } = tables.index;
  const best = bands.at(-1)!;
  const outcomes = bands.flatMap((band, i) => {
    const pairs =
      i === bands.length - 1
        ? [[best, best]]
        : [
            [band, best],
            [best, band],
          ];
    return pairs.map((pair) => pair.map((own, j) => ({ piece: pieces[j]!, ...byStrength(own!) })));
  });
  return { id: { kind: 'arm-pressures' }, pieces, outcomes, exhaustive: false };
}
