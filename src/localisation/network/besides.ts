import { type Limb, limbKey, LIMBS, type LimbKey } from '../../anatomy/index.js';
import { type Examination, pulseAt } from '../../examination/index.js';
import { PULSE_PLACES } from '../../anatomy/index.js';
import { limbsAt } from './finding.js';
import { circulationOf, hasAccess, knownAneurysms } from './known.js';

/**
 * What an open main artery does not exclude in a limb: emboli or disease of the smallest arteries, harm by an injury whose
 * pulse beyond is still felt, and a narrowing that only shows on exertion.
 */
export type NotExcluded = 'small-arteries' | 'emboli' | 'injury' | 'exertion';

const PULSES_OF = Object.fromEntries(
  LIMBS.map((limb) => [
    limbKey(limb),
    PULSE_PLACES.filter((place) => limbsAt(place).includes(limbKey(limb))),
  ]),
) as unknown as Readonly<Record<LimbKey, readonly (typeof PULSE_PLACES)[number][]>>;

const BLUE = new Set<string>(['blue', 'mottled', 'fixed-mottled']);

const present = (word: string | undefined): boolean => word !== undefined && word !== 'none';

/** What normal pulses leave open, by limb. Common practice, no source. */
export function notExcluded(examination: Examination, limb: Limb): readonly NotExcluded[] {
  const { inspection, context, pressures, history } = examination;
  const { side, kind } = limb;
  if (kind === 'head') return [];
  const found = inspection?.[kind]?.[side];
  const digits = new Set<string>(Object.values(found?.digits ?? {}));
  const out: NotExcluded[] = [];
  const wound =
    present(found?.ulcer) || present(found?.gangrene) || digits.has('ulcer') || digits.has('gangrene');
  const blue = BLUE.has(found?.colour ?? '') || digits.has('blue');
  const pulsating = PULSES_OF[limbKey(limb)].some((place) => pulseAt(examination, place)?.expansile);
  const aneurysm =
    pulsating || history?.risks?.includes('known-aneurysm') || knownAneurysms(examination).length > 0;
  if (blue || aneurysm) out.push('emboli');
  if (wound || blue) out.push('small-arteries');
  if (context?.injury?.[side] && isLegPlace(context.injury[side]) === (kind === 'leg')) out.push('injury');
  const pain = kind === 'leg' ? context?.legClaudication?.[side] : undefined;
  const complains =
    (pain && pain !== 'none') || (kind === 'leg' && history?.leg?.[side]?.symptom === 'claudication');
  if (complains && !pressures?.afterExercise) out.push('exertion');
  return out;
}

const LEG_PLACES = new Set(['pelvis', 'groin', 'thigh', 'knee', 'lower-leg', 'ankle-foot']);
const isLegPlace = (place: string): boolean => LEG_PLACES.has(place);

/** A question that settles most absent pulses without arterial disease; asked where it would. */
export type SettlingQuestion = 'circulation' | 'swelling' | 'access' | 'from-birth';

/**
 * The one question to ask of weak pulses before arteries are blamed, or none: low pressure or cold where several limbs are
 * weak, a dialysis access on an arm, a swollen blue leg, a pulse absent from birth where its twin is felt.
 */
export function settlingQuestion(examination: Examination): SettlingQuestion | undefined {
  const weak = PULSE_PLACES.filter((place) => {
    const grade = pulseAt(examination, place)?.grade;
    return grade === 'absent' || grade === 'reduced';
  });
  if (weak.length === 0) return undefined;
  const limbs = new Set<LimbKey>(weak.flatMap(limbsAt));
  const several = LIMBS.filter((limb) => limb.kind !== 'head' && limbs.has(limbKey(limb))).length > 2;
  const { systolic, shock } = circulationOf(examination);
  if (several && systolic === undefined && !shock) return 'circulation';
  for (const { side, kind } of LIMBS) {
    const own = weak.filter((place) => place.side === side && limbsAt(place).includes(`${side} ${kind}`));
    if (own.length === 0) continue;
    const wrist = own.every(({ site }) => site === 'radial' || site === 'ulnar');
    if (
      kind === 'arm' &&
      wrist &&
      !hasAccess(examination, side) &&
      !('access' in (examination.context ?? {}))
    ) {
      return 'access';
    }
    const seen = examination.inspection?.[kind === 'arm' ? 'arm' : 'leg']?.[side];
    if (kind === 'leg' && examination.onset === 'acute' && !seen?.oedema && !seen?.colour) return 'swelling';
    const [only] = own;
    const twin = { 'dorsalis-pedis': 'posterior-tibial', 'posterior-tibial': 'dorsalis-pedis' } as const;
    if (own.length === 1 && only && only.site in twin && !examination.context?.absentFromBirth?.[side]) {
      const other = pulseAt(examination, { site: twin[only.site as keyof typeof twin], side })?.grade;
      if (other === 'normal' || other === 'bounding') return 'from-birth';
    }
  }
  return undefined;
}
