import type { PressureTable } from '../pressures.js';
import type { Otherwise } from '../terms.js';
import type { PressureLabels } from './pressures-labels.js';

/** What the pressures tell, for a reader who is no clinician. */
export const plainPressures: Otherwise<PressureTable> = {
  sites: {
    radial: 'wrist, thumb side',
    ulnar: 'wrist, little-finger side',
    'high-thigh': 'upper thigh',
    'low-thigh': 'lower thigh',
    'dorsalis-pedis': 'top of the foot',
    'posterior-tibial': 'inner ankle',
    toe: 'big toe',
  },
  stations: { 'high-thigh': 'upper thigh', 'low-thigh': 'lower thigh' },
  kinds: {
    ankle: 'Ankle compared with arm',
    toe: 'Toe compared with arm',
    wrist: 'Wrist compared with arm',
    finger: 'Finger compared with arm',
  },
  bands: { abnormal: 'too low', incompressible: 'too hard to measure' },
  severe: 'much too low',
  curves: { 'notch-lost': 'its dip is missing' },
  noPressure: { incompressible: 'artery too hard to measure' },
  atAfter: (site, side) => `${side} ${site} after walking`,
  pointsTo: (levels) => `points to this part: ${levels}`,
  anyLevel: 'does not tell where: every part down to it is possible',
  thighLow: (index, limit) => `thigh compared with arm ${index}, below ${limit}`,
  drop: (by, from, at, strength) => `drops by ${by} from ${from} to ${at}, ${strength}`,
  strengths: { suspicious: 'which may mean something', significant: 'which counts' },
  wristDifference: (side, artery, by) => `${side}: the ${artery} is ${by} lower than the other at the wrist`,
  armDrop: (side, by) => `${side}: drops by ${by} from upper arm to wrist`,
  ways: { falls: 'drops' },
  ankleChange: (way, by) => `ankle pressure ${way} by ${by}`,
  indexChange: (way, percent) => `compared with the arm it ${way} by ${percent}%`,
  indexAfter: (index) => `ankle compared with arm afterwards ${index}`,
  verdicts: {
    abnormal: 'fits narrowed or blocked arteries',
    incomplete: 'not enough was measured to tell',
  },
  afterExercise: (side) => `${side}, after walking`,
  measures: { tcpo2: 'oxygen in the skin', index: 'ankle compared with arm' },
  indexSince: (now, before, by, fell) =>
    `ankle pressure compared with arm pressure ${now}, ${before} at the earlier visit: ${fell ? 'fallen' : 'risen'} by ${by}, more than two measurements differ by themselves.`,
  flatCurve:
    'pulse wave at the ankle flat: the limb may be at risk, if it also hurts at rest or has a wound.',
  threat: (measured) =>
    `${measured}: so low that the limb may be at risk, if it also hurts at rest or has a wound.`,
  ankleAboveLowArms: (side, index, below) =>
    `${side} ankle compared with arm ${index} with both arms below ${below}`,
  armsApart: (by) => `arms ${by} apart although the ankles are not low`,
  armPulses: 'pulses weak or not felt in both arms',
  lowThoughHypertensive: (below) => `both arms below ${below} although high blood pressure is known`,
  bothArms: (doubts) =>
    `The arteries of both arms may be diseased (${doubts}): every comparison with the arm may then come out too high. The ankle and toe pressures themselves, and the shape of the curves, do not depend on the arms.`,
  cuffReasons: {
    acute: 'perhaps suddenly short of blood',
    access: 'access for dialysis (blood washing)',
    lymphoedema: 'swelling from blocked lymph, or lymph glands removed',
    thrombosis: 'signs of a clot in a deep vein',
    graft: 'bypass or stent',
  },
  cuffRules: {
    'call-first': 'the call for help never waits for a measurement',
    'ask-first': 'the local rule decides before a cuff; toe pressure or the shape of the curve instead',
    elsewhere: 'no cuff over it; the cuff goes elsewhere, or the toe is measured',
  },
  methodLabels: {
    standard: 'Guideline for ankle and arm',
    ankle: 'Ankle artery that counts',
    arm: 'Arm that counts',
    incompressible: 'Too hard to measure above',
    toe: 'Toe compared with arm too low',
    drop: 'Drop between cuffs',
    exercise: 'Drop on walking',
    armDifference: 'Arms differ',
    threat: 'Limb at risk by',
    severeIndex: 'Ankle compared with arm much too low',
    wrist: 'Wrist compared with arm too low',
    finger: 'Finger compared with arm too low',
    armDrop: 'Drop from arm to wrist',
  },
  methodOptions: {
    ankle: { lower: 'The lower one (misses less)' },
    arm: { mean: 'Average of both arms, unless 10 mmHg apart' },
    drop: { '30': 'over 30 mmHg (may mean something from 20)' },
  },
  byDefault: 'the usual choice',
  oxygen: (side) => `oxygen in the skin of the ${side} foot`,
  volumeCurve: (side, shape) => `shape of the pulse curve at the ${side} ankle: ${shape}`,
  walked: { 'walk-completed': 'whole walk done', 'walk-not-completed': 'walk ended early' },
  noteAfter: (note) => `after walking: ${note}`,
  mean: (figures) => `average of both arms (${figures})`,
  denominator: (arms) => `Compared with: ${arms}.`,
  oneArm: (side) =>
    `pressure of the ${side} arm not recorded: if it is higher, every comparison is lower than shown.`,
  incompressible: 'ankle arteries too hard to measure; the toe pressure should be measured.',
  siteAfter: (site) => `${site} after walking`,
  refused: (field, typed, highest) =>
    `${field}: “${typed}” was not taken. Expected a number from 0 to ${highest}, 0 where nothing is heard.`,
};

export const plainPressureLabels: Otherwise<PressureLabels> = {
  how: 'Upper blood pressure values, lying down, rested 5 to 10 minutes.',
  segments: 'Pressures along the leg',
  tcpo2: 'Oxygen in the skin of the foot',
  afterExercise: 'After walking',
  noArm: 'Without a pressure of the arm there is nothing to compare with.',
  refusedArms:
    'Both arms at 0: nothing can be compared with them. Expected a pressure above 0 in at least one arm.',
  volumeCurve: 'Shape of the pulse curve at the ankle',
  cuffs:
    'No cuff over an access for dialysis, on an arm that is swollen or had its lymph nodes removed, or on a leg that may have a clot in a deep vein. Over or beyond a bypass or stent the local rule decides first; near a sore, burn, broken bone or great pain the cuff goes elsewhere, or the toe is measured. The call for help for a limb suddenly short of blood never waits for a pressure.',
  technique:
    'Lying on the back, rested 5 to 10 minutes, heels supported, room 19 to 22 °C, no smoking for 2 hours; cuff at least 40% as wide as the limb is round; probe 8 to 10 MHz. Order: right arm, right inner ankle, top of the right foot, left inner ankle, top of the left foot, left arm; then the first arm again.',
  caution:
    'Hardened arteries (diabetes, kidney disease, age) give ankle pressures that are too high: a normal figure does not rule out narrowed arteries.',
};
