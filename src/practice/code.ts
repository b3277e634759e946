import { type Level, LEVELS } from '../anatomy/index.js';

/** How hard a patient is: one limb and a sure hand; legs and arms with a hand that errs; everything. */
export const DIFFICULTIES = ['clear', 'usual', 'hard'] as const;
export type Difficulty = (typeof DIFFICULTIES)[number];

/** Levels that can be practised. */
export const PRACTICE_LEVELS = [
  'aorto-iliac',
  'femoro-popliteal',
  'infrapopliteal',
  'arm-inflow',
  'axillo-brachial',
  'forearm-hand',
] as const satisfies readonly Level[];
export type PracticeLevel = (typeof PRACTICE_LEVELS)[number];

/** The levels that a difficulty has. A single artery of a forearm that is closed refills through the hand, and is clear to nobody. */
export const levelsFor = (difficulty: Difficulty): readonly PracticeLevel[] =>
  difficulty === 'hard' ? PRACTICE_LEVELS : PRACTICE_LEVELS.filter((level) => level !== 'forearm-hand');

/** Highest number of a simulated patient. */
export const HIGHEST_NUMBER = 9999;

/** Which simulated patient is meant. The same request is the same patient, anywhere. */
export interface PatientRequest {
  /** 1 to {@link HIGHEST_NUMBER}. */
  readonly number: number;
  readonly difficulty: Difficulty;
  /** The level that is diseased at least; any where it is left out. */
  readonly level?: PracticeLevel;
}

/** Which patient is meant: a simulated one, or that of a lesson by its place among those that ship, from 1. */
export type PatientCode = PatientRequest | { readonly lesson: number };

/** The code by which a patient is shared: `4817`, `hard-4817`, `clear-femoro-popliteal-12`, `lesson-3`. It tells nothing of the truth but the level practised. */
export function formatCode(code: PatientCode): string {
  if ('lesson' in code) return `lesson-${code.lesson}`;
  const { number, difficulty, level } = code;
  return [...(difficulty === 'usual' ? [] : [difficulty]), ...(level ? [level] : []), number].join('-');
}

const CODE = new RegExp(`^(?:(${DIFFICULTIES.join('|')})-)?(?:(${LEVELS.join('|')})-)?([1-9][0-9]{0,3})$`);

/** Reads a code as someone types it; `undefined` for what is none. */
export function parseCode(text: string): PatientCode | undefined {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
  const lesson = /^lesson-([1-9][0-9]?)$/.exec(plain);
  if (lesson) return { lesson: Number(lesson[1]) };
  const [, difficulty = 'usual', level, number] = CODE.exec(plain) ?? [];
  if (number === undefined) return undefined;
  if (level !== undefined && !(levelsFor(difficulty as Difficulty) as readonly string[]).includes(level))
    return undefined;
  return {
    number: Number(number),
    difficulty: difficulty as Difficulty,
    ...(level !== undefined && { level: level as PracticeLevel }),
  };
}
