import { type ArteryId, levelOf } from '../anatomy/index.js';
import type { Examination, RevascularisedArtery } from '../examination/index.js';
import type { Case, Raised } from './flag.js';
import { given, type Ground } from './ground.js';
import { limbGrounds } from './limb-grounds.js';
import { contextOf, inShock, inspectionOf, type StagedKind, type StagedLimb } from './record.js';

const LEG_LEVELS = ['aorto-iliac', 'femoro-popliteal', 'infrapopliteal'];
const ARM_LEVELS = ['arm-inflow', 'axillo-brachial', 'forearm-hand'];

const isOf = (artery: ArteryId, kind: StagedKind): boolean =>
  (kind === 'leg' ? LEG_LEVELS : ARM_LEVELS).includes(levelOf(artery, 'leg'));

/** The grafts and stents that feed a limb; those of the midline feed both legs. */
export function graftsOf(examination: Examination, { kind, side }: StagedLimb): RevascularisedArtery[] {
  return (contextOf(examination).revascularisations ?? []).filter(
    (graft) => (graft.side === side || graft.side === 'midline') && isOf(graft.artery, kind),
  );
}

export const hasGraftAt = (examination: Examination, limb: StagedLimb): boolean =>
  graftsOf(examination, limb).length > 0;

const graftGround = ({ kind, artery, side, graftPulse }: RevascularisedArtery): Ground => ({
  code: 'graft',
  kind,
  artery,
  side,
  ...(graftPulse && { pulse: graftPulse }),
});

/** Flow lost beyond a graft or stent. Source: reviews of graft occlusion; the 14 days: common practice. */
function occlusion({ examination, limbs, settings }: Case): Raised[] {
  return limbs.flatMap((state): Raised[] => {
    const grafts = graftsOf(examination, state.limb);
    const lost = grafts.filter(({ graftPulse }) => graftPulse === 'absent');
    const { points, onset, began, facts, limb } = state;
    if (!grafts.length || (points.flow < settings.poorFrom.graft && !lost.length)) return [];
    const { symptom, suddenPain } = facts.history;
    const isNew = onset === 'acute' || began.newComplaint || suddenPain || symptom === 'rest-pain';
    const urgency = isNew ? 'now' : onset === 'chronic' ? 'soon' : settings.graftUnstated;
    return [
      {
        code: 'graft-occlusion',
        urgency,
        limb,
        because: [...(lost.length ? lost : grafts).map(graftGround), ...limbGrounds(state)],
        ask: given(onset === 'unknown' && !began.cannotTell, 'onset' as const),
      },
    ];
  });
}

/** Signs of infection over a graft. Sources: ESVS 2020 (from memory); bleeding: teaching pages. */
function infection({ examination }: Case): Raised[] {
  const sides = ['right', 'left'] as const;
  return (contextOf(examination).revascularisations ?? []).flatMap((graft): Raised[] => {
    const { infectionSigns: signs = [], side, artery } = graft;
    if (!signs.length) return [];
    const kind: StagedKind = isOf(artery, 'arm') ? 'arm' : 'leg';
    const systemic = sides.some(
      (at) => (inspectionOf(examination, { kind, side: at }).systemic ?? []).length > 0,
    );
    const urgent = signs.includes('bleeding') || systemic || inShock(examination);
    return [
      {
        code: 'graft-infection',
        urgency: urgent ? 'now' : 'today',
        ...(side !== 'midline' && { limb: { kind, side } }),
        because: [graftGround(graft), { code: 'graft-infection-signs', signs }],
      },
    ];
  });
}

/** Flags of grafts and stents. */
export const graftFlags = (known: Case): Raised[] => [...occlusion(known), ...infection(known)];
