import {
  levelOf,
  type LimbKey,
  type LimbKind,
  pieceFromKey,
  type PieceKey,
  SIDES,
} from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import {
  asReported,
  COUNTS_FROM,
  examineSimulation,
  findingsOf,
  type Generated,
  type Patient,
  type Pattern,
  randomPatient,
  simulate,
} from '../flow/index.js';
import { examinationOf, type Lesson, type LessonText } from '../lesson/index.js';
import { type PracticeAct, practiceActId, pathsOf } from './acts.js';
import { type Difficulty, formatCode, type PatientRequest } from './code.js';
import { type Brief, presentsOf } from './presents.js';
import { joined, pickedOf } from './records.js';
import { causeOf, isOfArm, isOfLeg, type TrueLesion, type Truth, withinReach } from './truth.js';

/** A patient as a learner meets one: what is told of them, and what each act finds. Nothing in it tells what is wrong. */
export interface HiddenPatient {
  /** By which the same patient is met again, anywhere. */
  readonly code: string;
  readonly difficulty: Difficulty;
  /** Who it is and what brings them, of a simulated patient. */
  readonly brief?: Brief;
  /** The same in the words of a lesson's author. */
  readonly story?: LessonText;
  /** Limbs in question. */
  readonly limbs: readonly LimbKind[];
  readonly scale: Examination['scale'];
  /**
   * What the learner's hand, ear or tool finds of an act, as a record with nothing else in it; empty where nothing of it is recorded of
   * this patient. The same patient and act give the same, however often and in whatever order.
   */
  find(act: PracticeAct): Examination;
}

const truths = new WeakMap<HiddenPatient, Truth>();

/** The truth of a patient. Whoever shows it to a learner asks {@link revealed}, which waits for an answer. */
export function truthOf(patient: HiddenPatient): Truth {
  const truth = truths.get(patient);
  if (!truth) throw new TypeError('patient: found an object made elsewhere, expected one of this module');
  return truth;
}

/** A whole number from text, spread evenly (FNV-1a). */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

function hidden(shown: Omit<HiddenPatient, 'find' | 'scale'>, truth: Truth, errs: boolean): HiddenPatient {
  const seed = hashOf(shown.code);
  const patient: HiddenPatient = {
    ...shown,
    scale: truth.record.scale,
    find(act) {
      const there = pickedOf(truth.record, pathsOf(act));
      return errs ? asReported(there, (seed ^ hashOf(practiceActId(act))) >>> 0) : there;
    },
  };
  truths.set(patient, truth);
  return Object.freeze(patient);
}

/** The lesions of a simulated patient by limb, with the levels that count as right for each. */
function lesionsOf({ lesions }: Patient): TrueLesion[] {
  const found = new Map<string, TrueLesion>();
  for (const { piece: name, narrowing } of lesions) {
    const piece = pieceFromKey(name as PieceKey) ?? pieceFromKey(`${name} proximal` as PieceKey);
    if (!piece || narrowing < COUNTS_FROM) continue;
    const { artery, side } = piece;
    const kind = isOfArm(artery) ? 'arm' : isOfLeg(artery) ? 'leg' : undefined;
    if (!kind) continue;
    for (const own of side === 'midline' ? SIDES : [side]) {
      const limb: LimbKey = `${own} ${kind}`;
      // In the published cases a lesion of the common femoral is right at either neighbouring level.
      const levels =
        artery === 'common-femoral'
          ? (['femoro-popliteal', 'aorto-iliac'] as const)
          : ([levelOf(artery, kind)] as const);
      found.set(`${limb} ${levels[0]}`, { limb, levels });
    }
  }
  return [...found.values()];
}

/** A simulated patient with everything that can be found of it. */
function simulated({ pattern, patient }: Generated): { brief: Brief; truth: Truth } {
  const simulation = simulate(patient);
  const { brief, record: presented } = presentsOf(patient, findingsOf(simulation), pattern);
  const record = joined<Examination>(examineSimulation(simulation), presented);
  return {
    brief,
    truth: { record, lesions: lesionsOf(patient), cause: causeOf(pattern), patient },
  };
}

const CLEAR: readonly Pattern[] = ['atherosclerosis', 'diabetic', 'arm-atherosclerosis', 'embolism'];
const USUAL: readonly Pattern[] = [...CLEAR, 'sound'];

/** Whether what was drawn is as hard as was asked for. */
function suits({ pattern, patient }: Generated, { difficulty, level }: PatientRequest): boolean {
  const lesions = lesionsOf(patient);
  if (difficulty === 'clear' && (!CLEAR.includes(pattern) || lesions.length !== 1)) return false;
  if (difficulty === 'clear' && patient.variants.length > 0) return false;
  if (difficulty === 'usual' && !USUAL.includes(pattern)) return false;
  return level === undefined || lesions.some(({ levels }) => levels.includes(level));
}

/** Whether a hand, an ear or a cuff can tell the patient's disease: at the level practised, where there is one. */
function tells(generated: Generated, { level }: PatientRequest): boolean {
  const { record, lesions } = simulated(generated).truth;
  const reach = withinReach(record);
  return lesions.some(({ limb, levels }) => reach.includes(limb) && (!level || levels.includes(level)));
}

/** Most patients drawn in search of one that suits. The rarest level comes once in some hundred. */
const MOST_DRAWN = 100_000;

function drawn(request: PatientRequest): Generated {
  const seed = hashOf(formatCode(request));
  for (let index = 0; index < MOST_DRAWN; index++) {
    const generated = randomPatient(seed, index);
    if (!suits(generated, request)) continue;
    // What is practised must be there to be found.
    if ((request.difficulty !== 'clear' && !request.level) || tells(generated, request)) return generated;
  }
  throw new RangeError(`patient: found none for ${formatCode(request)}`);
}

/** A simulated patient by number: the same request is the same patient. */
export function simulatedPatient(request: PatientRequest): HiddenPatient {
  const { brief, truth } = simulated(drawn(request));
  const { difficulty } = request;
  return hidden(
    { code: formatCode(request), difficulty, brief, limbs: ['leg', 'arm'] },
    truth,
    difficulty !== 'clear',
  );
}

/**
 * The patient of a lesson, examined freely.
 * @param place its place among the lessons at hand, from 1; the lesson's own id could give it away
 */
export function lessonPatient(lesson: Lesson, place: number): HiddenPatient {
  const { patient, limbs } = lesson;
  const own = examinationOf(lesson);
  const acute = own.onset === 'acute';
  const below = patient
    ? (() => {
        const simulation = simulate(patient);
        const pattern = acute ? 'embolism' : patient.lesions.length ? 'atherosclerosis' : 'sound';
        // Rhythm and background are the lesson's to tell.
        const { record } = presentsOf(patient, findingsOf(simulation), pattern);
        const { context: _context, history, ...rest } = record;
        const { risks: _risks, rhythm: _rhythm, elsewhere: _elsewhere, ...told } = history ?? {};
        return joined<Examination>(examineSimulation(simulation), { ...rest, history: told });
      })()
    : undefined;
  const record = below ? joined<Examination>(below, own) : own;
  const { cause, text } = lesson.answer;
  const lesions = lesson.answer.lesions.map(({ limb, level }) => ({ limb, levels: [level] as const }));
  return hidden(
    { code: formatCode({ lesson: place }), difficulty: 'clear', story: lesson.story, limbs },
    { record, lesions, ...(cause && { cause }), ...(patient && { patient }), text },
    false,
  );
}
