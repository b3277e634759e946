import { examinationFrom, type ExaminationTable } from '../examination.js';
import { inRegisters } from '../terms.js';
import { plainExamination } from './examination-plain.js';
import { list } from './phrases.js';

const trade: ExaminationTable = {
  grades: {
    absent: 'absent',
    reduced: 'reduced',
    normal: 'normal',
    bounding: 'bounding',
  },
  increased: 'increased',
  expansile: 'expansile',
  reasons: {
    dressing: 'dressing',
    cast: 'cast',
    oedema: 'oedema',
    pain: 'pain',
    amputated: 'amputated',
    'line-in-place': 'line in place',
    'no-cuff': 'arm not to be cuffed',
    'dialysis-access': 'fistula or dialysis access',
    declined: 'declined',
    other: 'other',
  },
  bruits: {
    none: 'no bruit',
    systolic: 'systolic bruit',
    continuous: 'continuous bruit',
  },
  dopplers: {
    triphasic: 'triphasic',
    biphasic: 'biphasic',
    monophasic: 'monophasic',
    absent: 'no signal',
  },
  scales: { '0-3': '0 to 3', '0-4': '0 to 4', words: 'words' },
  onsets: { acute: 'acute', chronic: 'chronic', unknown: 'unknown' },
  notExamined: 'not examined',
  couldNotExamine: 'not assessable',
  unknownHere: 'recorded in a way this version does not know',
  unknownEntries: (count) =>
    count === 1
      ? 'The record holds 1 entry of a later version. It cannot be shown here and stays in the record.'
      : `The record holds ${count} entries of a later version. They cannot be shown here and stay in the record.`,
  faults: {
    types: {
      object: 'an object',
      list: 'a list',
      text: 'text',
      number: 'a number',
      boolean: 'true or false',
      json: 'plain JSON',
    },
    counted: {
      characters: (value) => (value === 1 ? '1 character' : `${value} characters`),
      entries: (value) => (value === 1 ? '1 entry' : `${value} entries`),
      values: (value) => `${value} values in all`,
      levels: (value) => `${value} levels`,
    },
    bounds: { 'at-least': 'at least', 'at-most': 'at most', 'more-than': 'more than' },
    rules: {
      instant: 'a date and time with "Z" or an offset, such as "2026-05-01T10:30+02:00"',
      'one-decimal': 'at most one decimal',
      'each-once': 'each word once',
      'ids-differ': 'each id once',
      'area-points': 'at least 3 points for an area',
      'grade-or-reason': 'a grade or a reason, not both',
      'bruit-or-reason': 'a bruit or a reason, not both',
      'thrill-only-felt': 'no thrill where the site could not be examined',
      'expansile-only-felt': 'no expansile pulse where the site could not be examined',
      'increased-only-bounding': 'this only together with grade "bounding"',
      'cause-only-with-ulcer': 'a cause only with an ulcer',
      'size-only-with-ulcer': 'a size only with an ulcer',
      'route-only-of-bypass': 'a route only of a bypass',
      'diastolic-below-systolic': 'a diastolic pressure not above the systolic',
      'distance-only-with-symptom': 'no walking distance where there is no symptom',
      'place-only-with-ulcer': 'a place only with an ulcer',
      'extent-only-with-gangrene': 'an extent only with gangrene',
      'reach-only-with-redness': 'a reach of redness only with redness',
      'level-only-where-cool': 'a level only where the limb is cool or cold',
      'one-arm-above-zero': 'a pressure above 0 in at least one arm',
      'colours-or-no-change': 'colours or no change, not both',
      'place-is-free': 'a place in the record where nothing stands yet',
      'sums-to-one': 'figures that sum to one',
      'acute-weights-sum-to-one': 'weights of the causes that sum to one for acute onset',
      'chronic-weights-sum-to-one': 'weights of the causes that sum to one for chronic onset',
      'signals-sum-to-one': 'four signals that sum to one for each strength',
      'bands-sum-to-one': 'bands that sum to one for each strength',
      'one-band-more': 'one band more than there are limits',
      'shares-at-most-one': 'narrowed and blocked at most one together',
      'strength-never-rises': 'nothing normal handed on where a reduced pulse comes in',
      stretch: 'an artery, or an artery with a pulse site and "proximal" or "distal"',
      'stretches-as-keys': 'only arteries as keys, or stretches of arteries with a pulse site',
    },
    faults: {
      unreadable: (found) => `found ${found}, which cannot be read; expected`,
      'later-version': (found) => `found ${found}, written by a later version than this one; expected`,
      missing: () => 'nothing there; expected',
      'unknown-field': () => 'there is no such field or site; expected',
      'wrong-type': (found) => `found ${found}; expected`,
      'not-allowed': (found) => `found ${found}; expected`,
      conflict: (found) => `found ${found}; expected`,
    },
    pressure: (least, most, words) =>
      `0, a number from ${least} to ${most} in mmHg, or one of ${list(words)}`,
    or: (items) => list(items, 'or'),
    nothing: 'nothing',
    theValue: 'the value',
  },
};

export const examination = examinationFrom(inRegisters(trade, plainExamination));
