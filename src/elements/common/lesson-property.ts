import { type Lesson, stepsOf } from '../../lesson/index.js';
import { shape } from './property.js';

/** For a lesson, as `parseLesson` hands it out. */
export const LESSON = shape(
  'a lesson as parseLesson hands it out',
  (value) =>
    typeof (value as Lesson).id === 'string' &&
    typeof (value as Lesson).title === 'object' &&
    stepsOf(value as Lesson).length > 0,
);
