import type { BedsideTestId } from '../../examination/index.js';

/** How a test is called and done. */
export interface BedsideHow {
  readonly name: string;
  readonly purpose: string;
  readonly steps: readonly string[];
  readonly caution: string;
}

/** How each bedside test is done: textbook knowledge, own words. */
export const bedsideHow: Record<BedsideTestId, BedsideHow> = {
  elevation: {
    name: 'Leg raise',
    purpose: 'At which height the foot turns pale, and how soon.',
    steps: [
      'Patient flat on the back, legs bare and warm.',
      'Raise the straight leg by the heel, slowly, up to 90°.',
      'Watch the sole; mark the angle and the time when it pales.',
    ],
    caution: 'Not with rest pain that the raised leg makes worse; lower it at once when it hurts.',
  },
  'colour-return': {
    name: 'Colour return',
    purpose: 'How long the sole stays pale once the leg hangs.',
    steps: [
      'After raising, sit the patient up with the feet hanging.',
      'Start as the foot comes down; stop when the sole is pink.',
    ],
    caution: 'Watch for dizziness on sitting up.',
  },
  'dependent-rubor': {
    name: 'Redness on hanging',
    purpose: 'Whether the hanging foot turns dusky red.',
    steps: [
      'Leave the feet hanging for two to three minutes.',
      'Note whether a dusky red spreads from the toes.',
    ],
    caution: 'Inflammation and venous disease redden a foot too, also when it is raised.',
  },
  'venous-filling': {
    name: 'Venous filling',
    purpose: 'How soon a vein on the back of the foot fills.',
    steps: [
      'Raise the leg until the veins are empty.',
      'Sit the patient up, feet hanging; start.',
      'Stop when a vein stands above the skin.',
    ],
    caution: 'Varicose veins fill from above and shorten the time.',
  },
  'hand-arch': {
    name: 'Hand-arch patency',
    purpose: 'Whether each artery of the wrist can feed the hand alone.',
    steps: [
      'Fist closed for half a minute, both arteries pressed at the wrist.',
      'Open the hand, relaxed, wrist not bent back.',
      'Let one artery go and time until the palm is pink; repeat with the other.',
    ],
    caution: 'A wrist bent back or fingers spread wide make a healthy hand look slow.',
  },
  'cold-provocation': {
    name: 'Cold provocation',
    purpose: 'Whether cold brings on white, blue and red fingers, and how long they take to warm.',
    steps: [
      'Hand in cool water for a minute.',
      'Note when each colour appears.',
      'Time until the fingers are warm again.',
    ],
    caution: 'Not with ulcers, gangrene or an acutely ischaemic hand; stop with pain.',
  },
  scalene: {
    name: 'Scalene manoeuvre',
    purpose: 'Whether the neck muscles press on the artery of the arm.',
    steps: [
      'Feel the radial pulse with the arm hanging.',
      'Neck stretched, head turned to the side tested, deep breath held.',
      'Repeat with the head turned away, and with the arm drawn down.',
    ],
    caution: 'Not with an unstable neck. A pulse that vanishes is common in healthy people.',
  },
  hyperabduction: {
    name: 'Hyperabduction',
    purpose: 'Whether the small chest muscle presses on the artery with the arm high.',
    steps: [
      'Feel the radial pulse with the arm down.',
      'Take the arm out and up to the full, elbow bent; hold a minute.',
    ],
    caution: 'Not with a shoulder that dislocates. A pulse that vanishes is common in healthy people.',
  },
  costoclavicular: {
    name: 'Costoclavicular manoeuvre',
    purpose: 'Whether collarbone and first rib press on the artery.',
    steps: [
      'Feel the radial pulse, sitting.',
      'Shoulders drawn back and down, chest out; hold half a minute.',
    ],
    caution: 'A pulse that vanishes is common in healthy people.',
  },
  'arm-stress': {
    name: 'Three-minute arm test',
    purpose: 'Whether working with raised arms brings the trouble on.',
    steps: [
      'Arms out and up, elbows bent to a right angle.',
      'Open and close both hands on the beat for three minutes.',
      'Mark each symptom when it is first felt.',
    ],
    caution: 'Stop with pain. Tired arms alone are normal.',
  },
};
