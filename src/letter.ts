/** Records in words: summaries, letters, handovers, and the table of sites. No DOM; runs in Node. */
export { LETTER_LENGTHS, type LetterLength } from './letter/index.js';
export {
  type SitesTableOptions,
  sitesTable,
  type Summary,
  summaryHtml,
  summaryMarkdown,
  summaryOf,
  type SummaryOptions,
  type SummaryParagraph,
  type SummarySentence,
  summaryText,
  TABLE_FORMATS,
  type TableFormat,
} from './interchange/letter/index.js';
