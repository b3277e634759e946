import type { InspectionTable } from '../inspection.js';
import type { Otherwise } from '../terms.js';
import { yesNo } from '../words.js';

/** What is seen and touched, for a reader who is no clinician. */
export const plainInspection: Otherwise<InspectionTable> = {
  title: 'Skin and touch',
  rest: 'Hair, nails and the rest',
  colour: {
    words: { mottled: 'blotchy, pales when pressed', 'fixed-mottled': 'blotchy, stays when pressed' },
  },
  refill: 'Colour back after pressing',
  muscle: { words: { wasted: 'thin', tender: 'sore', tense: 'hard', rigid: 'stiff' } },
  oedema: { label: 'Swelling', words: { pitting: 'a dent stays' } },
  lymphNodes: { label: 'Lymph glands', words: { tender: 'sore' } },
  lymphoedema: {
    label: 'Swelling from blocked lymph',
    words: { 'nodes-removed': 'lymph glands removed or irradiated' },
  },
  vertebralFlow: {
    label: 'Blood flow in the neck artery along the spine',
    words: { forward: 'towards the head', alternating: 'to and fro', reversed: 'backwards, into the arm' },
  },
  ulcer: { label: 'Sore', words: { deep: 'to bone or tendon' } },
  ulcerPlace: {
    label: 'Sore lies at',
    words: { forefoot: 'front of the foot', midfoot: 'middle of the foot' },
  },
  ulcerCause: {
    label: 'Cause of the sore',
    words: {
      arterial: 'arteries',
      venous: 'veins',
      neuropathic: 'lost feeling',
      mixed: 'more than one',
    },
  },
  ulcerSize: 'Sore across',
  gangrene: { label: 'Dead tissue' },
  gangreneExtent: {
    label: 'Dead tissue reaches',
    words: { forefoot: 'front of the foot, or hand', midfoot: 'middle of the foot' },
  },
  legExtents: { forefoot: 'front of the foot', midfoot: 'middle of the foot' },
  infection: { words: { tenderness: 'sore when pressed' } },
  systemic: { words: { 'white-cells': 'white blood cells over 12 or under 4' } },
  systemicShort: { 'white-cells': 'white blood cells > 12 or < 4' },
  movement: { words: { paralysed: 'cannot be moved' } },
  venousDoppler: { label: 'Blood flow in the veins', words: { audible: 'heard', inaudible: 'not heard' } },
  probeToBone: 'Bone felt in the sore',
  charcot: 'Bones of the foot may be giving way',
  deficit: 'Weakness or numbness',
  filament: { label: '10 g thread on the sole' },
  compartmentOf: { leg: 'Muscles and injury, legs', arm: 'Muscles and injury, arms' },
  stretchPain: 'Pain when someone moves toes or fingers',
  outOfProportion: 'Far more pain than expected',
  flow: 'Blood flow',
  injurySigns: 'Signs of an injured artery',
  falseAneurysm: 'Swelling at a puncture or bypass',
  digit: {
    second: 'second toe or finger',
    third: 'third toe or finger',
    fourth: 'fourth toe or finger',
  },
  digitStates: { ulcer: 'sore', gangrene: 'dead tissue' },
  pigment: 'Brown patches',
  thrombosis: { label: 'Signs of a clot in the deep veins' },
  couldNotExamine: 'Could not check',
  said: {
    colour: (is) => `skin ${is}`,
    refill: (is) => `colour back ${is} s after pressing`,
    oedema: (is) => `swelling: ${is}`,
    ulcer: (is, at) => `sore: ${is}${at ? `, ${at}` : ''}`,
    gangrene: (is, at) => `dead tissue: ${is}${at ? `, ${at}` : ''}`,
    deepInfection: yesNo('infection below the skin', 'infection not below the skin'),
    systemic: (is) => `signs in the whole body: ${is}`,
    ulcerCause: (is) => `cause of the sore: ${is}`,
    ulcerSizeMm: (is) => `sore ${is} mm across`,
    probeToBone: yesNo('bone felt in the sore', 'no bone felt in the sore'),
    charcotSuspected: yesNo('hot swollen foot, bones may be giving way', 'no hot swollen foot'),
    deficitKnown: 'weakness or numbness is old and unchanged',
    monofilament: (is) => `10 g thread ${is}`,
    stretchPain: yesNo(
      'pain when someone moves toes or fingers',
      'no pain when someone moves toes or fingers',
    ),
    painOutOfProportion: yesNo('far more pain than expected', 'no more pain than expected'),
    reperfused: 'blood flow restored recently',
    injurySigns: (is) => `signs of an injured artery: ${is}`,
    pigment: yesNo('brown patches', 'no brown patches'),
    thrombosisSigns: (is) => `signs of a clot in the deep veins: ${is}`,
    venousDoppler: (is) => `blood flow in the veins ${is}`,
    lymphoedema: {
      none: 'no swelling from blocked lymph, no lymph glands removed',
      'nodes-removed': 'lymph glands of this limb removed or irradiated',
      present: 'swelling from blocked lymph',
    },
    vertebralFlow: (is) => `blood flow in the neck artery along the spine: ${is}`,
    lymphNodes: (is) => `lymph glands ${is}`,
  },
  refillSaid: {
    short: () => 'up to 2 s. Compare with the other limb; it says little about narrowed arteries.',
    'over-traditional': (limit) =>
      `over 2 s, as in 95% of healthy people of this age (up to ${limit} s). Compare with the other limb; it says little about narrowed arteries.`,
    slow: (limit) =>
      `over 2 s and longer than in 95% of healthy people of this age (${limit} s). Compare with the other limb.`,
  },
};
