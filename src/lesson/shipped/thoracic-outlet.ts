import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'thoracic-outlet',
  title: { en: 'Only with the arm up', de: 'Nur mit erhobenem Arm' },
  story: {
    en: 'Violin maker of 29. When she reaches for the upper shelf the right arm goes heavy and pale within seconds; lowered, it is well again.',
    de: 'Geigenbauerin, 29 Jahre. Greift sie ins obere Regal, wird der rechte Arm binnen Sekunden schwer und blass; gesenkt ist er wieder gesund.',
  },
  minutes: 20,
  limbs: ['arm'],
  patient: {
    age: 29,
    outlet: {
      right: { hyperabduction: 96, costoclavicular: 60, scalene: 20 },
      left: { hyperabduction: 30, costoclavicular: 20, scalene: 20 },
    },
  },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    context: { armClaudication: { left: 'none' } },
    inspection: { arm: { right: { colour: 'normal', temperature: 'warm', muscle: 'normal' } } },
  },
  steps: {
    'pulse right radial': {
      question: {
        en: 'Every pulse is normal. Is the examination at its end?',
        de: 'Jeder Puls ist normal. Ist die Untersuchung damit zu Ende?',
      },
      notes: {
        en: 'At rest nothing is missing. What comes with a position must be looked for in that position.',
        de: 'In Ruhe fehlt nichts. Was mit einer Haltung kommt, muss in dieser Haltung gesucht werden.',
      },
    },
    'test hyperabduction': {
      notes: {
        en: 'The right radial is lost here. In many healthy arms it is, too: only with her own complaint in the same position does it count.',
        de: 'Hier verschwindet die rechte Radialis. Das tut sie auch an vielen gesunden Armen: Erst zusammen mit ihren Beschwerden in derselben Haltung zählt es.',
      },
    },
    'test arm-stress': {
      question: {
        en: 'Which arm stops first, and after how long?',
        de: 'Welcher Arm hört zuerst auf, und nach welcher Zeit?',
      },
    },
  },
  answer: {
    lesions: [],
    cause: 'entrapment',
    text: {
      en: 'No artery is narrowed at rest. With the right arm raised the radial pulse is lost and the arm tires within half a minute, the left one lasts the three minutes: the artery is pressed between shoulder and chest. Imaging in both positions confirms or refutes it.',
      de: 'In Ruhe ist keine Arterie verengt. Mit erhobenem rechtem Arm fehlt die Radialis, und der Arm ermüdet binnen einer halben Minute, der linke hält drei Minuten durch: Die Arterie wird zwischen Schulter und Brustkorb gedrückt. Bildgebung in beiden Haltungen bestätigt oder widerlegt das.',
    },
  },
};
