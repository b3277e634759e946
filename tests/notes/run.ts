import { resolve } from 'node:path';
import { noteFigures, type NoteItem, readNoteItems, scoreNote } from './score.js';

/*
 * Scores files of notes: `npm run notes -- FILE … [--json]`. Without `--json` it also lists the notes that were not read exactly.
 * Without a file, the notes kept beside this program.
 */

const KEPT = ['notes.json', 'held-back.json'].map((name) => new URL(name, import.meta.url).pathname);

function listOf(items: readonly NoteItem[]): string[] {
  return items.flatMap((item) => {
    const { exact, wrong, missed, asked, reading } = scoreNote(item);
    if (exact) return [];
    const words = (spans: readonly { start: number; end: number }[]): string =>
      spans.map(({ start, end }) => item.text.slice(start, end)).join(' | ');
    return [
      `${item.id}: ${item.text.replaceAll('\n', ' ⏎ ')}`,
      ...(wrong.length ? [`  wrong   ${wrong.join('; ')}`] : []),
      ...(missed.length ? [`  missed  ${missed.join('; ')}`] : []),
      ...(asked.length ? [`  asked   ${asked.join('; ')}`] : []),
      ...(reading.unread.length ? [`  unread  ${words(reading.unread)}`] : []),
    ];
  });
}

function main(args: readonly string[]): void {
  const unknown = args.find((arg) => arg.startsWith('--') && arg !== '--json');
  const files = args.filter((arg) => !arg.startsWith('--'));
  if (unknown) throw new Error(`found ${unknown}; expected: npm run notes -- FILE … [--json]`);
  // npm runs this in the package's folder; a path is meant from where it was typed.
  const from = process.env.INIT_CWD ?? '.';
  const items = (files.length ? files.map((file) => resolve(from, file)) : KEPT).flatMap(readNoteItems);
  const figures = noteFigures(items);
  if (args.includes('--json')) console.log(JSON.stringify(figures));
  else
    console.log(
      [...listOf(items), ...Object.entries(figures).map(([name, value]) => `${name}: ${value}`)].join('\n'),
    );
}

try {
  main(process.argv.slice(2));
} catch (error) {
  console.error((error as Error).message);
  process.exitCode = 1;
}
