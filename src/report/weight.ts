import type { PulseFinding } from '../examination/index.js';
import type {
  BedsideLine,
  CirculationStatement,
  ContextStatement,
  FoundStatement,
  HistoryStatement,
  InspectionStatement,
  LimbHistoryStatement,
} from '../statements/index.js';

/**
 * What a finding is to a reader: `abnormal` is told by itself, `normal` is collapsed and counted, `could-not` is told with its reason
 * among what was not examined, a `fact` is neither (age, a medicine, a pressure, the examiner's own words).
 */
export const WEIGHTS = ['abnormal', 'normal', 'could-not', 'fact'] as const;
export type Weight = (typeof WEIGHTS)[number];

/** A pulse of normal strength with nothing beside it that is not as usual. */
function isUsualPulse({ grade, increased, thrill, expansile, doppler }: PulseFinding): boolean {
  return (
    grade === 'normal' &&
    !increased &&
    !thrill &&
    !expansile &&
    (doppler === undefined || doppler === 'triphasic')
  );
}

/** What was felt at a site, or heard there by Doppler. Words of the examiner are never collapsed. */
export function weighPulse(pulse: PulseFinding): Weight {
  if (pulse.couldNotExamine) return 'could-not';
  if (isUsualPulse(pulse)) return pulse.note ? 'fact' : 'normal';
  const said = Object.keys(pulse).some((field) => field !== 'note' && field !== 'doppler');
  if (!said && pulse.doppler === 'triphasic') return pulse.note ? 'fact' : 'normal';
  return said || pulse.doppler ? 'abnormal' : 'fact';
}

export function weighFound(statements: readonly FoundStatement[]): Weight {
  const has = (code: FoundStatement['code']): boolean => statements.some((one) => one.code === code);
  if (has('could-not-listen') || has('could-not-feel')) return 'could-not';
  const bruit = statements.find((one) => one.code === 'bruit');
  if (bruit && bruit.bruit !== 'none') return 'abnormal';
  return bruit && !has('note') ? 'normal' : 'fact';
}

/** What each field of an inspection holds where nothing is wrong; a field that is not named here is a fact. */
const USUAL: Readonly<Partial<Record<InspectionStatement['code'], readonly unknown[]>>> = {
  colour: ['normal'],
  hair: ['normal'],
  nails: ['normal'],
  muscle: ['normal'],
  oedema: ['none'],
  deepInfection: [false],
  probeToBone: [false],
  charcotSuspected: [false],
  movement: ['normal'],
  sensation: ['normal'],
  monofilament: ['felt'],
  stretchPain: [false],
  painOutOfProportion: [false],
  venousDoppler: ['audible'],
  vertebralFlow: ['forward'],
  varices: [false],
  pigment: [false],
  lymphoedema: ['none'],
  lymphNodes: ['none'],
};
/** Lists of signs; an empty one was looked for and not there. */
const SIGNS: readonly string[] = [
  'infection',
  'systemic',
  'injurySigns',
  'falseAneurysmSigns',
  'thrombosisSigns',
];
/** Neither normal nor abnormal by themselves: what goes with an ulcer, and what time and words add. */
const FACTS: readonly string[] = [
  'note',
  'refill',
  'reperfused',
  'deficitKnown',
  'ulcerCause',
  'ulcerSizeMm',
];

function weighField(code: InspectionStatement['code'], value: unknown): Weight {
  if (FACTS.includes(code)) return 'fact';
  if (SIGNS.includes(code)) return (value as readonly unknown[]).length ? 'abnormal' : 'normal';
  return USUAL[code]?.includes(value) ? 'normal' : 'abnormal';
}

export function weighInspection(statement: InspectionStatement): Weight {
  switch (statement.code) {
    case 'couldNotExamine':
      return 'could-not';
    case 'temperature':
      return statement.temperature === 'warm' ? 'normal' : 'abnormal';
    case 'ulcer':
      return statement.depth === 'none' ? 'normal' : 'abnormal';
    case 'gangrene':
      return statement.gangrene === 'none' ? 'normal' : 'abnormal';
    case 'digit':
      return statement.state === 'normal' ? 'normal' : 'abnormal';
    default:
      return weighField(statement.code, statement.value);
  }
}

/** Normal findings that a reader who was not there must know: what makes an ischaemic limb urgent, and is not there. */
const TELLING: readonly InspectionStatement['code'][] = [
  'ulcer',
  'gangrene',
  'infection',
  'systemic',
  'sensation',
  'movement',
  'muscle',
  'stretchPain',
  'venousDoppler',
];
export const isTellingNegative = (statement: InspectionStatement): boolean =>
  TELLING.includes(statement.code) && weighInspection(statement) === 'normal';

export function weighLimbHistory(statement: LimbHistoryStatement): Weight {
  switch (statement.code) {
    case 'symptom':
      return statement.value === 'none' ? 'normal' : 'abnormal';
    case 'suddenPain':
    case 'newComplaint':
    case 'coldFingers':
    case 'dizzyOnUse':
    case 'chestPainOnUse':
    case 'distance':
    case 'severity':
      return 'abnormal';
    default:
      return 'fact';
  }
}

export function weighHistory(statement: HistoryStatement): Weight {
  switch (statement.code) {
    case 'rhythm':
      return statement.value === 'regular' ? 'normal' : 'abnormal';
    case 'elsewhere':
      return 'abnormal';
    case 'nothing-elsewhere':
    case 'no-risks':
      return 'normal';
    default:
      return 'fact';
  }
}

export function weighCirculation(statement: CirculationStatement): Weight {
  if (statement.code !== 'shock') return 'fact';
  return statement.value ? 'abnormal' : 'normal';
}

/** What was asked for and is not so. */
const DENIED: readonly ContextStatement['code'][] = [
  'no-diabetes',
  'arm-does-not-tire',
  'no-repairs',
  'no-aneurysm',
  'no-access',
  'no-device',
  'no-medicines',
];
export function weighContext(statement: ContextStatement): Weight {
  if (DENIED.includes(statement.code)) return 'normal';
  switch (statement.code) {
    case 'leg-claudication':
      return statement.muscle === 'none' ? 'normal' : 'abnormal';
    case 'arm-tires':
    case 'aneurysm':
    case 'cold-injury':
    case 'injury':
      return 'abnormal';
    case 'graft-pulse':
      return statement.pulse === 'absent' ? 'abnormal' : 'normal';
    case 'graft-infection':
    case 'access-signs':
      return statement.signs.length ? 'abnormal' : 'normal';
    default:
      return 'fact';
  }
}

export function weighBedside({ reading, note }: BedsideLine): Weight {
  switch (reading.verdict) {
    case 'not-done':
      return 'could-not';
    case 'incomplete':
      return 'fact';
    case 'normal':
      return note ? 'fact' : 'normal';
    default:
      return 'abnormal';
  }
}
