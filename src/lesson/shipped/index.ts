import { type Lesson, type LessonInput, lessonOf } from '../lesson.js';

/** The lessons that ship, each fetched by itself. All patients are invented. */
const SHIPPED = {
  'superficial-femoral': () => import('./superficial-femoral.js'),
  aortoiliac: () => import('./aortoiliac.js'),
  infrapopliteal: () => import('./infrapopliteal.js'),
  'several-levels': () => import('./several-levels.js'),
  'absent-dorsalis-pedis': () => import('./absent-dorsalis-pedis.js'),
  incompressible: () => import('./incompressible.js'),
  'venous-ulcer': () => import('./venous-ulcer.js'),
  'embolus-groin': () => import('./embolus-groin.js'),
  'popliteal-aneurysm': () => import('./popliteal-aneurysm.js'),
  'saddle-embolus': () => import('./saddle-embolus.js'),
  'brachial-embolus': () => import('./brachial-embolus.js'),
  'radial-catheter': () => import('./radial-catheter.js'),
  'subclavian-steal': () => import('./subclavian-steal.js'),
  'thoracic-outlet': () => import('./thoracic-outlet.js'),
  buerger: () => import('./buerger.js'),
  coarctation: () => import('./coarctation.js'),
  dissection: () => import('./dissection.js'),
  shock: () => import('./shock.js'),
} satisfies Readonly<Record<string, () => Promise<{ readonly lesson: LessonInput }>>>;

/** Id of a lesson that ships. */
export type ShippedLessonId = keyof typeof SHIPPED;
/** The lessons that ship, in the order in which they are best taught. */
export const SHIPPED_LESSON_IDS = Object.keys(SHIPPED) as readonly ShippedLessonId[];

/** A lesson that ships as it is written down, for one of one's own that starts from it. Rejects where its code cannot be had. */
export async function shippedLessonInput(id: ShippedLessonId): Promise<LessonInput> {
  return (await SHIPPED[id]()).lesson;
}

/** Fetches a lesson that ships. Rejects where its code cannot be had. */
export async function shippedLesson(id: ShippedLessonId): Promise<Lesson> {
  return lessonOf(await shippedLessonInput(id));
}
