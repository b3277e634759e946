import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'radial-catheter',
  title: { en: 'After the heart catheter', de: 'Nach dem Herzkatheter' },
  story: {
    en: 'Man of 63, a catheter of the heart through the right wrist a month ago. The hand is well; a nurse no longer finds the pulse.',
    de: 'Mann, 63 Jahre, vor einem Monat Herzkatheter über das rechte Handgelenk. Der Hand geht es gut; eine Pflegerin findet den Puls nicht mehr.',
  },
  minutes: 15,
  limbs: ['arm'],
  patient: { age: 63, lesions: [{ piece: 'right radial', extent: 'whole' }] },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    inspection: {
      arm: {
        right: {
          colour: 'normal',
          temperature: 'warm',
          refill: 2,
          movement: 'normal',
          sensation: 'normal',
          gangrene: 'none',
        },
      },
    },
  },
  steps: {
    'pulse right radial': {
      question: {
        en: 'Absent at the wrist, and a warm pink hand. Which artery keeps it so, and how do you prove it?',
        de: 'Am Handgelenk kein Puls, die Hand warm und rosig. Welche Arterie versorgt sie, und wie beweisen Sie es?',
      },
    },
    'test hand-arch': {
      notes: {
        en: 'The ulnar alone fills the palm at once; the radial alone takes long. The arch joins both, so no finger is in danger now.',
        de: 'Die Ulnaris allein füllt die Hand sofort; die Radialis allein braucht lange. Der Bogen verbindet beide, kein Finger ist jetzt in Gefahr.',
      },
    },
    delays: {
      notes: {
        en: 'There is no radial pulse to compare with. Not comparable is not the same as late.',
        de: 'Zum Vergleich fehlt der Radialispuls. Nicht vergleichbar ist nicht dasselbe wie verspätet.',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'right arm', level: 'forearm-hand' }],
    cause: 'injury',
    text: {
      en: 'The right radial artery is occluded where the catheter went in, and the ulnar feeds the whole hand: finger pressures differ by less than 15 mmHg. It is written down, so that nobody takes or punctures the ulnar artery of this arm.',
      de: 'Die rechte A. radialis ist dort verschlossen, wo der Katheter eintrat, und die Ulnaris versorgt die ganze Hand: Die Fingerdrücke unterscheiden sich um weniger als 15 mmHg. Das wird festgehalten, damit niemand die A. ulnaris dieses Arms entnimmt oder punktiert.',
    },
  },
};
