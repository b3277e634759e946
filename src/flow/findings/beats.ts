import type { Place, PulseSiteId } from '../../anatomy/index.js';
import type { Grade } from '../../examination/index.js';
import type { Simulation } from '../simulate.js';
import { gradeOf, pressureAt, soundPulseAt } from './pulses.js';

/** One beat at a place. Time in s from the start of the run, pressures in mmHg. */
export interface BeatReading {
  readonly onset: number;
  readonly systolic: number;
  readonly diastolic: number;
  readonly grade: Grade;
}

/** How long after ejection begins the wave has reached every pulse site, as a share of the beat; it is cut there. Rule of thumb. */
const CUT = 0.12;

/** Each beat of a rhythm at a place: of unequal strength in atrial fibrillation, where some may not be felt at all. */
export function beatsAt(simulation: Simulation, place: Place<PulseSiteId>): BeatReading[] {
  const { onsets, period } = simulation.inflow;
  const trace = pressureAt(simulation, place);
  const sound = soundPulseAt(simulation, place);
  const lengths = onsets.map((onset, i) => (onsets[i + 1] ?? period) - onset);
  return onsets.map((onset, i) => {
    const length = lengths[i]!;
    const start = onset + CUT * length;
    const end = onset + length + CUT * lengths[(i + 1) % lengths.length]!;
    let systolic = -Infinity;
    let top = start;
    const step = period / trace.length;
    const at = (time: number): number =>
      trace[Math.round((((time % period) + period) % period) / step) % trace.length]!;
    for (let t = start; t < end; t += step) {
      if (at(t) > systolic) {
        systolic = at(t);
        top = t;
      }
    }
    let diastolic = Infinity;
    for (let t = onset - 0.05; t < top; t += step) diastolic = Math.min(diastolic, at(t));
    const pulse = systolic - diastolic;
    return { onset, systolic, diastolic, grade: gradeOf(place.site, pulse, pulse / sound) };
  });
}
