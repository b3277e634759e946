import { ARTERY_IDS, type ArteryId, type Side, SIDES } from '../../src/anatomy/index.js';
import {
  type Context,
  type Examination,
  INJURY_PLACES,
  type InjuryPlace,
  MECHANISMS,
  type Mechanism,
  type PatientHistory,
} from '../../src/examination/index.js';
import type { PublishedCase } from './form.js';

/*
 * What a case's source says of the patient beforehand, typed there, as the record holds it. A text that the record has no
 * word for is left out; nothing is guessed.
 */

const SMOKING = { never: 'never', former: 'past', past: 'past', current: 'current' } as const;

function oneOf<T extends string>(words: readonly T[], text: string | null | undefined): T | undefined {
  const name = text?.replaceAll('_', '-') as T | undefined;
  return name !== undefined && words.includes(name) ? name : undefined;
}

/** The level to which a limb is cold, by the words of the source: the first that matches counts. */
const LEG_COLD: readonly [RegExp, string][] = [
  [/\btoes?\b/, 'toes'],
  [/forefoot/, 'forefoot'],
  [/ankle|foot|feet/, 'ankle'],
  [/calf|lower leg/, 'mid-calf'],
  [/knee/, 'knee'],
  [/thigh/, 'mid-thigh'],
  [/\bleg\b|groin/, 'mid-thigh'],
];
const ARM_COLD: readonly [RegExp, string][] = [
  [/finger/, 'fingers'],
  [/forearm/, 'mid-forearm'],
  [/wrist/, 'wrist'],
  [/hand/, 'hand'],
  [/elbow/, 'elbow'],
  [/\barm\b/, 'mid-arm'],
];
const ULCER: readonly [RegExp, string][] = [
  [/\btoe|finger|nail/, 'digits'],
  [/forefoot/, 'forefoot'],
  [/heel/, 'heel'],
  [/ankle/, 'ankle'],
  [/shin/, 'shin'],
];

const match = (list: readonly [RegExp, string][], text: string): string | undefined =>
  list.find(([words]) => words.test(text))?.[1];

interface Limb {
  temperature?: string;
  temperatureLevel?: string;
  sensation?: string;
  movement?: string;
  ulcer?: string;
  ulcerPlace?: string;
  gangrene?: string;
}

function inspected(one: PublishedCase, kind: 'leg' | 'arm'): Limb {
  const found = one.context!;
  const out: Limb = {};
  const cold = found.coldness_level?.toLowerCase();
  if (cold) {
    const level = match(kind === 'leg' ? LEG_COLD : ARM_COLD, cold);
    out.temperature = 'cold';
    if (level && !/limbs|colder than/.test(cold)) out.temperatureLevel = level;
  }
  if (found.sensation) out.sensation = found.sensation === 'normal' ? 'normal' : 'beyond-digits';
  if (found.movement) out.movement = found.movement === 'normal' ? 'normal' : 'weak';
  const wound = found.ulcer?.toLowerCase();
  if (wound) {
    const place = match(ULCER, wound);
    if (/gangrene|necro/.test(wound)) out.gangrene = 'dry';
    else {
      out.ulcer = 'shallow';
      if (place) out.ulcerPlace = place;
    }
  }
  return out;
}

/** The sides a case is about, and the kind of limb its weak or stated pulses belong to. */
function limbsOf(one: PublishedCase): { kinds: ('leg' | 'arm')[]; sides: readonly Side[] } {
  const named = Object.keys(one.pulses);
  const arm = named.some((site) => /radial|ulnar|brachial|axill|subclav/.test(site));
  const leg = named.some((site) => /femoral|popliteal|tibial|pedis/.test(site));
  const side = one.side ?? '';
  const sides = /both|all/.test(side) ? SIDES : side === 'left' ? (['left'] as const) : (['right'] as const);
  const all = /all/.test(side);
  // An arm felt beside a leg is a comparison; the complaint is the leg's unless the arm's pulses alone are weak.
  const weakArm = named.some(
    (site) =>
      /radial|ulnar|brachial/.test(site) &&
      Object.values(one.pulses[site]!).some((grade) => grade === 'absent' || grade === 'reduced'),
  );
  const kinds: ('leg' | 'arm')[] = all ? ['leg', 'arm'] : arm && (weakArm || !leg) ? ['arm'] : ['leg'];
  return { kinds, sides };
}

/** Adds what was known beforehand and what was seen of the limb. */
export function withContext(examination: Examination, one: PublishedCase): Examination {
  const found = one.context;
  if (!found) return examination;
  const { kinds, sides } = limbsOf(one);
  const mechanism = oneOf<Mechanism>(MECHANISMS, found.mechanism);
  const place = oneOf<InjuryPlace>(INJURY_PLACES, found.injury_place);
  const smoking = found.smoking ? SMOKING[found.smoking as keyof typeof SMOKING] : undefined;
  const access = /fistula|access|dialysis/.test(found.earlier_graft ?? '');
  const context = {
    ...examination.context,
    ...(mechanism && { mechanism }),
    ...(place && { injury: Object.fromEntries(sides.map((s) => [s, place])) }),
    ...(typeof found.diabetes === 'boolean' && { diabetes: found.diabetes }),
    ...(smoking && { smoking }),
    ...(access && {
      access: [{ side: /right/.test(found.earlier_graft!) ? 'right' : 'left', kind: 'fistula' }],
    }),
    ...(found.known_aneurysm && { aneurysms: aneurysms(found.known_aneurysm, sides) }),
  } as Context;
  const history: PatientHistory = {
    ...examination.history,
    ...(found.atrial_fibrillation === true && { rhythm: 'atrial-fibrillation' as const }),
    ...(found.atrial_fibrillation === false && { rhythm: 'regular' as const }),
    ...(found.known_aneurysm && { risks: ['known-aneurysm' as const] }),
  };
  const circulation = {
    ...(typeof found.systolic_pressure_mmHg === 'number' && { systolic: found.systolic_pressure_mmHg }),
    ...(found.shock && { shock: true }),
  };
  const limb = kinds.map((kind) => [kind, inspected(one, kind)] as const);
  const inspection = Object.fromEntries(
    limb
      .filter(([, seen]) => Object.keys(seen).length > 0)
      .map(([kind, seen]) => [kind, Object.fromEntries(sides.map((s) => [s, seen]))]),
  );
  return {
    ...examination,
    ...(Object.keys(context).length > 0 && { context }),
    ...(Object.keys(history).length > 0 && { history }),
    ...(Object.keys(circulation).length > 0 && { circulation }),
    ...(Object.keys(inspection).length > 0 && { inspection }),
  } as Examination;
}

function aneurysms(text: string, sides: readonly Side[]): { place: ArteryId; side?: Side }[] {
  const name = text.toLowerCase();
  const place = ARTERY_IDS.find((id) => name.includes(id.replaceAll('-', ' ')));
  if (!place) return [];
  return /aorta/.test(place) ? [{ place }] : sides.map((side) => ({ place, side }));
}
