import type { PressureUnit } from '../examination/index.js';
import type { PressureNote, PressureVerdict } from '../statements/index.js';
import type { PressureWords } from './en/pressures.js';
import { render, type Renderings } from './render.js';

/** Says what the pressures point to. */
export function sayVerdict(words: PressureWords, verdict: PressureVerdict, unit: PressureUnit): string {
  const says: Renderings<PressureVerdict> = {
    threat: ({ side, threats }) => words.threat(side, threats, unit),
    'index-change': ({ change }) => words.indexSince(change),
    'flat-curve': ({ side }) => words.flatCurve(side),
    segment: ({ finding }) => words.segment(finding, unit),
    arm: ({ finding }) => words.arm(finding, unit),
    exercise: ({ reading }) => words.exercise(reading, unit),
  };
  return render(says, verdict);
}

/** Says how the indices were worked out, what they lack, and by which methods. */
export function sayNote(words: PressureWords, note: PressureNote, unit: PressureUnit): string {
  const says: Renderings<PressureNote> = {
    sums: ({ denominator, indices }) => {
      const sums = words.sums(indices.map((index) => words.sum(index, unit)));
      return `${words.denominator(denominator.from, unit)} ${sums} ${words.used}`;
    },
    'no-arm': words.noArm,
    'one-arm': ({ missing }) => words.oneArm(missing),
    'both-arms': ({ doubts }) => words.bothArms(doubts, unit),
    incompressible: ({ side }) => words.incompressible(side),
    methods: ({ used }) => words.methodsUsed(used),
  };
  return render(says, note);
}
