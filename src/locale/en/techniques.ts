import type { SiteId } from '../../anatomy/index.js';
import { termsFrom } from '../terms.js';

/** Where to put the finger or the stethoscope, and how: common practice, own words. */
// prettier-ignore
export const techniques = termsFrom<SiteId>({
  'superficial-temporal': { trade: 'Just in front of the tragus, over the zygomatic arch; light touch.', plain: 'In front of the ear, just above the cheekbone. Press lightly.' },
  carotid: { trade: 'Between trachea and sternocleidomastoid, at or below the cricoid cartilage. Auscultate first; palpate gently, one side at a time, never at the upper border of the thyroid cartilage (carotid sinus); after a recent transient ischaemic attack only by your local rule.', plain: 'Beside the windpipe, low in the neck. Press gently and never on both sides at once.' },
  subclavian: { trade: 'Supraclavicular fossa, behind the mid-clavicle and lateral to sternocleidomastoid; press downwards against the first rib. Auscultate there too; a bruit may also arise at the origin of the vertebral.', plain: 'Just above the middle of the collarbone, pressing down.' },
  axillary: { trade: 'Apex of the axilla, along its lateral wall, with the arm slightly abducted; press against the humerus.', plain: 'High in the armpit, pressing outwards against the upper arm.' },
  brachial: { trade: 'Antecubital fossa, just medial to the biceps tendon, elbow nearly straight.', plain: 'In the bend of the elbow, on the inner side of the tendon.' },
  radial: { trade: 'At the wrist, lateral to the flexor carpi radialis tendon, against the distal radius. Compare both sides at the same time.', plain: 'At the wrist on the thumb side.' },
  ulnar: { trade: 'At the wrist, just lateral (radial) to the flexor carpi ulnaris tendon, proximal to the pisiform.', plain: 'At the wrist on the little-finger side, just on the thumb side of the tendon.' },
  'abdominal-aorta': { trade: 'Epigastrium, above the umbilicus and slightly left of the midline, patient relaxed; deep palpation with both hands, one each side, to judge width and whether the pulsation is expansile. Do not press hard on a suspected aneurysm.', plain: 'Above the navel, a little to the left, pressing deeply with both hands.' },
  renal: { trade: 'Auscultate about 5 cm above the umbilicus, 3 to 5 cm to each side of the midline.', plain: 'Stethoscope about 5 cm above the navel, 3 to 5 cm to each side of the middle.' },
  iliac: { trade: 'Auscultate midway between the umbilicus and the mid-inguinal point.', plain: 'Stethoscope halfway between the navel and the middle of the groin.' },
  femoral: { trade: 'Just below the inguinal ligament at the mid-inguinal point, halfway between the anterior superior iliac spine (ASIS) and the pubic symphysis.', plain: 'In the fold of the groin, halfway between the hip bone at the front and the middle of the pubic bone.' },
  'adductor-canal': { trade: 'Auscultate over the adductor canal: medial thigh, about a hand’s breadth above the adductor tubercle.', plain: 'Stethoscope on the inner thigh, a hand’s breadth above the knee.' },
  popliteal: { trade: 'Knee relaxed, flexed about 30°; thumbs on the tibial tuberosity, fingertips of both hands in the midline of the lower half of the popliteal fossa, pressing the artery against the back of the tibia. If it is felt too easily, consider a popliteal aneurysm.', plain: 'Knee relaxed and bent by about 30°; press deeply in the middle of the hollow behind it, in its lower half.' },
  'posterior-tibial': { trade: 'About 2 cm below and behind the medial malleolus, a third of the way to the point of the heel; foot relaxed.', plain: 'About 2 cm below and behind the inner ankle bone.' },
  'dorsalis-pedis': { trade: 'Dorsum of the foot, just lateral to the extensor hallucis longus (EHL) tendon, over the proximal first intermetatarsal space; light touch.', plain: 'On top of the foot, just to the outside of the big-toe tendon. Press lightly.' },
});
