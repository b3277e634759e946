import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'several-levels',
  title: { en: 'One leg, two obstacles', de: 'Ein Bein, zwei Hindernisse' },
  story: {
    en: 'Man of 70 whose left leg gives up after 50 metres. At night he hangs it out of bed.',
    de: 'Mann, 70 Jahre, dessen linkes Bein nach 50 Metern versagt. Nachts lässt er es aus dem Bett hängen.',
  },
  minutes: 20,
  limbs: ['leg'],
  patient: {
    age: 70,
    lesions: [
      { piece: 'left external-iliac', narrowing: 75 },
      { piece: 'left superficial-femoral', extent: 'whole' },
    ],
  },
  without: ['test elevation', 'test colour-return', 'test venous-filling'],
  steps: {
    'pulse left femoral': {
      question: {
        en: 'Weak, not absent. Where do you put the stethoscope next?',
        de: 'Schwach, nicht fehlend. Wohin kommt als Nächstes das Stethoskop?',
      },
    },
    'listen iliac': {
      notes: {
        en: 'The weak femoral with a bruit above it is the second obstacle; the absent popliteal alone would hide it.',
        de: 'Der schwache Leistenpuls mit Geräusch darüber ist das zweite Hindernis; der fehlende Kniekehlenpuls allein verdeckte es.',
      },
    },
  },
  answer: {
    lesions: [
      { limb: 'left leg', level: 'aorto-iliac' },
      { limb: 'left leg', level: 'femoro-popliteal' },
    ],
    cause: 'atherosclerosis',
    text: {
      en: 'A tight stenosis of the left external iliac artery and an occlusion of the superficial femoral. Two levels together starve the foot where one alone would not.',
      de: 'Eine hochgradige Stenose der linken A. iliaca externa und ein Verschluss der A. femoralis superficialis. Zwei Etagen zusammen lassen den Fuß hungern, wo eine allein es nicht täte.',
    },
  },
};
