import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'saddle-embolus',
  title: { en: 'Both legs at once', de: 'Beide Beine auf einmal' },
  story: {
    en: 'Woman of 77. An hour ago both legs gave way; they are cold and marbled. On the ward she had been moved to the stroke list.',
    de: 'Frau, 77 Jahre. Vor einer Stunde versagten beide Beine; sie sind kalt und marmoriert. Auf Station galt sie schon als Schlaganfall.',
  },
  minutes: 15,
  limbs: ['leg'],
  patient: {
    age: 77,
    rhythm: 'atrial-fibrillation',
    collaterals: 'fresh',
    lesions: [
      { piece: 'midline infrarenal-aorta distal', extent: 'short' },
      { piece: 'right common-iliac', extent: 'short' },
      { piece: 'left common-iliac', extent: 'short' },
    ],
  },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    inspection: {
      leg: {
        right: {
          colour: 'mottled',
          temperature: 'cold',
          temperatureLevel: 'groin',
          movement: 'weak',
          sensation: 'beyond-digits',
        },
        left: {
          colour: 'mottled',
          temperature: 'cold',
          temperatureLevel: 'groin',
          movement: 'weak',
          sensation: 'beyond-digits',
        },
      },
    },
  },
  without: ['test elevation', 'test colour-return', 'test venous-filling'],
  steps: {
    inspection: {
      question: {
        en: 'Two weak legs from one moment to the next. Nerves or arteries? Which finger tells in five seconds?',
        de: 'Zwei schwache Beine von einem Augenblick zum anderen. Nerven oder Arterien? Welcher Finger sagt es in fünf Sekunden?',
      },
      notes: {
        en: 'One on each groin. Paralysed and pulseless is the artery; paralysed and warm is the spinal cord or the brain.',
        de: 'Je einer in jeder Leiste. Gelähmt und pulslos ist die Arterie; gelähmt und warm ist Rückenmark oder Gehirn.',
      },
    },
    'pulse left femoral': {
      notes: {
        en: 'There is no well side to compare with. Both gone at once under a beating aorta: the bifurcation.',
        de: 'Eine gesunde Seite zum Vergleichen fehlt. Beide auf einmal weg, unter schlagender Aorta: die Bifurkation.',
      },
    },
  },
  answer: {
    lesions: [
      { limb: 'right leg', level: 'aorto-iliac' },
      { limb: 'left leg', level: 'aorto-iliac' },
    ],
    cause: 'embolism',
    text: {
      en: 'An embolus rides on the aortic bifurcation and closes both common iliac arteries. Sudden, both legs, no femoral pulse on either side, an irregular heart: an emergency for life and both limbs, by the acute-limb pathway.',
      de: 'Ein Embolus reitet auf der Aortenbifurkation und verschließt beide Aa. iliacae communes. Plötzlich, beide Beine, beidseits kein Leistenpuls, unregelmäßiges Herz: ein Notfall für Leben und beide Beine, nach dem Akutpfad.',
    },
  },
};
