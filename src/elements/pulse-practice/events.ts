/** Fires when a patient was chosen, something was examined, or the answer was given. */
export class PracticeChangeEvent extends Event {
  static readonly type = 'practice-change';
  /**
   * @param code the patient
   * @param answered whether the answer was given
   */
  constructor(
    readonly code: string,
    readonly answered: boolean,
  ) {
    super(PracticeChangeEvent.type);
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'practice-change': PracticeChangeEvent;
  }
}
