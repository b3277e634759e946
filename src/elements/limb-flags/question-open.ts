import type { Question } from '../../triage/index.js';

/** A person wants to answer a question that a flag asks. */
export class QuestionOpenEvent extends Event {
  constructor(
    /** Which question, and of which limb where it is about one. */
    readonly question: Question,
  ) {
    super('question-open', { bubbles: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'question-open': QuestionOpenEvent;
  }
}
