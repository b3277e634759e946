import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'infrapopliteal',
  title: { en: 'A good knee, a cold foot', de: 'Gutes Knie, kalter Fuß' },
  story: {
    en: 'Man of 71 with diabetes for twenty years. The right great toe has not healed since a nail was cut six weeks ago.',
    de: 'Mann, 71 Jahre, seit zwanzig Jahren Diabetes. Die rechte Großzehe heilt seit einem Nagelschnitt vor sechs Wochen nicht.',
  },
  minutes: 20,
  limbs: ['leg'],
  patient: {
    age: 71,
    lesions: [
      { piece: 'right anterior-tibial', extent: 'whole' },
      { piece: 'right posterior-tibial', extent: 'whole' },
      { piece: 'right peroneal', extent: 'whole' },
    ],
  },
  steps: {
    'pulse right popliteal': {
      question: {
        en: 'The popliteal is normal. Can the foot still be without blood?',
        de: 'Der Kniekehlenpuls ist normal. Kann dem Fuß trotzdem Blut fehlen?',
      },
    },
    'pulse right dorsalis-pedis': {
      notes: {
        en: 'One absent foot pulse alone may be there from birth. Two on the same side are disease until shown otherwise.',
        de: 'Ein einzelner fehlender Fußpuls kann angeboren sein. Zwei auf derselben Seite gelten als Krankheit, bis das Gegenteil gezeigt ist.',
      },
    },
    pressures: {
      notes: {
        en: 'Ask why the toe pressure matters more than the ankle in diabetes: the ankle arteries may be too stiff for the cuff.',
        de: 'Warum zählt bei Diabetes der Zehendruck mehr als der Knöcheldruck? Die Knöchelarterien können für die Manschette zu starr sein.',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'right leg', level: 'infrapopliteal' }],
    cause: 'atherosclerosis',
    text: {
      en: 'All three arteries of the right calf are occluded. Popliteal present, both foot pulses absent: the disease lies below the knee, as it often does in diabetes.',
      de: 'Alle drei Arterien des rechten Unterschenkels sind verschlossen. Kniekehlenpuls da, beide Fußpulse fehlen: Die Krankheit sitzt unterhalb des Knies, wie oft bei Diabetes.',
    },
  },
};
