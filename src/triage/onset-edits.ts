import { type Examination, patchAt } from '../examination/index.js';
import { limbStates } from './limb.js';
import { historyOf, type HistoryFacts, type StagedLimb } from './record.js';
import { DEFAULT_TRIAGE_SETTINGS, type TriageSettings } from './settings.js';

/** When a limb's trouble began, as it is entered. */
export type OnsetEntry = Pick<HistoryFacts, 'onset' | 'hours' | 'onsetAt'>;

/** What a limb complains of by what was entered of its onset, kept when the onset is taken away. */
function complaintOf(
  examination: Examination,
  limb: StagedLimb,
  settings: TriageSettings,
): Pick<HistoryFacts, 'newComplaint' | 'suddenPain'> {
  const state = limbStates(examination, settings).find(
    ({ limb: { kind, side } }) => kind === limb.kind && side === limb.side,
  );
  const { symptom, onset, suddenPain } = historyOf(examination, limb);
  const sudden = suddenPain === true || (symptom === 'rest-pain' && onset === 'sudden');
  return {
    ...(state?.began.newComplaint && { newComplaint: true }),
    ...(sudden && { suddenPain: true }),
  };
}

function withHistory(
  examination: Examination,
  { kind, side }: StagedLimb,
  history: HistoryFacts,
): Examination {
  const next = patchAt(examination.history, [kind, side], Object.keys(history).length ? history : undefined);
  if (next === examination.history) return examination;
  const { history: _before, ...rest } = examination;
  return { ...rest, ...(next && { history: next }) };
}

/**
 * Changes when a limb's trouble began. An acute onset writes what is new (`newComplaint`, `suddenPain`) into the record, so that
 * changing or clearing the time later withdraws no sign.
 * @param entry fields left out stay, fields set to `undefined` go
 */
export function setLimbOnset(
  examination: Examination,
  limb: StagedLimb,
  entry: Partial<OnsetEntry>,
  settings: TriageSettings = DEFAULT_TRIAGE_SETTINGS,
): Examination {
  const kept = complaintOf(examination, limb, settings);
  const merged = { ...historyOf(examination, limb), ...kept, ...entry };
  const next = Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== undefined));
  const entered = withHistory(examination, limb, next);
  return withHistory(entered, limb, { ...historyOf(entered, limb), ...complaintOf(entered, limb, settings) });
}
