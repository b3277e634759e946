import type { Lesson } from '../../lesson/index.js';

/** Fires when the text of a lesson changes. */
export class LessonEditEvent extends Event {
  static readonly type = 'lesson-edit';
  /**
   * @param text as it stands
   * @param lesson what it says; missing while it is no lesson
   */
  constructor(
    readonly text: string,
    readonly lesson: Lesson | undefined,
  ) {
    super(LessonEditEvent.type);
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'lesson-edit': LessonEditEvent;
  }
}
