import { ACUTE_CLASSES, type AcuteClass } from '../examination/index.js';
import type { LimbState } from './limb.js';
import type { TriageSettings } from './settings.js';
import { TRIAGE_SOURCES } from './sources.js';

/** The signs that part the classes. */
export const CLASS_SIGNS = ['sensation', 'movement', 'arterial', 'venous'] as const;
export type ClassSign = (typeof CLASS_SIGNS)[number];

/** What a limb's class was read from. */
export interface ClassFindings {
  readonly sensation?: 'normal' | 'digits' | 'beyond-digits' | 'lost';
  readonly movement?: 'normal' | 'weak' | 'paralysed';
  readonly arterial?: 'audible' | 'inaudible';
  readonly venous?: 'audible' | 'inaudible';
  readonly muscle?: 'tender' | 'tense';
  readonly fixedMottling?: boolean;
  readonly restPain?: boolean;
}

/** The classes a limb may have: never one alone while a sign that parts them was not tested. */
export interface ClassInterval {
  readonly atLeast: AcuteClass;
  readonly atMost: AcuteClass;
  /** The signs together fit no printed class. */
  readonly noSingleClass: boolean;
  readonly untested: readonly ClassSign[];
}

type Bounds = readonly [atLeast: AcuteClass, atMost: AcuteClass];

/** What each sign alone leaves open. Source: Rutherford 1997; RCEM (muscle, staining). */
export const CLASS_BOUNDS = {
  sensation: {
    normal: ['I', 'IIb'],
    digits: ['IIa', 'IIb'],
    'beyond-digits': ['IIb', 'IIb'],
    lost: ['IIb', 'III'],
  },
  movement: { normal: ['I', 'IIb'], weak: ['IIb', 'IIb'], paralysed: ['IIb', 'III'] },
  arterial: { audible: ['I', 'IIb'], inaudible: ['IIa', 'III'] },
  venous: { audible: ['I', 'IIb'], inaudible: ['IIa', 'III'] },
  muscle: { tense: ['IIb', 'III'] },
  fixedMottling: ['IIb', 'III'],
  source: `${TRIAGE_SOURCES.rutherford1997}; ${TRIAGE_SOURCES.rcem}`,
} as const satisfies Record<string, unknown>;

const rank = (value: AcuteClass): number => ACUTE_CLASSES.indexOf(value);
const higher = (a: AcuteClass, b: AcuteClass): AcuteClass => (rank(a) >= rank(b) ? a : b);
const lower = (a: AcuteClass, b: AcuteClass): AcuteClass => (rank(a) <= rank(b) ? a : b);

function boundsOf(f: ClassFindings, settings: TriageSettings): Bounds[] {
  const { restPain, tender } = settings.acuteClass;
  const whole =
    f.sensation === 'normal' &&
    f.movement === 'normal' &&
    f.arterial === 'audible' &&
    !f.muscle &&
    !f.fixedMottling &&
    f.venous !== 'inaudible';
  const feels = f.sensation === 'normal' || f.sensation === 'digits';
  return [
    ...(f.sensation ? [CLASS_BOUNDS.sensation[f.sensation]] : []),
    ...(f.movement ? [CLASS_BOUNDS.movement[f.movement]] : []),
    ...(f.movement === 'normal' && feels ? [['I', 'IIa'] as const] : []),
    ...(f.arterial ? [CLASS_BOUNDS.arterial[f.arterial]] : []),
    ...(f.venous ? [CLASS_BOUNDS.venous[f.venous]] : []),
    ...(f.muscle === 'tense' ? [CLASS_BOUNDS.muscle.tense] : []),
    ...(f.muscle === 'tender' ? [[tender, 'III'] as const] : []),
    ...(f.fixedMottling ? [CLASS_BOUNDS.fixedMottling] : []),
    ...(f.restPain && restPain === 'at-least-IIb' ? [['IIb', 'III'] as const] : []),
    // Class I has no continuing pain.
    ...(whole ? [['I', f.restPain && restPain !== 'ignored' ? 'IIa' : 'I'] as const] : []),
  ];
}

/**
 * The class of an acutely ischaemic limb as an interval. Class III asks for all four signs, since taking a limb for lost needs
 * every sign of it.
 */
export function classInterval(f: ClassFindings, settings: TriageSettings): ClassInterval {
  const untested = CLASS_SIGNS.filter((sign) => f[sign] === undefined);
  const lost =
    f.sensation === 'lost' &&
    f.movement === 'paralysed' &&
    f.arterial === 'inaudible' &&
    f.venous === 'inaudible';
  if (lost) return { atLeast: 'III', atMost: 'III', noSingleClass: false, untested };
  const bounds = boundsOf(f, settings);
  const atLeast = bounds.reduce<AcuteClass>((value, [low]) => higher(value, low), 'I');
  const atMost = bounds.reduce<AcuteClass>((value, [, high]) => lower(value, high), 'III');
  const weak = f.movement === 'weak' || f.movement === 'paralysed';
  const crossed =
    (weak && f.sensation === 'normal') ||
    (f.movement === 'normal' && (f.sensation === 'beyond-digits' || f.sensation === 'lost'));
  const clash = rank(atMost) < rank(atLeast);
  return { atLeast, atMost: clash ? atLeast : atMost, noSingleClass: clash || crossed, untested };
}

/** The findings of a limb that its class is read from; a known old deficit counts as not tested. */
export function classFindings({ facts }: Pick<LimbState, 'facts'>): ClassFindings {
  const { inspection, history, flow, feeling, power } = facts;
  const { muscle, venousDoppler: venous } = inspection;
  return {
    ...(feeling !== 'unknown' && { sensation: feeling }),
    ...(power !== 'unknown' && { movement: power }),
    ...(flow.arterial && { arterial: flow.arterial }),
    ...(venous && { venous }),
    ...(muscle === 'tender' && { muscle: 'tender' }),
    ...((muscle === 'tense' || muscle === 'rigid') && { muscle: 'tense' }),
    ...(inspection.colour === 'fixed-mottled' && { fixedMottling: true }),
    ...(history.symptom === 'rest-pain' && { restPain: true }),
  };
}

/** Every class from the least to the most that is open. */
export function classesOf({ atLeast, atMost }: Pick<ClassInterval, 'atLeast' | 'atMost'>): AcuteClass[] {
  return ACUTE_CLASSES.slice(rank(atLeast), rank(atMost) + 1);
}

/** What the hours of `TriageSettings.flowWithin` rest on; the call is immediate in every class. */
export const FLOW_SOURCE: Readonly<Record<AcuteClass, string>> = {
  I: TRIAGE_SOURCES.guideline2016,
  IIa: `${TRIAGE_SOURCES.guideline2016} (from memory)`,
  IIb: TRIAGE_SOURCES.guideline2016,
  III: TRIAGE_SOURCES.guideline2016,
};

/** Within how many hours blood flow should be restored, by class; none for an irreversible limb. */
export function flowHours(
  acute: AcuteClass,
  { flowWithin }: Pick<TriageSettings, 'flowWithin'>,
): readonly [from: number, to: number] | undefined {
  if (acute === 'III') return undefined;
  const { from, to } = flowWithin[acute];
  return [from, to];
}
