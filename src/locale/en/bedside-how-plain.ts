import type { BedsideTestId } from '../../examination/index.js';
import type { Otherwise } from '../terms.js';
import type { BedsideHow } from './bedside-how.js';

/** How each test is done, for the person it is done with. */
export const plainHow: Otherwise<Record<BedsideTestId, BedsideHow>> = {
  elevation: {
    name: 'Leg raising',
    purpose: 'How high the leg can be raised before the foot turns pale, and after how long.',
    steps: [
      'You lie on your back with bare legs, in a warm room and with warm feet.',
      'Both legs are raised together, held at the heels, slowly: 1 to 2 minutes at 45°, then up to 90°.',
      'Both soles are watched. The height and the time are noted when one turns pale or its veins go flat.',
    ],
    caution:
      'Not if raising makes a pain worse that is there at rest; lowered at once if it hurts. Say so if your hip or back is bad.',
  },
  'colour-return': {
    name: 'How soon the colour returns',
    purpose: 'How long the sole stays pale once the legs hang.',
    steps: [
      'Straight after the legs were raised, you sit up and let both feet hang.',
      'The time runs from the moment the foot is down until the sole is pink.',
    ],
    caution: 'You may feel dizzy on sitting up: someone should hold you.',
  },
  'dependent-rubor': {
    name: 'Redness of the hanging foot',
    purpose: 'Whether the foot turns a dusky red when it hangs.',
    steps: ['Both feet hang for 2 to 3 minutes.', 'It is noted whether a dusky red spreads from the toes.'],
    caution: 'Inflamed skin, and skin with bad veins, reddens too, also when it is raised.',
  },
  'venous-filling': {
    name: 'How soon the veins fill',
    purpose: 'How soon a vein on top of the foot fills.',
    steps: [
      'The leg is raised until the veins are empty.',
      'You sit up with both feet hanging; the time starts.',
      'It stops when a vein stands out above the skin.',
    ],
    caution:
      'You may feel dizzy on sitting up: someone should hold you. Veins that leak fill from above and shorten the time.',
  },
  'hand-arch': {
    name: 'Blood supply of the hand',
    purpose: 'Whether each of the two arteries at the wrist can supply the hand alone.',
    steps: [
      'You raise the hand and make a fist for 30 s; both arteries are pressed at the wrist.',
      'You lower the hand and open it, relaxed, without bending the wrist back.',
      'One artery is let go, and the time is taken until the palm is pink; then the same with the other.',
    ],
    caution:
      'Not if the hand is short of blood, with a line in the artery, or with a wound or dialysis access at the wrist. A wrist bent back or spread fingers make it slower. A normal test alone does not mean that an artery at the wrist may be used or taken.',
  },
  'cold-provocation': {
    name: 'Cold test of the fingers',
    purpose: 'Whether cold turns the fingers white, blue and red, and how long they take to warm.',
    steps: [
      'The hand goes into cold water for as long as the limit asks.',
      'It is noted when each colour appears.',
      'The time is taken until the fingers are warm again.',
    ],
    caution:
      'Not with sores, dead tissue, an infected finger, a hand suddenly short of blood, an illness of the blood or a rash brought on by cold, or chest pain in the cold; stopped if it hurts.',
  },
  scalene: {
    name: 'Turning the head',
    purpose: 'Whether muscles at the side of the neck press on the artery to the arm.',
    steps: [
      'The pulse at the wrist is felt while the arm hangs.',
      'Neck stretched back, chin turned to the side tested, deep breath held; for 30 s.',
      'The same with the chin turned away, and with the arm pulled down.',
    ],
    caution:
      'Not with an unstable neck or shoulder, a fresh broken bone, or a recent stroke or mini-stroke (the head is turned). A pulse that goes without symptoms is not an abnormal test.',
  },
  hyperabduction: {
    name: 'Raising the arm',
    purpose: 'Whether the small chest muscle presses on the armpit artery when the arm is up.',
    steps: [
      'The pulse at the wrist is felt while the arm is down.',
      'The arm is raised sideways to 90° first, then all the way, elbow bent; held for 60 s.',
    ],
    caution:
      'Not with an unstable shoulder or a fresh broken bone. A pulse that goes without symptoms is not an abnormal test.',
  },
  costoclavicular: {
    name: 'Shoulders back',
    purpose: 'Whether the collarbone and the first rib press on the artery to the arm.',
    steps: [
      'The pulse at the wrist is felt while you sit.',
      'Shoulders back and down, chest out; held for 30 s.',
    ],
    caution:
      'Not with an unstable shoulder or a freshly broken collarbone or rib. A pulse that goes without symptoms is not an abnormal test.',
  },
  'arm-stress': {
    name: 'Raised arms at work',
    purpose: 'Whether work with raised arms brings on the symptoms.',
    steps: [
      'Arms out to the sides and turned outwards, elbows bent to a right angle.',
      'You open and close both hands on the beat for 3 minutes.',
      'Each symptom is marked when you first feel it.',
    ],
    caution:
      'Not if an arm is suddenly short of blood, or if your heart or shoulder does not allow it. Stopped if it hurts; tired arms alone do not make the test abnormal.',
  },
};
