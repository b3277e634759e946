/** What can be told as the cause of what is wrong with a patient. */
export const LESSON_CAUSES = [
  'atherosclerosis',
  /** A clot grown in place. */
  'thrombosis',
  /** A clot carried there. */
  'embolism',
  'aneurysm',
  'dissection',
  /** Pressed from outside in some position: thoracic outlet, popliteal entrapment. */
  'entrapment',
  /** An injury, a puncture or a catheter. */
  'injury',
  'small-artery',
  'large-vessel',
  'coarctation',
  'low-flow',
  /** Cold, or arteries in spasm. */
  'cold',
  /** Nothing of the arteries. */
  'none',
] as const;
export type LessonCause = (typeof LESSON_CAUSES)[number];
