import type { Side } from '../anatomy/index.js';
import { type Examination, type Json, pulseAt, type RecordPath, stepOf } from '../examination/index.js';
import { messagesFor } from '../locale/index.js';
import { partMessagesFor } from '../locale/parts.js';
import { sentence } from '../locale/phrases.js';
import { summaryStatements } from '../statements/index.js';
import { fieldOf, type Leaf, put, sideOf } from './fields.js';
import { type Language, labelOf, wordOf } from './labels.js';
import { isSite, limbAt } from './places.js';

/** What a bundle says to people, in one language. */
export function languageOf(tag: string): Language {
  return { map: messagesFor(tag), parts: partMessagesFor(tag) };
}

/** A record that holds some values of another and nothing else, with the scale that they are shown on. */
function only({ format, scale }: Examination, leaves: readonly Leaf[]): Examination {
  const tree = { format, scale };
  for (const { path, value } of leaves) {
    // Entries of lists are told alone.
    const way = path.map((key) => (typeof key === 'number' ? 0 : key));
    put(tree, way, value);
  }
  return tree;
}

/** What is told of some values of a record, line by line; empty where the summary tells nothing of them. */
function linesOf({ parts }: Language, examination: Examination, leaves: readonly Leaf[]): readonly string[] {
  return parts.whole.summary(summaryStatements(only(examination, leaves))).flatMap(({ lines }) => lines);
}

/** The name of a place or limb, with its side: "left femoral", "right leg". */
export function placeText(language: Language, code: string, side: Side | 'midline'): string {
  const [part, site = ''] = code.split('.');
  if ((part === 'pulses' || part === 'bruits') && isSite(site))
    return language.map.anatomy.place({ site, side });
  const limb = limbAt(code);
  if (limb && side !== 'midline') return language.map.anatomy.limbs[`${side} ${limb}`];
  return language.map.anatomy.sides[side];
}

/** What a part of the record is called: "Pulse, left femoral". */
export function titleOf(language: Language, path: RecordPath): string {
  const code = fieldOf(path)?.code ?? 'record';
  const side = sideOf(path);
  const label = labelOf(language, code) ?? language.parts.exchange.title;
  return side ? `${label}, ${placeText(language, code, side)}` : label;
}

/** A word of a leaf as a person reads it; a strength of a pulse never without its scale. */
export function wordText(
  language: Language,
  examination: Examination,
  leaf: Leaf,
): (word: Json) => string | undefined {
  const { exchange } = language.parts;
  const { code } = leaf.field;
  return (word) => {
    if (leaf.kind === 'empty') return Array.isArray(word) ? exchange.none : exchange.noMore;
    const [part, site = ''] = code.split('.');
    if (part === 'pulses' && code.endsWith('.grade') && isSite(site)) {
      const finding = pulseAt(examination, { site, side: sideOf(leaf.path) ?? 'midline' });
      const step = stepOf(finding, examination.scale);
      if (step)
        return exchange.onScale(
          language.map.examination.step(step),
          language.map.examination.scales[examination.scale],
        );
    }
    return wordOf(language, code, String(word)) ?? String(word);
  };
}

/** The value of a leaf in words. */
function valueText(language: Language, examination: Examination, leaf: Leaf): string {
  const { exchange, whole } = language.parts;
  const say = wordText(language, examination, leaf);
  const { value, kind } = leaf;
  if (typeof value === 'boolean') return value ? exchange.yes : exchange.no;
  if (typeof value === 'number') return kind === 'integer' ? (say(value) ?? '') : whole.number(value);
  if (kind === 'words') return (value as readonly Json[]).map((word) => say(word)).join(', ');
  if (kind === 'text' || kind === 'instant') return String(value);
  return kind === 'points' ? '' : (say(value) ?? '');
}

/** What a person reads of a part of the record: the lines of the summary, or else its fields one by one. */
export function narrated(
  language: Language,
  examination: Examination,
  path: RecordPath,
  leaves: readonly Leaf[],
): readonly string[] {
  const lines = path.length ? linesOf(language, examination, leaves) : [];
  if (lines.length) return lines;
  return leaves.map((leaf) => {
    const text = valueText(language, examination, leaf);
    const label = labelOf(language, leaf.field.code) ?? titleOf(language, path);
    return sentence(text ? `${label}: ${text}` : label);
  });
}
