import { LOINC, SYSTEMS } from './codes.js';
import type { CodeAndSystem } from './resource.js';

/** Published codes of a field, beside its own. */
export function publishedCodes(code: string): readonly CodeAndSystem[] {
  const loinc = (one: string): readonly CodeAndSystem[] => [{ system: SYSTEMS.loinc, code: one }];
  if (/^pulses\.[^.]+$/.test(code)) return loinc(LOINC.pulse);
  if (
    code === 'circulation.systolic' ||
    /^pressures\.(?!tcpo2|volumeCurve|afterExercise$)[^.]+(\.[^.]+)?$/.test(code)
  )
    return code.startsWith('circulation') || sided(code) ? loinc(LOINC.systolic) : [];
  if (code === 'circulation.diastolic') return loinc(LOINC.diastolic);
  if (code === 'circulation.heartRate') return loinc(LOINC.heartRate);
  return code.endsWith('.refill') ? loinc(LOINC.refill) : [];
}

/** Whether pressures of this code are those of a cuff. */
function sided(code: string): boolean {
  const name = code.split('.').at(-1) ?? '';
  return !['unit', 'note', 'completed', 'minutes', 'afterExercise'].includes(name);
}
