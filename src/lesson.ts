/** Lessons: files, their steps, what each step finds, and the lessons that ship. No DOM; loaded by nothing but the presenter. */
export * from './lesson/index.js';
