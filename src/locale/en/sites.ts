import type { SiteTable } from '../site-words.js';

/** Every site in words; the technique says where to put the finger or the stethoscope and how: common practice, own words. */
// prettier-ignore
export const SITES: SiteTable = {
  'superficial-temporal': { name: 'superficial temporal', short: 'Temporal', code: 'ST', technique: 'In front of the ear, just above the cheekbone, with a light fingertip.' },
  carotid: { name: 'carotid', code: 'CA', technique: 'Beside the voice box, in front of the neck muscle; gently, low in the neck, one side at a time.' },
  subclavian: { name: 'subclavian', code: 'SC', technique: 'Behind the middle of the collarbone, pressing down against the first rib.' },
  axillary: { name: 'axillary', code: 'AX', technique: 'High in the armpit, pressed outward against the upper arm bone.' },
  brachial: { name: 'brachial', code: 'BR', technique: 'On the inner side of the biceps tendon in the bend of the straight elbow.' },
  radial: { name: 'radial', code: 'RA', technique: 'At the wrist on the thumb side, between the bone and the flexor tendon.' },
  ulnar: { name: 'ulnar', code: 'UL', technique: 'At the wrist on the little-finger side, just outside the flexor tendon.' },
  'abdominal-aorta': { name: 'abdominal aorta', short: 'Aorta', code: 'AO', technique: 'Above the navel and a little to the left, deep, with a hand on either side to judge its width.' },
  renal: { name: 'renal', code: 'RE', technique: 'Stethoscope a hand’s breadth above the navel, two fingers out from the midline.' },
  iliac: { name: 'iliac', code: 'IL', technique: 'Stethoscope halfway between the navel and the middle of the groin.' },
  femoral: { name: 'femoral', code: 'FE', technique: 'In the groin just below the ligament, midway between the hip spine and the pubic symphysis.' },
  'adductor-canal': { name: 'adductor canal', code: 'AC', technique: 'Stethoscope on the inner thigh, a hand’s breadth above the knee.' },
  popliteal: { name: 'popliteal', code: 'PO', technique: 'Knee slightly bent, fingertips of both hands deep in the hollow behind it.' },
  'posterior-tibial': { name: 'posterior tibial', tiny: 'Post. tibial', code: 'PT', technique: 'Behind the inner ankle, one third of the way to the heel.' },
  'dorsalis-pedis': { name: 'dorsalis pedis', tiny: 'Dors. pedis', code: 'DP', technique: 'On the back of the foot, just outside the tendon of the big toe, lightly.' },
};
