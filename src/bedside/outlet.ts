import { GRADES, type OutletPosition, type OutletSymptom } from '../examination/index.js';
import type { BedsideNote, FalsePositives, PositionReading, PulseChange } from './test.js';
import { INCOMPLETE } from './test.js';

export const PLEWA = 'Plewa MC, Delinger M, Acad Emerg Med 1998;5:337-342';
export const NORD = 'Nord KM et al., Electromyogr Clin Neurophysiol 2008;48:67-74';
export const RAYAN = 'Rayan GM, Jensen C, J Shoulder Elbow Surg 1995;4:113-117 (from memory)';
export const WATSON = 'Watson LA et al., Man Ther 2009;14:586-595';

/** Share of healthy people whose pulse vanishes in one of the classic positions, in percent, at most. */
export const PULSE_LOSS_ANYWHERE: FalsePositives = {
  outcome: 'pulse-any-test',
  percent: 90,
  bound: 'highest-reported',
  people: 'healthy',
  source: WATSON,
};

type Rates = Partial<Record<FalsePositives['outcome'], number>>;

/** False-positive rates of one source as a list. */
export function rates(
  source: string,
  figures: Rates,
  extra: Partial<Pick<FalsePositives, 'bound' | 'people'>> = {},
): FalsePositives[] {
  return (Object.entries(figures) as [FalsePositives['outcome'], number][]).map(([outcome, percent]) => ({
    outcome,
    percent,
    people: 'healthy',
    source,
    ...extra,
  }));
}

/** Symptoms that count; tiredness alone is normal (common practice, no source). */
const COUNTING = ['heaviness', 'tingling', 'pain'] as const;

export function countingSymptoms(symptoms: readonly OutletSymptom[]): OutletSymptom[] {
  return COUNTING.filter((symptom) => symptoms.includes(symptom));
}

/** Whether the pulse was lost or weakened in a position; `undefined` where it was not felt before and during. */
export function pulseChange(position: OutletPosition): PulseChange | undefined {
  const { before, during } = position;
  if (before === 'absent') return 'absent-before';
  if (!before || !during) return undefined;
  if (during === 'absent') return 'lost';
  return GRADES.indexOf(during) < GRADES.indexOf(before) ? 'reduced' : 'kept';
}

/**
 * Reads one position of the arm. Positive: the radial pulse is lost or weaker, or symptoms are reproduced.
 * Source of the criterion: J Am Board Fam Med, table of thoracic outlet manoeuvres.
 */
export function readPosition(position: OutletPosition | undefined): PositionReading {
  if (!position) return INCOMPLETE;
  const pulse = pulseChange(position);
  const symptoms = countingSymptoms(position.symptoms ?? []);
  const params = {
    ...(pulse && { pulse }),
    symptoms,
    ...(position.seconds !== undefined && { seconds: position.seconds }),
  };
  const notes: BedsideNote[] = [
    ...(pulse === 'absent-before' ? ['absent-before' as const] : []),
    ...(position.symptoms === undefined ? ['symptoms-not-asked' as const] : []),
    ...(pulse === undefined ? ['pulse-not-compared' as const] : []),
  ];
  const changed = pulse === 'lost' || pulse === 'reduced';
  if (changed && symptoms.length) {
    return { verdict: 'abnormal', code: 'pulse-and-symptoms', params: { ...params, pulse }, notes };
  }
  if (symptoms.length) return { verdict: 'abnormal', code: 'symptoms', params, notes };
  // A pulse that only vanishes is common in healthy people, so this is weaker than a positive test.
  if (changed) return { verdict: 'borderline', code: `pulse-${pulse}`, params, notes };
  if (pulse === 'kept' && position.symptoms) return { verdict: 'normal', code: 'negative', params, notes };
  return { verdict: 'incomplete', code: 'incomplete', notes };
}
