import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'coarctation',
  title: { en: 'Strong arms, late groins', de: 'Starke Arme, späte Leisten' },
  story: {
    en: 'Student of 24 sent for high blood pressure. His legs tire early on the stairs; he never gave it a thought.',
    de: 'Student, 24 Jahre, wegen hohen Blutdrucks geschickt. Auf Treppen ermüden die Beine früh; gedacht hat er sich nie etwas dabei.',
  },
  minutes: 20,
  limbs: ['leg', 'arm'],
  patient: { age: 24, lesions: [{ piece: 'midline thoracic-aorta', narrowing: 75 }] },
  steps: {
    delays: {
      question: {
        en: 'A radial and a femoral under two hands: which beats first?',
        de: 'Radialis und Femoralis unter zwei Händen: Welche schlägt zuerst?',
      },
      notes: {
        en: 'They should beat as one. This act takes ten seconds and belongs to every young person with high blood pressure.',
        de: 'Sie sollen zugleich schlagen. Das dauert zehn Sekunden und gehört zu jedem jungen Menschen mit hohem Blutdruck.',
      },
    },
  },
  answer: {
    lesions: [
      { limb: 'right leg', level: 'central' },
      { limb: 'left leg', level: 'central' },
    ],
    cause: 'coarctation',
    text: {
      en: 'Coarctation: the thoracic aorta is narrowed beyond the left subclavian. Arm pulses bound, leg pulses are weak and late on both sides, and the ankles have less pressure than the arms.',
      de: 'Isthmusstenose: Die Brustaorta ist jenseits der linken A. subclavia verengt. Die Armpulse sind kräftig, die Beinpulse beidseits schwach und spät, und am Knöchel ist der Druck kleiner als am Arm.',
    },
  },
};
