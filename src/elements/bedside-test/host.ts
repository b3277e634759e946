import type { TemplateResult } from 'lit';
import type { Side } from '../../anatomy/index.js';
import type { BedsideResult, BedsideTestId } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { PartMessages } from '../../locale/parts.js';
import type { WatchController } from '../limb-stopwatch/watch-controller.js';

/** The body of a test: its content, and the primary action of the large button, Space and a pedal. */
export interface Body {
  readonly template: TemplateResult;
  readonly main?: () => void;
}

export interface NumberEntry {
  readonly id: string;
  readonly label: string;
  readonly quiet?: boolean;
  readonly unit: string;
  readonly max: number;
  readonly value: number | undefined;
  readonly set: (value: number | undefined) => boolean | void;
}

/** What the element provides to the body of a test. */
export interface BedsideHost<Id extends BedsideTestId = BedsideTestId> {
  readonly test: Id;
  readonly side: Side;
  readonly editable: boolean;
  readonly words: PartMessages;
  readonly mapWords: Messages;
  /** What is recorded of a side, the shown one unless said otherwise. */
  result(side?: Side): Partial<BedsideResult<Id>>;
  /** Changes fields of a side's result; `undefined` takes one away. One undo step, however many sides. */
  patch(fields: Partial<Record<string, unknown>>, ...sides: Side[]): boolean;
  /** The limit in force for the shown side. */
  readonly limit: number;
  /** The stopwatch for a purpose; each side has its own. */
  watch(
    purpose: string,
    options?: { countdown?: number; over?: () => void; bothSides?: boolean },
  ): WatchController;
  /** Whether what stands at a path from the result of the shown side inward is not known to this version. */
  isUnknown(path: readonly string[]): boolean;
  /**
   * A control, or in its place that this version does not know what is recorded there.
   * @param path from the result of a side inward
   * @param how.side the shown one unless said otherwise
   * @param how.labelled whether its label is not visible elsewhere
   */
  known(
    path: readonly string[],
    label: string,
    control: () => TemplateResult,
    how?: { readonly side?: Side; readonly labelled?: boolean },
  ): TemplateResult;
  /** A number field with a sentence for what it can't take. */
  number(entry: NumberEntry): TemplateResult;
  requestUpdate(): void;
}
