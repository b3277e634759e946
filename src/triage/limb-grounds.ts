import { placesWith } from './facts.js';
import { given, type Ground } from './ground.js';
import type { LimbState } from './limb.js';

/** Every finding of a limb that gave points, in the order of the examination. */
export function limbGrounds({ facts, points, began, refillOver }: LimbState): Ground[] {
  const { history, inspection, flow, feeling, power } = facts;
  const { colour, temperature, refill, muscle, venousDoppler } = inspection;
  // An acute onset without a time is a finding of its own.
  const acuteAlone = began.state === 'acute' && began.newComplaint && began.hours === undefined;
  const absent = placesWith(facts, ({ state }) => state === 'absent');
  return [
    ...given(history.suddenPain, { code: 'sudden-pain' } as const),
    ...given(history.symptom === 'rest-pain', { code: 'symptom', value: 'rest-pain' } as const),
    ...given(history.newComplaint, { code: 'new-complaint' } as const),
    ...given(acuteAlone, { code: 'onset-acute' } as const),
    ...given(began.hours !== undefined, { code: 'hours', hours: began.hours ?? 0 } as const),
    ...(points.colour > 0 && colour ? [{ code: 'colour', value: colour } as const] : []),
    ...(points.temperature > 0 && temperature ? [{ code: 'temperature', value: temperature } as const] : []),
    ...given(absent.length, { code: 'pulses-absent', places: absent } as const),
    ...(flow.arterial === 'inaudible' ? [{ code: 'arterial', value: 'inaudible' } as const] : []),
    ...(points.capillary > 0 && refill !== undefined
      ? [{ code: 'refill', seconds: refill, limit: refillOver } as const]
      : []),
    ...given(venousDoppler === 'inaudible', { code: 'venous', value: 'inaudible' } as const),
    ...(points.feeling > 0 && feeling !== 'unknown' ? [{ code: 'sensation', value: feeling } as const] : []),
    ...(points.power > 0 && power !== 'unknown' ? [{ code: 'movement', value: power } as const] : []),
    ...(points.muscle > 0 && muscle ? [{ code: 'muscle', value: muscle } as const] : []),
  ];
}
