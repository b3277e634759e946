import type { LessonInput } from '../lesson.js';

/** An invented patient. How wide an artery is does not come from physics: both popliteal swellings are the author's. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'popliteal-aneurysm',
  title: { en: 'The other knee tells', de: 'Das andere Knie verrät es' },
  story: {
    en: 'Man of 68 who never smoked. Since this morning the right calf has been painful and the foot cold; before that he walked for hours.',
    de: 'Mann, 68 Jahre, nie geraucht. Seit heute Morgen schmerzt die rechte Wade und der Fuß ist kalt; davor lief er stundenlang.',
  },
  minutes: 15,
  limbs: ['leg'],
  patient: {
    age: 68,
    collaterals: 'fresh',
    lesions: [{ piece: 'right popliteal', extent: 'whole' }],
  },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    pulses: { popliteal: { left: { grade: 'bounding', expansile: true } } },
    inspection: {
      leg: {
        right: {
          colour: 'pale',
          temperature: 'cold',
          temperatureLevel: 'mid-calf',
          movement: 'normal',
          sensation: 'digits',
        },
      },
    },
  },
  without: ['test elevation', 'test colour-return', 'test venous-filling'],
  steps: {
    'pulse right popliteal': {
      question: {
        en: 'The femoral is normal, the popliteal gone. Where do you lay your fingers next?',
        de: 'Die Femoralis ist normal, die Poplitea fehlt. Wohin legen Sie die Finger als Nächstes?',
      },
      notes: {
        en: 'On the other knee. An aneurysm behind the knee is often there on both sides, and the well side can still be felt.',
        de: 'Auf das andere Knie. Ein Aneurysma in der Kniekehle findet sich oft beidseits, und auf der gesunden Seite ist es noch zu tasten.',
      },
    },
    'pulse left popliteal': {
      notes: {
        en: 'Too easy to feel, and it pushes the fingers apart. Look at the abdominal aorta again before you go on.',
        de: 'Zu leicht zu tasten, und er drängt die Finger auseinander. Vor dem Weitergehen noch einmal zur Bauchaorta.',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'right leg', level: 'femoro-popliteal' }],
    cause: 'aneurysm',
    text: {
      en: 'The right popliteal artery is occluded, and the left one is expansile: most likely an aneurysm on both sides, the right one full of clot. An emergency by the acute-limb pathway; the left knee needs imaging too.',
      de: 'Die rechte A. poplitea ist verschlossen, die linke dehnt sich mit jedem Schlag: am ehesten Aneurysmen beidseits, rechts voller Gerinnsel. Ein Notfall nach dem Akutpfad; auch das linke Knie braucht Bildgebung.',
    },
  },
};
