import type { LessonInput } from '../lesson.js';

/** An invented patient. The veins are the author's: physics has arteries only. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'venous-ulcer',
  title: { en: 'A wound that is not the arteries’', de: 'Eine Wunde, an der die Arterien unschuldig sind' },
  story: {
    en: 'Shop assistant of 66 on her feet all day. Above the left inner ankle a weeping wound has been open for five months.',
    de: 'Verkäuferin, 66 Jahre, den ganzen Tag auf den Beinen. Über dem linken Innenknöchel nässt seit fünf Monaten eine Wunde.',
  },
  minutes: 15,
  limbs: ['leg'],
  patient: { age: 66 },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    context: { diabetes: false },
    history: { leg: { left: { symptom: 'tissue-loss' } } },
    inspection: {
      leg: {
        left: {
          colour: 'normal',
          temperature: 'warm',
          ulcer: 'shallow',
          ulcerPlace: 'ankle',
          ulcerCause: 'venous',
          ulcerSizeMm: 45,
          gangrene: 'none',
          infection: [],
          varices: true,
          pigment: true,
          oedema: 'pitting',
          sensation: 'normal',
          thrombosisSigns: [],
        },
        right: { colour: 'normal', temperature: 'warm', ulcer: 'none', varices: true, oedema: 'none' },
      },
    },
  },
  steps: {
    inspection: {
      question: {
        en: 'Warm foot, brown skin, varicose veins. Vein or artery? What do you need before you bandage?',
        de: 'Warmer Fuß, braune Haut, Krampfadern. Vene oder Arterie? Was brauchen Sie vor dem Verband?',
      },
      notes: {
        en: 'Looks decide nothing: one leg ulcer in several has an arterial part. Pulses and an index come before every compression.',
        de: 'Der Anblick entscheidet nichts: Ein Teil der Beinulzera hat einen arteriellen Anteil. Pulse und Index kommen vor jeder Kompression.',
      },
    },
    'pulse left posterior-tibial': {
      notes: {
        en: 'Hard to feel under the swelling: press it away first, slowly, then feel.',
        de: 'Unter der Schwellung schwer zu tasten: sie zuerst langsam wegdrücken, dann tasten.',
      },
    },
  },
  answer: {
    lesions: [],
    cause: 'none',
    text: {
      en: 'All pulses are normal and the ankle has more pressure than the arm: the arteries are not to blame, and nothing found in them stands against compression. What does so otherwise, heart failure for instance, is asked before the bandage.',
      de: 'Alle Pulse sind normal, und der Knöchel hat mehr Druck als der Arm: An den Arterien liegt es nicht, und an ihnen spricht nichts gegen Kompression. Was sonst dagegen spricht, etwa eine Herzschwäche, wird vor dem Verband erfragt.',
    },
  },
};
