import type { AcuteClass, Examination } from '../examination/index.js';
import {
  classesOf,
  classFindings,
  classInterval,
  type Ground,
  type LimbState,
  type TriageSettings,
} from '../triage/index.js';
import { given } from '../triage/ground.js';
import { type Derived, derive, type NoteCode } from './derived.js';

/** The class of an acutely ischaemic limb. */
export interface AcuteStage extends Derived<AcuteClass> {
  /** Whether the limb is acutely affected at all; `unknown` while it is not known how long it has been so. */
  readonly applies: 'yes' | 'no' | 'unknown';
  /** The least and the most class that the findings leave open, where the class applies or may. */
  readonly atLeast?: AcuteClass;
  readonly atMost?: AcuteClass;
}

/** A limb whose findings are few and whose onset is unknown is not yet one to be classed. */
function appliesTo({ onset, sum, urgency }: LimbState, settings: TriageSettings): AcuteStage['applies'] {
  if (onset === 'acute') return sum > 0 ? 'yes' : 'no';
  if (onset === 'unknown') return sum >= settings.ask.onset ? 'unknown' : 'no';
  return urgency === 'now' ? 'unknown' : 'no';
}

/** The class of a limb: an interval until every sign that parts the classes was tested. */
export function acuteStage(state: LimbState, settings: TriageSettings): AcuteStage {
  const applies = appliesTo(state, settings);
  if (applies === 'no') return { applies, ...derive<AcuteClass>([]) };
  const findings = classFindings(state);
  const { sensation, movement, arterial, venous } = findings;
  const interval = classInterval(findings, settings);
  const { facts, began } = state;
  const { muscle, colour } = facts.inspection;
  const grounds: Ground[] = [
    ...(sensation ? [{ code: 'sensation', value: sensation } as const] : []),
    ...(movement ? [{ code: 'movement', value: movement } as const] : []),
    ...(arterial ? [{ code: 'arterial', value: arterial } as const] : []),
    ...(venous ? [{ code: 'venous', value: venous } as const] : []),
    ...(findings.muscle && muscle ? [{ code: 'muscle', value: muscle } as const] : []),
    ...(findings.fixedMottling && colour ? [{ code: 'colour', value: colour } as const] : []),
    ...given(findings.restPain, { code: 'symptom', value: 'rest-pain' } as const),
    ...(began.hours !== undefined ? [{ code: 'hours', hours: began.hours } as const] : []),
  ];
  const notes: NoteCode[] = [
    ...given(interval.noSingleClass, 'no-single-class' as const),
    ...given(findings.fixedMottling, 'fixed-mottling' as const),
    ...given(facts.inspection.deficitKnown, 'old-deficit' as const),
    ...given(facts.kind === 'arm', 'described-for-leg' as const),
  ];
  const missing = [...interval.untested, ...given(applies === 'unknown', 'onset' as const)];
  const { atLeast, atMost } = interval;
  return { applies, ...derive(classesOf(interval), { grounds, missing, notes }), atLeast, atMost };
}

/** The acute class of a limb with the clinician's own beside it. */
export function acuteStageOf(
  examination: Examination,
  state: LimbState,
  settings: TriageSettings,
): AcuteStage {
  const { kind, side } = state.limb;
  const overrule = examination.staging?.[kind]?.[side]?.acute;
  const derived = acuteStage(state, settings);
  return overrule ? { ...derived, overrule } : derived;
}
