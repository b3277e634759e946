import { isListeningSite, LISTENING_PLACES, placeKey, SIDES, type Side } from '../anatomy/index.js';
import type { AgeBand, Examination, PulseFinding, ScaleId } from '../examination/index.js';
import { emptyExamination } from '../examination/types/record.js';
import { type Findings, findingsOf, limit, type OutletReading } from './findings/index.js';
import { readCuffs } from './findings/pressures.js';
import { readSites } from './findings/pulses.js';
import type { PatientInput } from './patient.js';
import { simulate, type Simulation } from './simulate.js';
import { asReported, type ExaminerSkill } from './generate/examiner.js';

export const EXAMINED_PARTS = [
  'pulses',
  'doppler',
  'bruits',
  'delays',
  'pressures',
  'exercise',
  'bedside',
  'history',
] as const;
export type ExaminedPart = (typeof EXAMINED_PARTS)[number];

/** How a patient is examined. */
export interface ExamineOptions {
  /** What is examined; everything where it is left out. */
  readonly parts?: readonly ExaminedPart[];
  readonly scale?: ScaleId;
  /** Who examines: a perfect hand where it is left out. */
  readonly examiner?: { readonly seed: number; readonly skill?: ExaminerSkill };
}

export function ageBandOf(age: number): AgeBand {
  if (age < 20) return 'under-20';
  if (age < 40) return '20-39';
  if (age < 60) return '40-59';
  return age < 80 ? '60-79' : '80-over';
}

type Tree = { [key: string]: Tree | unknown };
/** Writes a value at a path of a plain object, making what is missing on the way. */
function put(into: Tree, path: readonly string[], value: unknown): void {
  if (value === undefined) return;
  const [last, ...way] = [...path].reverse();
  let at = into;
  for (const step of way.reverse()) at = (at[step] ??= {}) as Tree;
  at[last!] = value;
}

function pulses(into: Tree, findings: Findings, withDoppler: boolean): void {
  for (const { place, grade, doppler } of findings.sites) {
    const finding: PulseFinding = {
      grade,
      ...(withDoppler ? { doppler } : {}),
      ...(grade !== 'absent' && findings.thrills.has(placeKey(place)) && isListeningSite(place.site)
        ? { thrill: true as const }
        : {}),
    };
    put(into, ['pulses', place.site, place.side], finding);
  }
}

function bruits(into: Tree, findings: Findings): void {
  for (const place of LISTENING_PLACES) {
    const bruit = findings.bruits.get(placeKey(place)) ?? 'none';
    put(into, ['bruits', place.site, place.side], { bruit });
  }
}

function cuffs(
  into: Tree,
  at: readonly string[],
  readings: Findings['cuffs'],
  only?: readonly string[],
): void {
  // At rest the record takes no arm at all without a pressure in either.
  const { brachial: arms } = readings;
  const armless = !only && arms?.right === 0 && arms.left === 0;
  for (const [site, sides] of Object.entries(readings)) {
    if ((only && !only.includes(site)) || (site === 'brachial' && armless)) continue;
    for (const [side, value] of Object.entries(sides)) put(into, [...at, site, side], value);
  }
}

function bedside(into: Tree, findings: Findings): void {
  for (const side of SIDES) {
    const { pallorAngle, pallorTime, colourReturn, venousFilling } = findings.posture[side];
    put(into, ['bedside', 'elevation', side], {
      pallor: pallorAngle !== undefined,
      angle: pallorAngle ?? 90,
      ...(pallorTime === undefined ? {} : { seconds: pallorTime }),
    });
    put(into, ['bedside', 'colour-return', side], { seconds: colourReturn });
    put(into, ['bedside', 'venous-filling', side], { seconds: venousFilling });
    const { radial, ulnar } = findings.hands[side];
    put(into, ['bedside', 'hand-arch', side], {
      method: 'modified',
      radial: { seconds: radial },
      ulnar: { seconds: ulnar },
    });
    arm(into, side, findings.outlet[side]);
  }
}

/** The radial pulse before and in the positions of the arm, and the arms raised at work. */
function arm(into: Tree, side: Side, { before, during, stress }: OutletReading): void {
  const { scalene, ...others } = during;
  if (scalene) put(into, ['bedside', 'scalene', side], { toward: { before, during: scalene } });
  for (const [position, grade] of Object.entries(others))
    put(into, ['bedside', position, side], { before, during: grade });
  if (!stress) return;
  const early = stress.seconds < limit('armStress');
  put(into, ['bedside', 'arm-stress', side], {
    before,
    during: stress.during,
    seconds: stress.seconds,
    ...(early ? { stopped: 'fatigue', felt: { fatigue: stress.seconds } } : { nothingFelt: true }),
  });
}

function history(into: Tree, simulation: Simulation, findings: Findings): void {
  const { age, lesions, collaterals, rhythm } = simulation.patient;
  put(into, ['context', 'ageBand'], ageBandOf(age));
  if (lesions.some(({ narrowing }) => narrowing > 0))
    put(into, ['onset'], collaterals === 'fresh' ? 'acute' : 'chronic');
  put(into, ['history', 'rhythm'], rhythm);
  for (const side of SIDES) put(into, ['context', 'legClaudication', side], findings.walking[side].where);
}

/**
 * Examines a simulated patient: a record with everything that the rules of this folder derive from flow and pulse. The same
 * patient, options and seed give the same record.
 * @throws RangeError where a lesion names an artery or a place that the tree does not have
 */
export function examine(patient: PatientInput, options: ExamineOptions = {}): Examination {
  return examineSimulation(simulate(patient), options);
}

/** As {@link examine}, of a simulation that was already computed. */
export function examineSimulation(simulation: Simulation, options: ExamineOptions = {}): Examination {
  const { parts = EXAMINED_PARTS, scale, examiner } = options;
  const findings = findingsOf(simulation);
  const record = { ...emptyExamination(scale) } as Tree;
  const has = (part: ExaminedPart): boolean => parts.includes(part);
  if (has('pulses')) pulses(record, findings, has('doppler'));
  if (has('doppler')) {
    for (const side of SIDES)
      put(record, ['inspection', 'arm', side, 'vertebralFlow'], findings.vertebral[side].flow);
  }
  if (has('bruits')) bruits(record, findings);
  if (has('delays')) {
    const { radioRadial, radioFemoral } = findings.delays;
    put(record, ['delays', 'radioRadial'], radioRadial);
    for (const side of SIDES) put(record, ['delays', 'radioFemoral', side], radioFemoral[side]);
  }
  if (has('pressures')) cuffs(record, ['pressures'], findings.cuffs);
  if (has('exercise') && simulation.patient.state === 'rest') {
    const walked = simulate({ ...simulation.patient, state: 'walked' });
    cuffs(record, ['pressures', 'afterExercise'], readCuffs(walked, readSites(walked)), [
      'brachial',
      'dorsalis-pedis',
      'posterior-tibial',
    ]);
  }
  if (has('bedside')) bedside(record, findings);
  if (has('history')) history(record, simulation, findings);
  const examination = record as unknown as Examination;
  return examiner ? asReported(examination, examiner.seed, examiner.skill) : examination;
}
