import type { UnreadCode } from '../statements/index.js';
import type { Of } from './words.js';

/** The words of what goes to other programs and comes from them. */
export interface ExchangeWords {
  readonly title: string;
  /** Names of fields that no control of their own has. */
  readonly fields: Of<
    | 'format'
    | 'examinedAt'
    | 'examiner'
    | 'delays'
    | 'radioRadial'
    | 'radioFemoral'
    | 'marks'
    | 'markId'
    | 'points'
    | 'pallor'
    | 'returned'
    | 'rubor'
    | 'filled'
    | 'positions'
    | 'felt'
    | 'calls'
    | 'callAt'
    | 'callLimb'
    | 'callWhom'
    | 'status'
    | 'amendedAt'
    | 'amendedBy'
    | 'plate'
    | 'position'
    | 'kept'
    | 'derived'
    /** In place of the figure of a pressure. */
    | 'noFigure'
  >;
  readonly limbs: Of<'leg' | 'arm'>;
  readonly amendments: Of<'amended' | 'entered-in-error' | 'restored'>;
  readonly delays: Of<'none' | 'right-later' | 'left-later' | 'delayed'>;
  readonly yes: string;
  readonly no: string;
  /** An empty list, and something of which no more is said. */
  readonly none: string;
  readonly noMore: string;
  /** A strength with the scale it stands on. */
  onScale(step: string, scale: string): string;
  readonly index: string;
  readonly flag: string;
  readonly reading: string;
  stage(scheme: string): string;
  readonly stageOpen: string;
  readonly caution: string;
  /** Why something was not read. */
  readonly why: Of<UnreadCode>;
}
