import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'incompressible',
  title: { en: 'A pressure too good to be true', de: 'Ein Druck, zu schön um wahr zu sein' },
  story: {
    en: 'Woman of 72, diabetic for thirty years. An ulcer on the right second toe; the ankle pressure was called excellent elsewhere.',
    de: 'Frau, 72 Jahre, seit dreißig Jahren Diabetes. Ein Ulkus an der zweiten Zehe rechts; der Knöcheldruck galt anderswo als ausgezeichnet.',
  },
  minutes: 20,
  limbs: ['leg'],
  patient: {
    age: 72,
    incompressible: { right: 300, left: 120 },
    lesions: [
      { piece: 'right anterior-tibial', extent: 'whole' },
      { piece: 'right posterior-tibial', extent: 'whole' },
    ],
  },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    context: { diabetes: true },
    inspection: {
      leg: {
        right: {
          ulcer: 'shallow',
          ulcerPlace: 'digits',
          digits: { second: 'ulcer' },
          monofilament: 'not-felt',
          gangrene: 'none',
          infection: [],
        },
        left: { ulcer: 'none', monofilament: 'not-felt' },
      },
    },
  },
  steps: {
    inspection: {
      notes: {
        en: 'She feels no filament: pain will not warn her. Look between all toes and under both heels.',
        de: 'Sie spürt das Filament nicht: Schmerz wird sie nicht warnen. Zwischen alle Zehen und unter beide Fersen schauen.',
      },
    },
    pressures: {
      question: {
        en: 'The cuff cannot close the artery at the ankle. What does that say of the foot’s blood?',
        de: 'Die Manschette schließt die Arterie am Knöchel nicht. Was sagt das über die Durchblutung des Fußes?',
      },
      notes: {
        en: 'Nothing. Calcified walls hold the cuff off, whatever flows inside. Toe arteries mostly stay soft: believe the toe.',
        de: 'Nichts. Verkalkte Wände halten der Manschette stand, was auch immer darin fließt. Zehenarterien bleiben meist weich: der Zehe glauben.',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'right leg', level: 'infrapopliteal' }],
    cause: 'atherosclerosis',
    text: {
      en: 'Two of three arteries of the right calf are occluded. The ankle cannot be compressed, so its index is void; the toe has less than 60 mmHg. Weak and absent foot pulses were right, the excellent figure was wrong. An open diabetic foot without enough blood goes to the foot team at once.',
      de: 'Zwei von drei Arterien des rechten Unterschenkels sind verschlossen. Der Knöchel lässt sich nicht komprimieren, sein Index gilt nicht; die Zehe hat weniger als 60 mmHg. Schwache und fehlende Fußpulse hatten recht, der glänzende Wert nicht. Ein offener diabetischer Fuß mit zu wenig Blut gehört sofort zum Fußteam.',
    },
  },
};
