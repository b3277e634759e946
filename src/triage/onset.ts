import type { Examination } from '../examination/index.js';
import type { LimbFacts } from './facts.js';
import type { HistoryFacts } from './record.js';
import type { TriageSettings } from './settings.js';

/** When a limb's trouble began. */
export interface LimbOnset {
  readonly state: 'acute' | 'chronic' | 'unknown';
  /** Hours from the onset, or from the last sudden worsening, to the examination. */
  readonly hours?: number;
  /** Whether the limb complains of something new; kept apart from the time, so that clearing the time keeps it. */
  readonly newComplaint: boolean;
  /** Whether the time was asked for in vain. */
  readonly cannotTell: boolean;
}

const HOUR = 3_600_000;

function hoursSince(onsetAt: string | undefined, examinedAt: string | undefined): number | undefined {
  if (!onsetAt || !examinedAt) return undefined;
  const hours = (Date.parse(examinedAt) - Date.parse(onsetAt)) / HOUR;
  return hours >= 0 ? Math.round(hours * 100) / 100 : undefined;
}

/** Hours from the onset told of a limb to the examination: by the clock where that can be counted from, else as told. */
export function onsetHours(
  { onsetAt, hours }: HistoryFacts,
  { examinedAt }: Pick<Examination, 'examinedAt'>,
): number | undefined {
  return hoursSince(onsetAt, examinedAt) ?? hours;
}

/**
 * The onset of a limb: the first line that applies. A gradual onset is not a chronic one, since thrombosis in place comes on
 * gradually. The time of a limb that complains of a wound is the wound's unless it began suddenly.
 * @param circulation the points of the circulation, from which an acute onset of the whole record counts for this limb
 */
export function onsetOf(
  { onset: whole, examinedAt }: Pick<Examination, 'onset' | 'examinedAt'>,
  { history }: Pick<LimbFacts, 'history'>,
  circulation: number,
  settings: TriageSettings,
): LimbOnset {
  const told = history.newComplaint === true;
  const cannotTell = history.onset === 'unknown';
  const hours = onsetHours(history, { examinedAt });
  const ofTheWound = history.symptom === 'tissue-loss' && history.onset !== 'sudden';
  const line = (state: LimbOnset['state'], newComplaint: boolean): LimbOnset => ({
    state,
    newComplaint,
    cannotTell,
    ...(hours !== undefined && { hours }),
  });
  if (hours !== undefined && hours < settings.acuteUnderHours && !ofTheWound) return line('acute', true);
  if (hours !== undefined && hours >= settings.acuteUnderHours) {
    return line(whole === 'acute' ? 'unknown' : 'chronic', told);
  }
  if (history.onset === 'sudden') return line('acute', true);
  if (cannotTell) return line('unknown', told);
  if (whole === 'acute') return line('acute', told || circulation >= settings.ask.onset);
  // A clock time that cannot be counted from leaves the onset open, whatever stands for the whole record.
  if (history.onsetAt) return line('unknown', told);
  return line(whole === 'chronic' ? 'chronic' : 'unknown', told);
}
