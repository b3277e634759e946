/** A hidden patient to practise on: acts, findings, answers, marks. No DOM; loaded by nothing but the element that shows it. */
export * from './practice/index.js';
