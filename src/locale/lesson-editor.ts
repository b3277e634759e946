/** The words of the editor of lessons. */
export interface LessonEditorWords {
  readonly title: string;
  readonly text: string;
  readonly startFrom: string;
  readonly choose: string;
  readonly empty: string;
  readonly open: string;
  readonly save: string;
  readonly undo: string;
  readonly redo: string;
  readonly preview: string;
  readonly ready: string;
  /** The text is no lesson yet. */
  mend(count: number): string;
  /** Beyond those listed. */
  more(count: number): string;
  at(line: number, column: number): string;
  /** The slide shows the lesson as it was before the faults. */
  readonly stale: string;
  readonly nothing: string;
  readonly hint: string;
  readonly notKept: string;
  readonly notRead: string;
  /** The answer and the reading differ, and the lesson does not say so. */
  readonly unsaid: string;
  /** The button that adds a question and notes to the step that is shown. */
  addTo(step: string): string;
  /** Stands in a text until the author has written it. */
  readonly blank: string;
  /** Texts of a lesson that is begun. */
  readonly begun: { readonly title: string; readonly story: string; readonly answer: string };
}
