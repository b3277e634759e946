import type { BedsideTestId } from '../../examination/index.js';

/** How a test is called and done. */
export interface BedsideHow {
  readonly name: string;
  readonly purpose: string;
  readonly steps: readonly string[];
  readonly caution: string;
}

/** How each bedside test is done: and when not to. Sources stand in `bedside/`; cautions are common practice. */
export const bedsideHow: Record<BedsideTestId, BedsideHow> = {
  elevation: {
    name: 'Leg elevation',
    purpose: 'Angle and time at which the foot turns pale (Buerger’s angle).',
    steps: [
      'Supine, legs bare, room and feet warm.',
      'Raise both legs together, supported at the heels, slowly; hold 1 to 2 minutes at 45°, then up to 90°.',
      'Watch both soles (in dark skin with tangential light, and the veins): record the angle and the time of pallor or venous guttering.',
    ],
    caution:
      'Contraindicated with ischaemic rest pain that elevation aggravates; lower at once if it hurts. Care with hip or back disease. This is not a straight-leg raise.',
  },
  'colour-return': {
    name: 'Colour return on dependency',
    purpose: 'How long the sole stays pale once the legs hang.',
    steps: [
      'Straight after elevation, sit the patient up with both feet hanging.',
      'Start as the foot comes down; stop when the sole is pink.',
    ],
    caution: 'Dizziness on sitting up: support the patient.',
  },
  'dependent-rubor': {
    name: 'Dependent rubor',
    purpose: 'Dependent rubor: dusky redness of the foot when it hangs.',
    steps: ['Leave both feet hanging for 2 to 3 minutes.', 'Note whether a dusky red spreads from the toes.'],
    caution: 'Inflamed or venous skin reddens too, also when it is raised.',
  },
  'venous-filling': {
    name: 'Venous filling time',
    purpose: 'How soon a vein on the dorsum of the foot fills.',
    steps: [
      'Raise the leg until the veins are empty.',
      'Sit the patient up, feet hanging; start.',
      'Stop when a vein stands above the skin.',
    ],
    caution:
      'Dizziness on sitting up: support the patient. Incompetent veins fill from above and shorten the time.',
  },
  'hand-arch': {
    name: 'Palmar arch test',
    purpose: 'Whether the radial and the ulnar artery each supply the hand alone.',
    steps: [
      'Hand raised, fist clenched for 30 s; compress the radial and ulnar arteries at the wrist.',
      'Lower the hand and open it, relaxed, wrist not hyperextended.',
      'Release one artery and time until the palm is pink; repeat with the other.',
    ],
    caution:
      'Not with hand ischaemia, an arterial line in place, or a wound or fistula at the wrist. A hyperextended wrist or splayed fingers prolong the flush. A normal test alone does not clear a hand for radial puncture or harvest.',
  },
  'cold-provocation': {
    name: 'Cold provocation test',
    purpose: 'Whether cold brings on white, blue and red fingers, and how long they take to warm.',
    steps: [
      'Hand in the water for the time that the limit belongs to.',
      'Note when each colour appears.',
      'Time until the fingers are warm again.',
    ],
    caution:
      'Contraindicated with ulcers, gangrene, an infected finger, an acutely ischaemic hand, cold agglutinins, cryoglobulinaemia, cold urticaria or cold-induced angina; stop with pain.',
  },
  scalene: {
    name: 'Scalene manoeuvre',
    purpose: 'Compression of the subclavian artery between the scalene muscles.',
    steps: [
      'Palpate the radial pulse with the arm hanging.',
      'Neck extended, chin turned to the tested side, deep breath held; hold 30 s.',
      'Repeat with the chin turned away, and with downward traction on the arm.',
    ],
    caution:
      'Not with an unstable neck or shoulder, a fresh fracture, or a recent stroke or transient ischaemic attack (head turning). A pulse lost without symptoms is not a positive test.',
  },
  hyperabduction: {
    name: 'Hyperabduction',
    purpose: 'Compression of the axillary artery behind pectoralis minor in abduction.',
    steps: [
      'Palpate the radial pulse with the arm down.',
      'Abduct to 90° first, then to the full, elbow bent; hold 60 s.',
    ],
    caution:
      'Not with an unstable shoulder or a fresh fracture. A pulse lost without symptoms is not a positive test.',
  },
  costoclavicular: {
    name: 'Costoclavicular manoeuvre',
    purpose: 'Compression of the subclavian artery between clavicle and first rib.',
    steps: ['Palpate the radial pulse, sitting.', 'Shoulders drawn back and down, chest out; hold 30 s.'],
    caution:
      'Not with an unstable shoulder or a fresh fracture of clavicle or rib. A pulse lost without symptoms is not a positive test.',
  },
  'arm-stress': {
    name: 'Elevated arm stress test',
    purpose: 'Whether work with raised arms reproduces the symptoms.',
    steps: [
      'Arms abducted and rotated outwards, elbows bent to a right angle.',
      'Open and close both hands on the beat for 3 minutes.',
      'Mark each symptom when it is first felt.',
    ],
    caution:
      'Not with acute limb ischaemia, or heart or shoulder disease that forbids it. Stop with pain; tired arms alone are no positive test.',
  },
};
