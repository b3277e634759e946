import type { Examination } from '../examination/index.js';
import { type PressureSettings, methodOf } from '../pressures/index.js';
import { accessFlags } from './access.js';
import { acuteFlags } from './acute-flags.js';
import { aneurysmFlags } from './aneurysms.js';
import type { CompressionChoices } from './compression-limits.js';
import { chronicFlags, woundQuestions } from './chronic.js';
import { dissectionFlags } from './dissection.js';
import { elsewhereFlags, markQuestions } from './elsewhere.js';
import { callsFor } from './calls.js';
import { type Case, FLAG_CODES, raise, type Raised, type RedFlag } from './flag.js';
import { graftFlags } from './grafts.js';
import { infectionFlags } from './infection.js';
import { injuryFlags } from './injury.js';
import { limbStates, type LimbState } from './limb.js';
import { limbQuestions, type Question, QUESTION_CODES } from './questions.js';
import { skinFlags } from './skin.js';
import { type TriageChoices, type TriageSettings, triageSettings } from './settings.js';
import { mostUrgent, type Urgent, URGENCIES, urgencyRank } from './urgency.js';

/** Choices that flags depend on; what is left out is the default, see `OPEN_CHOICES`. */
export interface FlagSettings {
  readonly triage?: TriageChoices;
  readonly pressures?: Partial<PressureSettings>;
  /** Limits of compression, which no flag depends on. */
  readonly compression?: CompressionChoices;
}

/** What a record calls for: flags, questions, the state of each limb, and the highest urgency. */
export interface Triage {
  readonly urgency: Urgent;
  readonly flags: readonly RedFlag[];
  /** Questions to ask next, each once; those of a flag stand with the flag too. */
  readonly questions: readonly Question[];
  readonly limbs: readonly LimbState[];
}

const keyOf = ({ code, limb }: { code: string; limb?: { kind: string; side: string } }): string =>
  `${code} ${limb?.side ?? ''} ${limb?.kind ?? ''}`;

/** Flags of the same kind for the same limb are one: the more urgent, with what raised each. */
function merged(flags: readonly Raised[], settings: TriageSettings): RedFlag[] {
  const found = new Map<string, RedFlag>();
  for (const next of flags.map((flag) => raise(flag, settings))) {
    const key = keyOf(next);
    const before = found.get(key);
    if (!before) {
      found.set(key, next);
      continue;
    }
    const [first, second] =
      urgencyRank(next.urgency) > urgencyRank(before.urgency) ? [next, before] : [before, next];
    const seen = new Set(first.because.map((ground) => JSON.stringify(ground)));
    const { clock: _slower, ...rest } = second;
    found.set(key, {
      ...rest,
      ...first,
      because: [...first.because, ...second.because.filter((ground) => !seen.has(JSON.stringify(ground)))],
      ask: QUESTION_CODES.filter((code) => first.ask.includes(code) || second.ask.includes(code)),
    });
  }
  return [...found.values()];
}

function questionsOf(known: Case, flags: readonly RedFlag[]): Question[] {
  const all: Question[] = [
    ...flags.flatMap(({ ask, limb }) => ask.map((code) => ({ code, ...(limb && { limb }) }))),
    ...known.limbs.flatMap((state) =>
      limbQuestions(state, known.limbs, known.examination, known.settings).map((code) => ({
        code,
        limb: state.limb,
      })),
    ),
    ...woundQuestions(known),
    ...markQuestions(known),
  ];
  const once = new Map(all.map((question) => [keyOf(question), question]));
  return [...once.values()].sort((a, b) => QUESTION_CODES.indexOf(a.code) - QUESTION_CODES.indexOf(b.code));
}

/**
 * Reads the whole record for what may not wait. Not recorded is never normal and unanswered is never no: two signs of ischaemia
 * of unknown onset are taken for acute until the onset is known. What is done then is decided by local pathways and the
 * clinician.
 * @param choices where sources disagree; every number of the tables is a setting
 */
export function triage(examination: Examination, choices: FlagSettings = {}): Triage {
  const settings = triageSettings(choices.triage);
  const pressures = methodOf(examination, choices.pressures);
  const limbs = limbStates(examination, settings);
  const known: Case = { examination, limbs, settings, pressures };
  const ofLimbs: Raised[] = [
    ...acuteFlags(known),
    ...injuryFlags(known),
    ...graftFlags(known),
    ...accessFlags(known),
    ...skinFlags(known),
    ...infectionFlags(known),
    ...chronicFlags(known),
  ];
  const flagged = ofLimbs.some(({ limb, urgency }) => limb && urgency !== 'soon');
  const raised = [
    ...ofLimbs,
    ...aneurysmFlags(known),
    ...dissectionFlags(known, flagged),
    ...elsewhereFlags(known),
  ];
  const flags = merged(raised, settings)
    .sort(
      (a, b) =>
        URGENCIES.indexOf(a.urgency) - URGENCIES.indexOf(b.urgency) ||
        FLAG_CODES.indexOf(a.code) - FLAG_CODES.indexOf(b.code),
    )
    .map((flag): RedFlag => {
      const calls = callsFor(examination, flag);
      return calls.length ? { ...flag, calls } : flag;
    });
  return {
    urgency: mostUrgent(flags.map(({ urgency }) => urgency)),
    flags,
    questions: questionsOf(known, flags),
    limbs,
  };
}

/**
 * Red flags of the whole record, the most urgent first. They say what to take seriously, what raised it and what to ask next;
 * see {@link triage} for the questions that stand without a flag.
 */
export function redFlags(examination: Examination, choices: FlagSettings = {}): readonly RedFlag[] {
  return triage(examination, choices).flags;
}
