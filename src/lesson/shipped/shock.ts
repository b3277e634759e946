import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'shock',
  title: { en: 'Weak everywhere', de: 'Überall schwach' },
  story: {
    en: 'Man of 58, grey and sweating, brought in after a fall from a ladder. The ambulance reports “no pulses in the feet”.',
    de: 'Mann, 58 Jahre, grau und schweißig, nach einem Sturz von der Leiter. Der Rettungsdienst meldet „keine Fußpulse“.',
  },
  minutes: 10,
  limbs: ['leg', 'arm'],
  patient: { age: 58, state: 'shock', meanPressure: 42, heartRate: 130 },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    circulation: { shock: true, systolic: 48, heartRate: 130 },
    inspection: {
      leg: {
        right: { colour: 'mottled', temperature: 'cold', temperatureLevel: 'knee', refill: 5 },
        left: { colour: 'mottled', temperature: 'cold', temperatureLevel: 'knee', refill: 5 },
      },
      arm: {
        right: { colour: 'pale', temperature: 'cold', temperatureLevel: 'mid-forearm', refill: 5 },
        left: { colour: 'pale', temperature: 'cold', temperatureLevel: 'mid-forearm', refill: 5 },
      },
    },
  },
  without: ['test elevation', 'test colour-return', 'test venous-filling', 'test hand-arch'],
  steps: {
    inspection: {
      question: {
        en: 'Cold legs and cold hands, all alike. One disease of four limbs, or of none?',
        de: 'Kalte Beine, kalte Hände, alle gleich. Eine Krankheit von vier Extremitäten, oder von keiner?',
      },
    },
    'pulse right brachial': {
      notes: {
        en: 'Ask for an arm before anyone looks for an occlusion in the leg. What is weak everywhere has one cause near the heart.',
        de: 'Zuerst einen Arm prüfen, bevor jemand im Bein einen Verschluss sucht. Was überall schwach ist, hat eine Ursache nahe am Herzen.',
      },
    },
    'pulse left dorsalis-pedis': {
      notes: {
        en: 'Weak here, too, but there. Cold feet and a fast heart hide such a pulse from a hurried hand.',
        de: 'Auch hier schwach, aber da. Kalte Füße und ein schnelles Herz verbergen einen solchen Puls vor eiliger Hand.',
      },
    },
    pressures: {
      notes: {
        en: 'The ankle index is normal, and worth nothing: it divides one low pressure by another.',
        de: 'Der Knöchel-Arm-Index ist normal und nichts wert: Er teilt einen niedrigen Druck durch einen anderen.',
      },
    },
  },
  answer: {
    lesions: [],
    cause: 'low-flow',
    text: {
      en: 'Every pulse is weak on both sides, arms and legs alike, and the arm has less than 60 mmHg: low output, no occlusion. The circulation comes first; limbs are examined again when it is restored.',
      de: 'Jeder Puls ist schwach, beidseits, an Armen wie Beinen, und der Arm hat weniger als 60 mmHg: zu wenig Auswurf, kein Verschluss. Zuerst der Kreislauf; die Extremitäten werden noch einmal untersucht, wenn er wieder steht.',
    },
  },
};
