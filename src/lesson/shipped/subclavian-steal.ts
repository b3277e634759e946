import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'subclavian-steal',
  title: { en: 'Dizzy under the ceiling', de: 'Schwindlig unter der Decke' },
  story: {
    en: 'Painter of 64. When he works overhead his left arm tires and he turns dizzy; with the arm down he is well.',
    de: 'Maler, 64 Jahre. Bei Arbeit über Kopf ermüdet der linke Arm, und ihm wird schwindlig; mit hängendem Arm geht es ihm gut.',
  },
  minutes: 20,
  limbs: ['head', 'arm'],
  patient: { age: 64, lesions: [{ piece: 'left subclavian', narrowing: 90 }] },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    history: { arm: { left: { dizzyOnUse: true } } },
  },
  steps: {
    'pulse left radial': {
      question: {
        en: 'Weaker and later than the right. What do you measure next?',
        de: 'Schwächer und später als rechts. Was messen Sie als Nächstes?',
      },
    },
    delays: {
      notes: {
        en: 'Feel both radials at the same time. A delay is easier to trust than a difference in strength.',
        de: 'Beide Radialispulse gleichzeitig tasten. Einer Verspätung ist leichter zu trauen als einem Unterschied der Stärke.',
      },
    },
    pressures: {
      notes: {
        en: 'The difference of the arms is the finding of this lesson. Measure both arms once in every patient.',
        de: 'Der Unterschied der Arme ist der Befund dieser Lektion. Bei jedem Menschen einmal an beiden Armen messen.',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'left arm', level: 'arm-inflow' }],
    cause: 'atherosclerosis',
    text: {
      en: 'The left subclavian artery is narrowed to a tenth of its width at its origin. All pulses of the arm are weak and late, its pressure is 30 mmHg lower, and at work the arm draws blood down the vertebral artery.',
      de: 'Die linke A. subclavia ist am Abgang auf ein Zehntel ihrer Weite verengt. Alle Armpulse sind schwach und spät, der Druck liegt 30 mmHg tiefer, und bei Arbeit zieht der Arm Blut rückwärts aus der A. vertebralis.',
    },
  },
};
