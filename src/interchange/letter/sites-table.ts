import { isListeningSite, isPulseSite, type Place, PLACES, siteDefinition } from '../../anatomy/index.js';
import {
  type BruitFinding,
  bruitAt,
  type Examination,
  isBruitLocked,
  isPulseLocked,
  pulseAt,
  type PulseFinding,
  stepOf,
} from '../../examination/index.js';
import { messagesFor } from '../../locale/index.js';
import type { SiteColumn } from '../../locale/letter-table.js';
import { partMessagesFor } from '../../locale/parts.js';
import { sentence } from '../../locale/phrases.js';
import type { Register } from '../../locale/terms.js';
import { csvOf } from '../csv.js';
import { escapedHtml } from './render.js';

export const TABLE_FORMATS = ['text', 'csv', 'html'] as const;
export type TableFormat = (typeof TABLE_FORMATS)[number];

export interface SitesTableOptions {
  /** `csv` is RFC 4180 with a header line, `html` a `table` with a caption; `text` where not given. */
  readonly format?: TableFormat;
  readonly language?: string;
  readonly register?: Register;
}

const COLUMNS: readonly SiteColumn[] = [
  'site',
  'side',
  'pulse',
  'thrill',
  'doppler',
  'bruit',
  'delay',
  'note',
];

/** Notes of a site, one that stands with both findings once. */
function notesOf(pulse: PulseFinding | undefined, bruit: BruitFinding | undefined): string {
  return [...new Set([pulse?.note, bruit?.note])].filter((note) => note !== undefined).join('; ');
}

/** Every site in words: a row for each place, in the order of examination. */
function rowsOf(examination: Examination, language: string, register: Register): string[][] {
  const { anatomy, examination: words, map } = messagesFor(language, register);
  const { sites: own } = partMessagesFor(language, register).letter;
  const { delays = {}, scale } = examination;

  const pulse = (place: Place, found: PulseFinding | undefined): string => {
    if (!isPulseSite(place.site)) return own.notAPulseSite;
    if (isPulseLocked(examination, place)) return words.unknownHere;
    const step = stepOf(found, scale);
    if (step) return words.step(step);
    return found?.couldNotExamine ? words.couldNot(found.couldNotExamine) : words.notExamined;
  };
  const bruit = (place: Place, found: BruitFinding | undefined): string => {
    if (!isListeningSite(place.site)) return own.notAListeningSite;
    if (isBruitLocked(examination, place)) return words.unknownHere;
    if (found?.bruit) return words.bruits[found.bruit];
    return found?.couldNotExamine ? words.couldNot(found.couldNotExamine) : words.notExamined;
  };
  const delay = ({ site, side }: Place): string => {
    if (side === 'midline') return '';
    const found =
      site === 'radial' ? delays.radioRadial : site === 'femoral' ? delays.radioFemoral?.[side] : undefined;
    if (!found) return '';
    return found === 'delayed' || found === `${side}-later` ? own.later : found === 'none' ? own.noDelay : '';
  };
  return PLACES.map((place) => {
    const felt = pulseAt(examination, place);
    const heard = bruitAt(examination, place);
    const beside = [felt?.thrill && map.found({ code: 'thrill' }), felt?.expansile && own.expansile];
    return [
      sentence(anatomy.sites[place.site]),
      siteDefinition(place.site).occurs === 'midline' ? '' : anatomy.sides[place.side],
      pulse(place, felt),
      beside.filter(Boolean).join(', '),
      felt?.doppler ? words.dopplers[felt.doppler] : '',
      bruit(place, heard),
      delay(place),
      notesOf(felt, heard),
    ];
  });
}

/** Text of one line: what a person typed may hold line breaks and other control characters. */
const oneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ').trim();

function asText(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const lines = [head, ...rows].map((row) => row.map(oneLine));
  const widths = head.map((_, i) => Math.max(...lines.map((row) => [...(row[i] ?? '')].length)));
  return lines
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd((widths[i] ?? 0) + cell.length - [...cell].length))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function asHtml(
  language: string,
  caption: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
): string {
  const cells = (row: readonly string[]): string =>
    row
      .map((cell, i) =>
        i === 0 ? `<th scope="row">${escapedHtml(cell)}</th>` : `<td>${escapedHtml(cell)}</td>`,
      )
      .join('');
  return `<table lang="${escapedHtml(language)}">
<caption>${escapedHtml(caption)}</caption>
<thead><tr>${head.map((cell) => `<th scope="col">${escapedHtml(cell)}</th>`).join('')}</tr></thead>
<tbody>
${rows.map((row) => `<tr>${cells(row)}</tr>`).join('\n')}
</tbody>
</table>`;
}

/**
 * Every site of a record as a table: a row a site and side, with what was found there or that it was not examined, and why. An empty
 * cell under thrill, Doppler, delay or note says that nothing is recorded.
 * @param examination a record that was read
 */
export function sitesTable(examination: Examination, options: SitesTableOptions = {}): string {
  const { format = 'text', language = 'en', register = 'trade' } = options;
  const { sites: words } = partMessagesFor(language, register).letter;
  const head = COLUMNS.map((column) => words.columns[column]);
  const rows = rowsOf(examination, language, register);
  const scale = words.scale(messagesFor(language, register).examination.scales[examination.scale]);
  switch (format) {
    case 'text':
      return `${words.title}. ${scale}\n\n${asText(head, rows)}\n`;
    case 'csv':
      return csvOf([head, ...rows]);
    case 'html':
      return asHtml(language, `${words.title}. ${scale}`, head, rows);
  }
}
