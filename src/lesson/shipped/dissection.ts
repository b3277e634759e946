import type { LessonInput } from '../lesson.js';

/** An invented patient. The torn wall is shown by what it does: a narrowed subclavian and a closed iliac artery. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'dissection',
  title: { en: 'A pain that tore downward', de: 'Ein Schmerz, der nach unten riss' },
  story: {
    en: 'Man of 55 with high blood pressure. Two hours ago a tearing pain ran from his chest into his back; now his right leg is numb.',
    de: 'Mann, 55 Jahre, Bluthochdruck. Vor zwei Stunden zog ein reißender Schmerz von der Brust in den Rücken; jetzt ist das rechte Bein taub.',
  },
  minutes: 15,
  limbs: ['leg', 'arm'],
  patient: {
    age: 55,
    meanPressure: 115,
    collaterals: 'fresh',
    lesions: [
      { piece: 'left subclavian', narrowing: 85 },
      { piece: 'right common-iliac', extent: 'short' },
    ],
  },
  examination: {
    format: 'pulse-map/1.1',
    scale: '0-3',
    history: { elsewhere: ['sudden-chest-or-back-pain'], risks: ['hypertension'] },
    inspection: {
      leg: {
        right: {
          colour: 'pale',
          temperature: 'cold',
          temperatureLevel: 'groin',
          movement: 'weak',
          sensation: 'beyond-digits',
        },
      },
    },
  },
  without: ['test elevation', 'test colour-return', 'test venous-filling', 'test hand-arch'],
  steps: {
    history: {
      question: {
        en: 'A cold leg, and a pain in the back before it. Which artery do you think of before the leg’s own?',
        de: 'Ein kaltes Bein, und davor ein Schmerz im Rücken. An welches Gefäß denken Sie vor denen des Beins?',
      },
      notes: {
        en: 'The aorta. Call for help now, by the pathway for acute aortic pain; the sequence goes on only while help is coming.',
        de: 'An die Aorta. Jetzt Hilfe rufen, nach dem Pfad für akuten Aortenschmerz; weiter untersucht wird nur, während sie kommt.',
      },
    },
    'pulse left radial': {
      notes: {
        en: 'An arm and the opposite leg: no single artery of a limb explains both. What they share is the aorta.',
        de: 'Ein Arm und das Bein der anderen Seite: Keine einzelne Extremitätenarterie erklärt beides. Gemeinsam ist ihnen die Aorta.',
      },
    },
    pressures: {
      question: {
        en: 'Which arm do you believe, and which pressure will be treated?',
        de: 'Welchem Arm glauben Sie, und welcher Druck wird behandelt?',
      },
      notes: {
        en: 'The higher one. The left arm reads low because its artery is narrowed, not because the patient is.',
        de: 'Dem höheren. Links ist der Wert niedrig, weil die Arterie verengt ist; der Druck im Kreislauf ist es nicht.',
      },
    },
  },
  answer: {
    lesions: [
      { limb: 'right leg', level: 'aorto-iliac' },
      { limb: 'left arm', level: 'arm-inflow' },
    ],
    cause: 'dissection',
    text: {
      en: 'The left arm has 40 mmHg less than the right and the right leg has no pulse at all, after sudden pain in chest and back: suspect a dissection of the aorta. Imaging of the aorta comes before anything is done to the leg.',
      de: 'Der linke Arm hat 40 mmHg weniger als der rechte, das rechte Bein keinen Puls, nach plötzlichem Schmerz in Brust und Rücken: Verdacht auf Aortendissektion. Die Bildgebung der Aorta kommt vor jedem Eingriff am Bein.',
    },
  },
};
