import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'embolus-groin',
  title: { en: 'Three hours ago, in the left leg', de: 'Vor drei Stunden, im linken Bein' },
  story: {
    en: 'Woman of 74 with an irregular heartbeat. Three hours ago her left leg became painful, pale and cold from one minute to the next.',
    de: 'Frau, 74 Jahre, unregelmäßiger Herzschlag. Vor drei Stunden wurde das linke Bein von einer Minute zur anderen schmerzhaft, blass und kalt.',
  },
  minutes: 15,
  limbs: ['leg'],
  patient: {
    age: 74,
    rhythm: 'atrial-fibrillation',
    collaterals: 'fresh',
    lesions: [{ piece: 'left common-femoral', extent: 'whole' }],
  },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    inspection: {
      leg: { left: { colour: 'pale', temperature: 'cold', temperatureLevel: 'mid-thigh' } },
    },
  },
  without: ['test elevation', 'test colour-return', 'test venous-filling'],
  steps: {
    history: {
      question: {
        en: 'Clot grown in place or clot carried? Which words of the story decide?',
        de: 'Gerinnsel vor Ort oder verschleppt? Welche Worte der Geschichte entscheiden?',
      },
      notes: {
        en: 'Nothing may delay the call to the vascular team; the rest of the sequence is done while it is on its way.',
        de: 'Nichts darf den Anruf beim Gefäßteam verzögern; der Rest der Untersuchung geschieht, während es unterwegs ist.',
      },
    },
    'pulse right femoral': {
      notes: {
        en: 'The other leg is the best clue to the state before: full pulses there speak for an embolus.',
        de: 'Das andere Bein verrät am besten den Zustand davor: Volle Pulse dort sprechen für eine Embolie.',
      },
    },
    pressures: {
      notes: {
        en: 'No Doppler signal at the ankle. With feeling and movement it tells how long there is.',
        de: 'Kein Dopplersignal am Knöchel. Zusammen mit Gefühl und Bewegung sagt es, wie viel Zeit bleibt.',
      },
    },
  },
  answer: {
    lesions: [{ limb: 'left leg', level: 'femoro-popliteal' }],
    cause: 'embolism',
    text: {
      en: 'An embolus fills the left common femoral artery. Sudden onset, irregular heart, normal pulses in the other leg and none in this one: an emergency by the acute-limb pathway.',
      de: 'Ein Embolus füllt die linke A. femoralis communis. Plötzlicher Beginn, unregelmäßiger Puls, normale Pulse am anderen Bein und keine an diesem: ein Notfall nach dem Akutpfad.',
    },
    differs: {
      en: 'The reading names the iliac artery first. No finger can tell the two apart, for the femoral pulse is lost in both; imaging or the surgeon does.',
      de: 'Die Auswertung nennt zuerst die Beckenarterie. Kein Finger trennt beides, denn der Leistenpuls fehlt so oder so; Bildgebung oder Operation klärt es.',
    },
  },
};
