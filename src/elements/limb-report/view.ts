import type { Examination } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { PartMessages } from '../../locale/parts.js';
import type { Report } from '../../report/index.js';
import type { StagingSettings } from '../../staging/index.js';

/** What a report is rendered from. */
export interface SheetView {
  readonly examination: Examination;
  readonly earlier: Examination | undefined;
  /** Limits of the page. */
  readonly settings: Partial<StagingSettings>;
  readonly subject: string;
  readonly details: string;
  readonly day: string;
  readonly printing: boolean;
  readonly words: Messages;
  readonly parts: PartMessages;
}

/** The same with what was made of it. */
export interface ReportView extends SheetView {
  readonly report: Report;
}
