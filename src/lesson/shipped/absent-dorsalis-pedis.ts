import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'absent-dorsalis-pedis',
  title: { en: 'A pulse that never was', de: 'Ein Puls, den es nie gab' },
  story: {
    en: 'Runner of 35, well. A check before a job found no pulse on the back of the left foot.',
    de: 'Läuferin, 35 Jahre, gesund. Bei einer Einstellungsuntersuchung fehlte links der Puls auf dem Fußrücken.',
  },
  minutes: 15,
  limbs: ['leg'],
  patient: { age: 35, variants: [{ variant: 'no-dorsalis-pedis', side: 'left' }] },
  steps: {
    'pulse left dorsalis-pedis': {
      question: {
        en: 'Absent. Which three findings tell you whether that matters?',
        de: 'Fehlt. Welche drei Befunde sagen, ob das etwas bedeutet?',
      },
      notes: {
        en: 'The posterior tibial beside it, the elevation, the pressure at the ankle. All normal: nothing is missing but an artery.',
        de: 'Die Tibialis posterior daneben, die Elevation, der Druck am Knöchel. Alles normal: Es fehlt nur eine Arterie.',
      },
    },
  },
  answer: {
    lesions: [],
    cause: 'none',
    text: {
      en: 'The left dorsalis pedis has been missing from birth. One absent foot pulse with everything else normal is no disease of the arteries.',
      de: 'Die linke A. dorsalis pedis fehlt von Geburt an. Ein einzelner fehlender Fußpuls bei sonst normalem Befund ist keine Krankheit der Arterien.',
    },
  },
};
