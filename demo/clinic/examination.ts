import { html, type TemplateResult } from 'lit';
import { EXAMINATION_NAME } from './types.js';

/**
 * The examination among the clinic's fields: one custom element with a name, a label and a value. The clinic keeps what it
 * submits and hands the same text back; it never looks inside. Another element of the package would take its place here.
 */
export function examinationControl(value: string, readOnly: boolean): TemplateResult {
  return html`<div class="examination">
    <h2><label for="examination">Pulses and bruits</label></h2>
    <pulse-map id="examination" name=${EXAMINATION_NAME} ?readonly=${readOnly} .value=${value}></pulse-map>
  </div>`;
}
