import type {
  Bruit,
  DopplerSignal,
  Fault,
  Grade,
  Onset,
  PulseFinding,
  Reason,
  ScaleId,
  ScaleStep,
} from '../../examination/index.js';
import { list } from './phrases.js';

const grades: Record<Grade, string> = {
  absent: 'absent',
  reduced: 'reduced',
  normal: 'normal',
  bounding: 'bounding',
};

const reasons: Record<Reason, string> = {
  dressing: 'dressing',
  cast: 'cast',
  oedema: 'oedema',
  pain: 'pain',
  amputated: 'amputated',
  'line-in-place': 'line in place',
  declined: 'declined',
  other: 'other',
};

const bruits: Record<Bruit, string> = {
  none: 'no bruit',
  systolic: 'systolic bruit',
  continuous: 'continuous bruit',
};

const dopplers: Record<DopplerSignal, string> = {
  triphasic: 'triphasic',
  biphasic: 'biphasic',
  monophasic: 'monophasic',
  absent: 'no signal',
};

const scales: Record<ScaleId, string> = { '0-3': '0 to 3', '0-4': '0 to 4', words: 'words' };
const onsets: Record<Onset, string> = { acute: 'acute', chronic: 'chronic', unknown: 'unknown' };

/** A step of a scale as one says it: "2, normal", or the word alone. */
function step({ numeral, grade, increased }: ScaleStep): string {
  const word = increased ? 'increased' : grades[grade];
  return numeral === null ? word : `${numeral}, ${word}`;
}

/** What is felt beside the grade. */
function pulseExtras(finding: PulseFinding): string[] {
  return [
    ...(finding.thrill ? ['thrill'] : []),
    ...(finding.expansile ? ['expansile'] : []),
    ...(finding.doppler ? [`Doppler ${dopplers[finding.doppler]}`] : []),
  ];
}

/** One thing wrong with a value, in a sentence that names the field, what was found and what was expected. */
function fault({ code, path, found, expected }: Fault): string {
  const where = path.length ? path.join(' › ') : 'the value';
  switch (code) {
    case 'unreadable':
      return `${where}: found ${found}, which cannot be read; expected ${list(expected, 'or')}.`;
    case 'later-version':
      return `${where}: found ${found}, written by a later version than this one; expected ${list(expected, 'or')}.`;
    case 'missing':
      return `${where}: nothing there; expected ${list(expected, 'or')}.`;
    case 'unknown-field':
      return `${where}: there is no such field or site; expected ${expected.length ? list(expected, 'or') : 'nothing'}.`;
    default:
      return `${where}: found ${found}; expected ${list(expected, 'or')}.`;
  }
}

export const examination = {
  grades,
  increased: 'increased',
  expansile: 'expansile',
  reasons,
  bruits,
  dopplers,
  scales,
  onsets,
  notExamined: 'not examined',
  couldNotExamine: 'could not examine',
  couldNot: (reason: Reason) => `could not examine: ${reasons[reason]}`,
  step,
  pulseExtras,
  fault,
};
export type ExaminationWords = typeof examination;
