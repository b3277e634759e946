import { html, type LitElement, type TemplateResult } from 'lit';
import type { Examination } from '../../examination/index.js';
import type { Pathway } from '../../triage/index.js';
import { LaterController } from '../common/later.js';
import { PrintController } from '../common/printing.js';
import { reportSheet } from '../limb-report/sheet-reader.js';

/** What the report is made of. */
export interface ReportedView {
  readonly examination: Examination;
  readonly earlier: Examination | undefined;
  readonly pathway: Pathway | undefined;
  readonly subject: string;
  readonly details: string;
  readonly lang: string;
  readonly register: '' | 'trade' | 'plain';
}

/**
 * Says when the report stands in place of the form: while it is printed. What makes the report is fetched after the first paint, so
 * that it is there when the print is asked for; nothing of it is in the page before.
 */
export class ReportController {
  readonly #print: PrintController;

  constructor(host: LitElement) {
    this.#print = new PrintController(host);
    new LaterController(host, reportSheet, () => false);
  }

  get printed(): boolean {
    return this.#print.printing && reportSheet.part !== undefined;
  }
}

/** The report of the examination. */
export function renderReport(view: ReportedView): TemplateResult {
  return html`<limb-report
    tabindex="0"
    .examination=${view.examination}
    .earlier=${view.earlier ?? null}
    .pathway=${view.pathway}
    subject=${view.subject}
    details=${view.details}
    .lang=${view.lang}
    .register=${view.register}
  ></limb-report>`;
}
