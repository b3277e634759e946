import { html, type TemplateResult } from 'lit';
import type { Examination } from 'pulse-map/core';
import type { LetterEdits } from 'pulse-map/elements/limb-letter';
import { sitesTable } from 'pulse-map/letter';
import { PATHWAY } from './flag-line.js';
import { examinationLanguage, examinationRegister } from './language.js';

/** Saves the table of sites as a file; spreadsheets know by its first character that it is UTF-8. */
function saveTable(examination: Examination, name: string): void {
  const table = sitesTable(examination, {
    format: 'csv',
    language: examinationLanguage(),
    register: examinationRegister(),
  });
  const url = URL.createObjectURL(new Blob(['\uFEFF', table], { type: 'text/csv' }));
  const link = Object.assign(document.createElement('a'), { href: url, download: name });
  link.click();
  URL.revokeObjectURL(url);
}

/** Under this name a visit keeps what a person wrote into its letter. */
export const LETTER_NAME = 'letter';

/** What was written into a letter, from the text that a visit keeps. */
export function letterEdits(text: string | undefined): LetterEdits {
  try {
    return JSON.parse(text || '{}') as LetterEdits;
  } catch {
    return {};
  }
}

/** What a saved visit found as a text to be changed and copied, and its sites as a file for a spreadsheet. */
export function visitLetter(
  examination: Examination,
  subject: string,
  date: string,
  written?: string,
): TemplateResult {
  return html`<details class="letter">
    <summary>Letter, handover and table</summary>
    <limb-letter
      length="letter"
      lang=${examinationLanguage()}
      register=${examinationRegister()}
      subject=${subject}
      .pathway=${PATHWAY}
      .examination=${examination}
      .edits=${letterEdits(written)}
    ></limb-letter>
    <button type="button" class="button" @click=${() => saveTable(examination, `sites-${date}.csv`)}>
      Save the table of sites as a file (CSV)
    </button>
  </details>`;
}
