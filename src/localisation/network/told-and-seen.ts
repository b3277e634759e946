import { levelOf, type Limb, piecesOf, SIDES, type Vessel } from '../../anatomy/index.js';
import type { Examination, LimbInspection } from '../../examination/index.js';
import { acrossEnd, type Finding, type Muscle, type SkinLevel, stretchPiece } from './finding.js';
import { landingOf } from './grafts.js';
import { byStrength, coldSkin, tempered } from './likelihoods.js';
import { drawsOnArm } from './known.js';
import { indexOf, piecesOfStretch } from './tree.js';
import type { ByStrength, Pain, Tables } from './types.js';

/** Seconds after which a palm that is still white counts as white. Common practice, no source. */
const ARCH_SECONDS = 10;

export function pains({ context }: Examination, tables: Tables): Finding[] {
  return SIDES.flatMap((side): Finding[] => {
    const found = { leg: context?.legClaudication?.[side], arm: context?.armClaudication?.[side] };
    return (['leg', 'arm'] as const).flatMap((kind): Finding[] => {
      const muscle = found[kind];
      if (!muscle) return [];
      const { at, pain } = (tables.claudication[kind] as Record<Muscle, Pain>)[muscle];
      const factor = { piece: stretchPiece(at, side), ...byStrength(pain) };
      return [
        { id: { kind: 'pain', limb: { side, kind }, muscle }, factors: [factor], limbs: [`${side} ${kind}`] },
      ];
    });
  });
}

export function delays({ delays: found }: Examination, tables: Tables): Finding[] {
  const out: Finding[] = [];
  const { later, none } = tables.delay;
  const legs = SIDES.filter((side) => found?.radioFemoral?.[side] === 'delayed');
  const inTime = SIDES.filter((side) => found?.radioFemoral?.[side] === 'none');
  if (legs.length || inTime.length) {
    // Late on one side and in time on the other points beyond the fork; otherwise to the aorta above it.
    const oneSided = legs.length === 1 && inTime.length === 1;
    const piece = oneSided
      ? stretchPiece('external-iliac', legs[0]!)
      : piecesOfStretch('suprarenal-aorta')[0]!;
    const side = legs.length === 2 ? 'both' : (legs[0] ?? 'none');
    out.push({
      id: { kind: 'delay', of: 'radio-femoral', side },
      factors: [{ piece, ...byStrength(legs.length ? later : none) }],
      limbs: [...legs, ...inTime].map((s) => `${s} leg` as const),
    });
  }
  const arms = found?.radioRadial;
  if (arms) {
    const side = arms === 'none' ? 'none' : arms === 'right-later' ? 'right' : 'left';
    out.push({
      id: { kind: 'delay', of: 'radio-radial', side },
      factors: SIDES.filter((s) => side === 'none' || side === s).map((s) => ({
        piece: stretchPiece('axillary proximal', s),
        ...byStrength(side === 'none' ? none : later),
      })),
      limbs: ['right arm', 'left arm'],
    });
  }
  return out;
}

/** What speaks of steal: the vertebral of the side draws blood for an arm whose subclavian is closed or narrow before it. */
export function steals(examination: Examination, tables: Tables): Finding[] {
  const { steal } = tables;
  return SIDES.flatMap((side): Finding[] => {
    const power = drawsOnArm(examination, side) ? steal.shared : 1;
    const say = (id: Finding['id'], values: ByStrength): Finding => ({
      id,
      factors: [{ piece: stretchPiece('subclavian proximal', side), ...tempered(byStrength(values), power) }],
      limbs: [`${side} arm`],
    });
    const flow = examination.inspection?.arm?.[side]?.vertebralFlow;
    const { dizzyOnUse, chestPainOnUse } = examination.history?.arm?.[side] ?? {};
    return [
      ...(flow ? [say({ kind: 'vertebral', side, flow }, steal.flow[flow])] : []),
      ...(dizzyOnUse ? [say({ kind: 'steal', side, symptom: 'dizzy' }, steal.dizzy)] : []),
      ...(chestPainOnUse ? [say({ kind: 'steal', side, symptom: 'chest-pain' }, steal.chestPain)] : []),
    ];
  });
}

/** The pulses of grafts themselves, each at the end of what stands for the graft. */
export function graftPulses({ context }: Examination, { graftPulse: table }: Tables): Finding[] {
  return (context?.revascularisations ?? []).flatMap((graft): Finding[] => {
    const { artery, side, graftPulse: pulse, route } = graft;
    if (!pulse || side === 'midline') return [];
    const vessel: Vessel = { artery, side };
    const piece = route ? landingOf(graft) : piecesOf(vessel).at(-1);
    if (!piece) return [];
    const kind = ['arm-inflow', 'axillo-brachial', 'forearm-hand'].includes(levelOf(artery, 'leg'))
      ? 'arm'
      : 'leg';
    return [
      {
        id: { kind: 'graft-pulse', vessel, pulse },
        factors: [{ piece: indexOf(piece.key), ...byStrength(table[pulse]) }],
        limbs: [`${side} ${kind}`],
      },
    ];
  });
}

/** Levels of cold so far out that they tell of the arteries of foot or hand. */
const END_LEVELS = new Set<SkinLevel>(['forefoot', 'toes', 'hand', 'fingers']);

/** Ulcers that veins make as often: they say nothing of the arteries. Common practice, no source. */
const ON_THE_LEG = new Set<string>(['shin', 'back-of-leg']);
/** Skin that branches of the posterior tibial artery feed. Angiosomes of the foot, from memory. */
const PLANTAR = new Set<string>(['heel', 'sole']);

/** Which arteries of foot or hand a wound speaks against. */
function woundFed(found: LimbInspection): 'both' | 'posterior-tibial' | undefined {
  const { ulcer, ulcerPlace = '', gangrene, digits } = found;
  const open = ulcer !== undefined && ulcer !== 'none' && !ON_THE_LEG.has(ulcerPlace);
  const dead = gangrene !== undefined && gangrene !== 'none';
  const digit = Object.values(digits ?? {}).some((state) => state === 'ulcer' || state === 'gangrene');
  if (dead || digit) return 'both';
  if (!open) return undefined;
  return PLANTAR.has(ulcerPlace) ? 'posterior-tibial' : 'both';
}

interface SeenLimb extends LimbInspection {
  readonly temperatureLevel?: SkinLevel;
}

/** Cold skin and its level, wounds and lost feeling, limb by limb. */
export function seen({ inspection }: Examination, tables: Tables): Finding[] {
  const { seen: table } = tables;
  return SIDES.flatMap((side) =>
    (['leg', 'arm'] as const).flatMap((kind): Finding[] => {
      const found = inspection?.[kind]?.[side] as SeenLimb | undefined;
      if (!found) return [];
      const limb: Limb = { side, kind };
      const limbs = [`${side} ${kind}`] as const;
      const out: Finding[] = [];
      const { temperature, temperatureLevel: level } = found;
      const at = level && (kind === 'leg' ? table.coldLeg : table.coldArm)[level as never];
      if (temperature) {
        const pain = at as Pain | undefined;
        const factors =
          pain && !END_LEVELS.has(level!)
            ? [{ piece: stretchPiece(pain.at, side), ...coldSkin(pain.pain, tables) }]
            : acrossEnd(
                limb,
                temperature === 'warm' ? byStrength(table.warm) : coldSkin(pain?.pain ?? table.cold, tables),
              );
        const above = level && table.spared[level as never];
        if (above) {
          const { at: from, pain: spared } = above as Pain;
          factors.push({ piece: stretchPiece(from, side), ...byStrength(spared) });
        }
        out.push({ id: { kind: 'skin', limb, temperature, ...(level && { level }) }, factors, limbs });
      }
      const fed = woundFed(found);
      if (fed) {
        const wound = byStrength(table.wound);
        const factors =
          fed === 'both' || kind === 'arm'
            ? acrossEnd(limb, wound)
            : [{ piece: stretchPiece('posterior-tibial proximal', side), ...wound }];
        out.push({ id: { kind: 'wound', limb }, factors, limbs });
      }
      const numb = found.sensation === 'beyond-digits' || found.sensation === 'lost';
      // An old loss of another cause tells nothing of the arteries.
      if (numb && !found.deficitKnown) {
        out.push({ id: { kind: 'numbness', limb }, factors: acrossEnd(limb, byStrength(table.numb)), limbs });
      }
      return out;
    }),
  );
}

/** The hand-arch test: a palm that stays white when an artery is let go speaks against that artery. */
export function handArch({ bedside }: Examination, { seen: table }: Tables): Finding[] {
  return SIDES.flatMap((side) =>
    (['radial', 'ulnar'] as const).flatMap((artery): Finding[] => {
      const found = bedside?.['hand-arch']?.[side]?.[artery];
      if (found?.seconds === undefined && found?.returned === undefined) return [];
      const { seconds, returned } = found;
      // Watched too short to call it white.
      if (returned === false && (seconds ?? ARCH_SECONDS) < ARCH_SECONDS) return [];
      const fills = returned !== false && (seconds ?? 0) <= ARCH_SECONDS;
      const factor = {
        piece: stretchPiece(`${artery} proximal`, side),
        ...byStrength(fills ? table.archFills : table.archWhite),
      };
      return [
        {
          id: { kind: 'hand-arch', side, artery, fills },
          factors: [factor],
          limbs: [`${side} arm`],
        },
      ];
    }),
  );
}
