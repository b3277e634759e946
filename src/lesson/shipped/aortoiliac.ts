import type { LessonInput } from '../lesson.js';

/** An invented patient. */
export const lesson: LessonInput = {
  format: 'pulse-map-lesson/1',
  id: 'aortoiliac',
  title: { en: 'Both buttocks ache', de: 'Beide Gesäßhälften schmerzen' },
  story: {
    en: 'Woman of 62. Buttocks and thighs tire on both sides after one flight of stairs; her back has been treated for a year.',
    de: 'Frau, 62 Jahre. Gesäß und Oberschenkel ermüden beidseits nach einem Stockwerk; seit einem Jahr wird der Rücken behandelt.',
  },
  minutes: 20,
  limbs: ['leg'],
  patient: {
    age: 62,
    lesions: [
      { piece: 'right common-iliac', extent: 'whole' },
      { piece: 'left common-iliac', extent: 'whole' },
    ],
  },
  steps: {
    history: {
      question: {
        en: 'Back or arteries? Which one question parts them?',
        de: 'Rücken oder Arterien? Welche eine Frage trennt beide?',
      },
      notes: {
        en: 'Standing still relieves arterial claudication; a narrow spinal canal wants sitting or bending forward.',
        de: 'Stehenbleiben lindert die arterielle Claudicatio; ein enger Spinalkanal will Sitzen oder Vorbeugen.',
      },
    },
    'pulse left femoral': {
      notes: {
        en: 'Both femorals are gone and nothing differs between the sides. The habit of comparing sides fails here: compare with the arm.',
        de: 'Beide Leistenpulse fehlen, die Seiten gleichen sich. Der Seitenvergleich versagt hier: mit dem Arm vergleichen.',
      },
    },
  },
  answer: {
    lesions: [
      { limb: 'right leg', level: 'aorto-iliac' },
      { limb: 'left leg', level: 'aorto-iliac' },
    ],
    cause: 'atherosclerosis',
    text: {
      en: 'Both common iliac arteries are occluded at their origin. Two absent femoral pulses under a pulsating aorta point to the aortic bifurcation; the fingers cannot tell it from both iliacs.',
      de: 'Beide Aa. iliacae communes sind am Abgang verschlossen. Zwei fehlende Leistenpulse unter pulsierender Aorta weisen auf die Aortenbifurkation; von beiden Iliacae können die Finger sie nicht trennen.',
    },
  },
};
