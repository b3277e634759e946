import { type DialysisAccess, foundGangrene, foundUlcer } from '../examination/index.js';
import type { Case, Raised } from './flag.js';
import { placesWith } from './facts.js';
import { given, type Ground } from './ground.js';
import { limbGrounds } from './limb-grounds.js';
import { hasDeficit, type LimbState } from './limb.js';
import { contextOf, isIschaemicColour } from './record.js';

function isSickHand({ facts: { inspection } }: LimbState): boolean {
  return isIschaemicColour(inspection) || inspection.temperature === 'cold';
}

/** An arterial line or a recent catheter in an arm. Sources: case series; a radial artery occludes silently in 1 to 10 %. */
function lines(known: Case, state: LimbState): Raised[] {
  const { limb, circulation } = state;
  const device = contextOf(known.examination).devices?.find(
    ({ limb: kind, side }) => kind === 'arm' && limb.kind === 'arm' && side === limb.side,
  );
  if (!device) return [];
  const because: Ground[] = [{ code: 'device', kind: device.kind }, ...limbGrounds(state)];
  const ischaemic = isSickHand(state) && circulation >= known.settings.poorFrom.hand;
  if (ischaemic || hasDeficit(state) || foundGangrene(state.facts.inspection)) {
    return [{ code: 'iatrogenic-hand', urgency: 'now', limb, because }];
  }
  const radial = placesWith(state.facts, ({ site, state: pulse }) => site === 'radial' && pulse === 'absent');
  const { radialAfterCatheter: urgency } = known.settings;
  return radial.length && urgency !== 'none' ? [{ code: 'iatrogenic-hand', urgency, limb, because }] : [];
}

/** Steal and nerve damage by a dialysis access. Sources: reports of monomelic neuropathy; reference on steal. */
function steal(state: LimbState, access: DialysisAccess): Raised[] {
  const { limb, onset, facts } = state;
  const because: Ground[] = [{ code: 'access', signs: access.signs ?? [] }, ...limbGrounds(state)];
  const { inspection, history } = facts;
  const wound = foundUlcer(inspection) || foundGangrene(inspection);
  const oldDeficit = hasDeficit(state) || inspection.deficitKnown === true;
  if (hasDeficit(state) && onset !== 'chronic') {
    return [{ code: 'access-steal', urgency: 'now', limb, because, ask: ['onset'] }];
  }
  if (history.symptom === 'rest-pain' || history.suddenPain || wound || oldDeficit) {
    return [{ code: 'access-steal', urgency: 'today', limb, because }];
  }
  return isSickHand(state) ? [{ code: 'access-steal', urgency: 'soon', limb, because }] : [];
}

function accesses(known: Case, state: LimbState): Raised[] {
  const { limb } = state;
  if (limb.kind !== 'arm') return [];
  return (contextOf(known.examination).access ?? [])
    .filter(({ side }) => side === limb.side)
    .flatMap((access): Raised[] => {
      const signs = access.signs ?? [];
      const bleeding = signs.filter((sign) => sign !== 'no-thrill');
      return [
        ...steal(state, access),
        ...given(bleeding.length, {
          code: 'access-bleeding',
          urgency: 'now',
          limb,
          because: [{ code: 'access', signs: bleeding }],
        } as const),
        ...given(signs.includes('no-thrill'), {
          code: 'access-thrombosed',
          urgency: 'today',
          limb,
          because: [{ code: 'access', signs: ['no-thrill'] }],
        } as const),
      ];
    });
}

/** Flags of lines, catheters and dialysis access. */
export function accessFlags(known: Case): Raised[] {
  return known.limbs.flatMap((state) => [...lines(known, state), ...accesses(known, state)]);
}
