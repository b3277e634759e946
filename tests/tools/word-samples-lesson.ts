import { LIMBS, limbKey, LISTENING_PLACES, PULSE_PLACES } from '../../src/anatomy/index.js';
import { SEQUENCE } from '../../src/lesson/index.js';
import type { LessonWords } from '../../src/locale/lesson.js';
import type { LessonEditorWords } from '../../src/locale/lesson-editor.js';
import { COUNTS, one, type Samples, TEXT } from './word-samples-of.js';

const LIMB_KEYS = one(LIMBS.map(limbKey));

/** Arguments for the words of a lesson. */
export const LESSON_SAMPLES: Samples<LessonWords> = {
  step: [[2, 13]],
  minutes: one([20]),
  act: one(SEQUENCE),
  how: one(SEQUENCE),
  meanings: one(SEQUENCE),
  agrees: LIMB_KEYS,
  differs: LIMB_KEYS,
  left: one([-2, 7]),
  wave: {
    slower: one([1, 4]),
    speed: one([1, 4]),
    beats: one([70]),
    arrives: one([142]),
  },
  sound: {
    doppler: one(PULSE_PLACES),
    bruit: one(LISTENING_PLACES),
  },
};

/** Arguments for the words of the editor of lessons. */
export const LESSON_EDITOR_SAMPLES: Samples<LessonEditorWords> = {
  mend: COUNTS,
  more: COUNTS,
  at: [[3, 14]],
  addTo: TEXT,
};
