import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PLACES } from '../../../src/anatomy/index.js';
import { amend, emptyExamination, setFields, setPulse } from '../../../src/examination/index.js';
import { sitesTable, summaryHtml, summaryMarkdown, summaryOf, summaryText } from '../../../src/letter.js';
import '../../../src/locale/de/register.js';
import { anyExamination, noteText } from '../../tools/arbitraries.js';
import { examined, place } from '../../tools/examinations.js';

const noted = (note: string) =>
  setPulse(emptyExamination(), place('left femoral'), { grade: 'absent', note });

/** Reads CSV by RFC 4180: fields by commas, records by CRLF, quotes doubled within quotes. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  let field = '';
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!;
    if (quoted) {
      if (c !== '"') field += c;
      else if (text[i + 1] === '"') field += text[i++]!;
      else quoted = false;
    } else if (c === '"' && field === '') quoted = true;
    else if (c === ',') {
      rows.at(-1)!.push(field);
      field = '';
    } else if (c === '\r' && text[i + 1] === '\n') {
      rows.at(-1)!.push(field);
      field = '';
      rows.push([]);
      i++;
    } else field += c;
  }
  expect(quoted).toBe(false);
  expect(rows.pop()).toEqual([]);
  return rows;
}

describe('sitesTable(record)', () => {
  it('has a row for every site and side, in every format', () => {
    const csv = readCsv(sitesTable(emptyExamination(), { format: 'csv' }));
    expect(csv.length).toBe(PLACES.length + 1);
    expect(sitesTable(emptyExamination(), { format: 'html' }).match(/<tr>/g)?.length).toBe(PLACES.length + 1);
    const [, , ...lines] = sitesTable(emptyExamination()).trimEnd().split('\n');
    expect(lines.length).toBe(PLACES.length + 1);
  });

  it('says of what nobody examined that it was not, and never a grade', () => {
    const [head, ...rows] = readCsv(sitesTable(emptyExamination(), { format: 'csv' }));
    const [pulse, bruit] = [head!.indexOf('Pulse'), head!.indexOf('Bruit')];
    expect([...new Set(rows.map((row) => row[pulse]))].sort()).toEqual(['no pulse site', 'not examined']);
    expect([...new Set(rows.map((row) => row[bruit]))].sort()).toEqual([
      'not auscultated here',
      'not examined',
    ]);
  });

  it('tells grade, bruit, thrill, delay and why not, side by side', () => {
    const record = setFields(
      examined({
        'left femoral': { grade: 'reduced', thrill: true },
        'right popliteal': { couldNotExamine: 'cast' },
      }),
      {
        bruits: { femoral: { left: { bruit: 'systolic' } } },
        delays: { radioFemoral: { left: 'delayed' }, radioRadial: 'right-later' },
      },
    );
    const rows = readCsv(sitesTable(record, { format: 'csv' })).map((row) => row.join('|'));
    expect(rows).toContain('Femoral|left|1, reduced|thrill||systolic bruit|later|');
    expect(rows).toContain('Popliteal|right|not assessable: cast|||not examined||');
    expect(rows).toContain('Radial|right|not examined|||not auscultated here|later|');
    expect(rows).toContain('Radial|left|not examined|||not auscultated here||');
    expect(sitesTable(record, { format: 'text', language: 'de' })).toContain(
      'Pulsstärke auf der Skala 0 bis 3.',
    );
  });

  it('comes back from CSV whole, whatever was typed, and holds no formula', () => {
    fc.assert(
      fc.property(
        anyExamination,
        fc.oneof(noteText, fc.constantFrom('=1+1', '+1', '-1', '@a', '\t=1', '"')),
        (record, note) => {
          const text = sitesTable(setPulse(record, place('left femoral'), { note }), { format: 'csv' });
          const rows = readCsv(text);
          expect(new Set(rows.map((row) => row.length))).toEqual(new Set([8]));
          for (const cell of rows.flat()) expect(/^\s*[=+\-@]|^[\t\r\n]/.test(cell)).toBe(false);
          expect(rows.flat().some((cell) => cell.includes(note))).toBe(true);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('has each row on one line of text, in columns', () => {
    const lines = sitesTable(noted('a\nb')).trimEnd().split('\n');
    expect(lines.length).toBe(PLACES.length + 3);
    const at = lines[2]!.indexOf('Side');
    for (const line of lines.slice(3)) expect(['right', 'left', '']).toContain(line.slice(at, at + 5).trim());
  });
});

describe('the renderers of a summary', () => {
  const evil = '<img src=x onerror=alert(1)> & "quoted" *bold* [a](b) `code`\n# head';

  it('put no mark-up of what was typed into HTML', () => {
    const html = summaryHtml(summaryOf(noted(evil), { length: 'letter', subject: '<b>x</b>' }));
    expect(html).not.toMatch(/<img|<b>/);
    expect(html).toContain('&lt;img src=x onerror=alert(1)&gt; &amp; &quot;quoted&quot;');
    expect(
      [...html.matchAll(/<\/?([a-z0-9]+)/g)].every(([, tag]) => ['div', 'p', 'h2', 'br'].includes(tag!)),
    ).toBe(true);
  });

  it('escape what Markdown would take for its own', () => {
    const text = summaryMarkdown(summaryOf(noted(evil), { length: 'letter' }));
    expect(text).toContain('\\<img');
    expect(text).toContain('\\*bold\\*');
    expect(text).toContain('\\[a\\](b)');
    expect(text).toContain('\n\\# head');
  });

  it('give a handover its four headings in each form', () => {
    const summary = summaryOf(noted('x'), { length: 'handover', language: 'de' });
    const headings = summary.paragraphs.map(({ heading }) => heading).filter(Boolean);
    expect(headings).toEqual(['Beurteilung', 'Empfehlung']);
    for (const heading of headings) {
      expect(summaryText(summary)).toContain(`${heading}\n`);
      expect(summaryMarkdown(summary)).toContain(`## ${heading}\n\n`);
      expect(summaryHtml(summary)).toContain(`<h2>${heading}</h2>`);
    }
  });

  it('say of an empty record that there is nothing, and nothing more', () => {
    expect(summaryText(summaryOf(emptyExamination(), { length: 'letter' }))).toBe(
      'Dear colleague,\n\nNothing recorded yet.',
    );
  });

  it('say first that an examination was entered in error', () => {
    const wrong = amend(noted('x'), { kind: 'entered-in-error', at: '2026-05-01T10:30Z' });
    for (const length of ['line', 'short', 'letter', 'handover'] as const)
      expect(summaryText(summaryOf(wrong, { length })), length).toMatch(
        /^This examination was entered in error/,
      );
  });

  it('ask for one act once, though two flags ask for it, and keep the findings of both', () => {
    const threatened = { temperature: 'cold', sensation: 'digits' } as const;
    const record = setFields(emptyExamination(), {
      onset: 'acute',
      inspection: { leg: { left: threatened, right: threatened } },
    });
    const said = summaryOf(record).paragraphs[0]!.sentences.map(({ text }) => text);
    expect(said.filter((text) => text.startsWith('Call the vascular team now'))).toHaveLength(1);
    for (const limb of ['right leg', 'left leg'])
      expect(said.filter((text) => /^Red flag \(now\)/.test(text) && text.includes(limb))).toHaveLength(1);
  });
});
