import type { Examination } from '../../examination/index.js';
import type { Summary, SummarySentence } from '../../interchange/letter/index.js';
import type { ReportWords } from '../../locale/report.js';
import { itemsOf } from '../../report/index.js';

/** The sentences of a summary, in their order. */
export const sentencesOf = ({ paragraphs }: Summary): string[] =>
  paragraphs.flatMap(({ sentences }) => sentences.map(({ text }) => text));

/** The sentence of a summary in which the caret stands in a text; a sentence that was rewritten is none of them. */
export function sentenceAt(summary: Summary, text: string, caret: number): SummarySentence | undefined {
  let from = 0;
  for (const sentence of summary.paragraphs.flatMap(({ sentences }) => sentences)) {
    const at = text.indexOf(sentence.text, from);
    if (at < 0) continue;
    from = at + sentence.text.length;
    if (caret >= at && caret <= from) return sentence;
  }
  return undefined;
}

/** What a sentence comes from, finding by finding, in words. */
export function findingsOf(
  examination: Examination,
  { from }: SummarySentence,
  { about }: Pick<ReportWords, 'about'>,
): string[] {
  const items = Object.values(itemsOf(examination)).flat();
  const covers = (path: string, own: string): boolean =>
    path === own || path.startsWith(`${own}.`) || own.startsWith(`${path}.`);
  const found = items.filter((item) => item.from.some((own) => from.some((path) => covers(path, own))));
  return [...new Set(found.map(about))];
}
