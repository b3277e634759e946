import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'superficial-femoral',
  title: { en: 'The calf that stops at the corner', de: 'Die Wade, die an der Ecke streikt' },
  story: {
    en: 'Smoker of 66. For two years the left calf has cramped after 200 metres and settles within minutes of standing still.',
    de: 'Raucher, 66 Jahre. Seit zwei Jahren krampft die linke Wade nach 200 Metern und erholt sich im Stehen binnen Minuten.',
  },
  minutes: 20,
  limbs: ['leg'],
  patient: { age: 66, lesions: [{ piece: 'left superficial-femoral', extent: 'whole' }] },
  steps: {
    'pulse left femoral': {
      question: {
        en: 'What does a normal femoral pulse tell of everything above it?',
        de: 'Was sagt ein normaler Leistenpuls über alles, was oberhalb liegt?',
      },
      notes: {
        en: 'Let the room say it first: inflow is good enough at rest. A stenosis that matters only on walking is not excluded.',
        de: 'Den Saal zuerst antworten lassen: Der Einstrom reicht in Ruhe. Eine Stenose, die erst beim Gehen zählt, ist nicht ausgeschlossen.',
      },
    },
    'pulse left popliteal': {
      notes: {
        en: 'Feel again with both hands before calling it absent, and compare with the right.',
        de: 'Vor dem Urteil „fehlt“ noch einmal mit beiden Händen tasten und mit rechts vergleichen.',
      },
    },
    'listen adductor-canal': {
      question: {
        en: 'The artery is silent here. Is it healthy, or is nothing flowing?',
        de: 'Hier ist die Arterie stumm. Ist sie gesund, oder fließt nichts?',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'left leg', level: 'femoro-popliteal' }],
    cause: 'atherosclerosis',
    text: {
      en: 'The left superficial femoral artery is occluded. Femoral present, everything below absent: the stretch between the two is to blame, and collaterals of the deep femoral keep the leg alive.',
      de: 'Die linke A. femoralis superficialis ist verschlossen. Leistenpuls da, alles darunter fehlt: Die Strecke dazwischen ist schuld, und Kollateralen der A. profunda femoris erhalten das Bein.',
    },
  },
};
