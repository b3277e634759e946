import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'brachial-embolus',
  title: { en: 'The hand that went white at breakfast', de: 'Die Hand, die beim Frühstück weiß wurde' },
  story: {
    en: 'Man of 70 whose right hand turned white, cold and clumsy an hour ago. His heart has been out of rhythm for years.',
    de: 'Mann, 70 Jahre, dessen rechte Hand vor einer Stunde weiß, kalt und ungeschickt wurde. Seit Jahren schlägt sein Herz unregelmäßig.',
  },
  minutes: 15,
  limbs: ['arm'],
  patient: {
    age: 70,
    rhythm: 'atrial-fibrillation',
    collaterals: 'fresh',
    lesions: [{ piece: 'right brachial', extent: 'whole' }],
  },
  without: ['test hand-arch'],
  steps: {
    'pulse right brachial': {
      question: {
        en: 'The axillary beats, the brachial does not. How urgent is this hand?',
        de: 'Die Axillaris schlägt, die Brachialis nicht. Wie dringend ist diese Hand?',
      },
      notes: {
        en: 'Ask for feeling and movement now, and call by the acute-limb pathway before going on.',
        de: 'Jetzt nach Gefühl und Bewegung fragen und vor dem Weitermachen nach dem Akutpfad anrufen.',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'right arm', level: 'axillo-brachial' }],
    cause: 'embolism',
    text: {
      en: 'An embolus fills the right brachial artery. The axillary is felt, everything beyond is absent, the onset was sudden: an emergency by the acute-limb pathway.',
      de: 'Ein Embolus füllt die rechte A. brachialis. Die Axillaris ist tastbar, alles dahinter fehlt, der Beginn war plötzlich: ein Notfall nach dem Akutpfad.',
    },
  },
};
