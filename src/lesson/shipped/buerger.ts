import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'buerger',
  title: { en: 'Thirty-four, and both feet', de: 'Vierunddreißig, und beide Füße' },
  story: {
    en: 'Man of 34 who smokes two packets a day. His insteps hurt on walking, a toe will not heal, and his right fingers turn white in the cold.',
    de: 'Mann, 34 Jahre, zwei Schachteln am Tag. Beim Gehen schmerzt der Spann, eine Zehe heilt nicht, und in der Kälte werden die Finger rechts weiß.',
  },
  minutes: 20,
  limbs: ['leg', 'arm'],
  patient: {
    age: 34,
    lesions: [
      { piece: 'right anterior-tibial', extent: 'whole' },
      { piece: 'right posterior-tibial', extent: 'whole' },
      { piece: 'left anterior-tibial', extent: 'whole' },
      { piece: 'left posterior-tibial', extent: 'whole' },
      { piece: 'right ulnar', extent: 'whole' },
    ],
  },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    context: { smoking: 'current', diabetes: false },
    history: { leg: { left: { symptom: 'tissue-loss' } }, arm: { right: { coldFingers: true } } },
    inspection: {
      leg: {
        left: { ulcer: 'shallow', ulcerPlace: 'digits', gangrene: 'none', digits: { first: 'ulcer' } },
        right: { ulcer: 'none', gangrene: 'none' },
      },
    },
  },
  steps: {
    'pulse right popliteal': {
      question: {
        en: 'Full pulses down to both knees at thirty-four. What would speak against hardened arteries?',
        de: 'Kräftige Pulse bis zu beiden Knien, mit vierunddreißig. Was spräche gegen Arteriosklerose?',
      },
      notes: {
        en: 'The age, the places far out, an arm that takes part, and none of the usual risks but tobacco.',
        de: 'Das Alter, die Lage weit außen, ein Arm, der mitmacht, und außer Tabak keines der üblichen Risiken.',
      },
    },
    'test hand-arch': {
      question: {
        en: 'One pulse at the right wrist. Which of the two arteries feeds the hand?',
        de: 'Ein Puls am rechten Handgelenk. Welche der beiden Arterien versorgt die Hand?',
      },
      notes: {
        en: 'The radial alone: pressed on the radial the palm stays white. Do this test on every young smoker with a bad foot.',
        de: 'Nur die Radialis: Wird sie gedrückt, bleibt die Hand weiß. Diese Probe gehört zu jedem jungen Raucher mit krankem Fuß.',
      },
    },
  },
  answer: {
    lesions: [
      { limb: 'right leg', level: 'infrapopliteal' },
      { limb: 'left leg', level: 'infrapopliteal' },
      { limb: 'right arm', level: 'forearm-hand' },
    ],
    cause: 'small-artery',
    text: {
      en: 'Small arteries of both calves and of one forearm are occluded, the large ones are open. A smoker under fifty with three limbs involved and no other risk: think of Buerger’s disease. Findings suggest it, they do not prove it; giving up tobacco is the treatment that keeps limbs.',
      de: 'Kleine Arterien beider Unterschenkel und eines Unterarms sind verschlossen, die großen offen. Raucher unter fünfzig, drei Extremitäten, sonst kein Risiko: an eine Thrombangiitis obliterans denken. Die Befunde sprechen dafür, sie beweisen sie nicht; erhalten wird die Extremität vor allem durch den Verzicht auf Tabak.',
    },
  },
};
