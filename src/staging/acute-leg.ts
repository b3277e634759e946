import { given } from '../triage/ground.js';
import { isAcutelyIschaemic } from '../triage/index.js';
import type { NoteCode } from './derived.js';
import type { LegFindings } from './findings.js';

/** Whether a leg is acutely ischaemic, which schemes of chronic disease are not meant for. */
export const isAcute = ({ state }: LegFindings): boolean =>
  (state.onset === 'acute' && state.sum > 0) || isAcutelyIschaemic(state);

/** What an acute leg says of a chronic stage. Source: Rutherford 1997, which classes acute and chronic ischaemia apart. */
export function acuteNotes(findings: LegFindings, candidates: readonly unknown[]): NoteCode[] {
  return given(candidates.length > 0 && isAcute(findings), 'acute-limb' as const);
}
