import { describe, expect, it } from 'vitest';
import { parseExamination } from '../../../src/examination/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import '../../../src/locale/de/register.js';
import { LANGUAGES } from '../../../src/locale/list.js';
import { summaryStatements } from '../../../src/statements/index.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

const PARTS = ['calls', 'onset', 'history', 'inspection', 'context', 'circulation', 'pressures', 'method'];
/** How pressures are shown, which is not a finding. */
const UNSAID = ['pressures.unit'];

const leaves = LEAVES.filter(
  ({ path }) => PARTS.includes(String(path[0])) && !UNSAID.includes(path.join('.')),
);

function said(tag: string, path: readonly (string | number)[], value: unknown): string {
  const parsed = parseExamination(recordWith(path, value));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { whole } = partMessagesFor(tag);
  return whole
    .summary(summaryStatements(parsed.value))
    .flatMap(({ lines }) => lines)
    .join('\n');
}

/** What a field may hold that must sound differently: each word, both answers, two numbers. */
function values({ words, value }: (typeof leaves)[number]): readonly unknown[] {
  if (typeof value === 'boolean' && words.length === 0) return [true];
  if (typeof value === 'number' && words.length === 0) return [7, 6];
  return words.length ? words : [value];
}

describe('every field of history, inspection, context, circulation and pressures is said in the summary', () => {
  it('looks at a whole record', () => {
    expect(leaves.length).toBeGreaterThan(250);
  });

  for (const { tag } of LANGUAGES)
    it(`in words of its own for each answer, in ${tag}`, () => {
      const silent: string[] = [];
      for (const leaf of leaves) {
        const where = leaf.path.join('.');
        const sentences = values(leaf).map((value) => said(tag, leaf.path, value));
        if (sentences.some((text) => text === '' || /undefined|\[object|function/.test(text)))
          silent.push(`${where}: ${JSON.stringify(sentences)}`);
        if (new Set(sentences).size !== sentences.length)
          silent.push(`${where} alike: ${JSON.stringify(sentences)}`);
      }
      expect(silent).toEqual([]);
    });

  it.each([
    ['deepInfection', true, false],
    ['stretchPain', true, false],
    ['painOutOfProportion', true, false],
    ['probeToBone', true, false],
    ['charcotSuspected', true, false],
    ['varices', true, false],
    ['pigment', true, false],
    ['injurySigns', ['near-artery'], []],
    ['falseAneurysmSigns', ['growing'], []],
    ['thrombosisSigns', ['calf-wider'], []],
  ])('says yes and no of %s apart, and nothing of what nobody looked at', (field, yes, no) => {
    for (const { tag } of LANGUAGES) {
      const path = ['inspection', 'leg', 'left', field];
      const both = [said(tag, path, yes), said(tag, path, no)];
      expect(new Set(both).size).toBe(2);
      expect(both).not.toContain('');
    }
  });

  it.each(['revascularisations', 'aneurysms', 'access', 'devices', 'medicines'])(
    'says of an empty list of %s that there is none',
    (field) => {
      for (const { tag } of LANGUAGES) expect(said(tag, ['context', field], [])).not.toBe('');
    },
  );
});
