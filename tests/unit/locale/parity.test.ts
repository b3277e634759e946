import { describe, expect, it } from 'vitest';
import { en, type Language } from '../../../src/locale/index.js';
import { enParts } from '../../../src/locale/parts.js';
import { de } from '../../../src/locale/de/register.js';
import { SAMPLES } from '../../tools/word-samples.js';

const english: Language = { ...en, ...enParts };
type Fn = (...args: unknown[]) => unknown;
type Words = Readonly<Record<string, unknown>>;

/** One entry: where it stands, what English holds there, another language, and the samples of its arguments. */
interface Entry {
  readonly path: string;
  readonly meant: unknown;
  readonly said: unknown;
  readonly samples: readonly unknown[][] | undefined;
}

const isObject = (value: unknown): value is Words => typeof value === 'object' && value !== null;

/** Walks both languages and the samples side by side, key by key of either. */
function entries(meant: Words, said: Words, samples: Words | undefined, path = ''): Entry[] {
  return [...new Set([...Object.keys(meant), ...Object.keys(said)])].flatMap((key): Entry[] => {
    const at = path ? `${path} › ${key}` : key;
    const [theirs, ours, sample] = [meant[key], said[key], samples?.[key]];
    return isObject(theirs) && isObject(ours)
      ? entries(theirs, ours, sample as Words | undefined, at)
      : [{ path: at, meant: theirs, said: ours, samples: sample as Entry['samples'] }];
  });
}

/** Everything a call says, as texts in order; an id only names a thing. */
function texts(result: unknown): string[] {
  if (typeof result === 'string') return [result];
  if (!isObject(result)) return [String(result)];
  return Object.entries(result).flatMap(([key, value]) => (key === 'id' ? [] : texts(value)));
}

/** What a language says at an entry beside what English says: the constant, or the results for every sample. */
function pairs({ path, meant, said, samples }: Entry): [said: string, meant: string][] {
  if (typeof meant !== 'function') return [[String(said), String(meant)]];
  return (samples ?? []).flatMap((args): [string, string][] => {
    const [ours, theirs] = [texts((said as Fn)(...args)), texts((meant as Fn)(...args))];
    expect(ours.length, `${path}: as many things as in English for ${JSON.stringify(args)}`).toBe(
      theirs.length,
    );
    return ours.map((text, i) => [text, theirs[i] as string]);
  });
}

/** The words of a text; what the samples put in is "xyz", and what stands in quotation marks is quoted. */
function wordsOf(text: string): string[] {
  return text.replace(/„[^“]*“/g, '').match(/\p{L}+/gu) ?? [];
}

/** English words that are no German ones in any spelling. */
const ENGLISH = new Set(
  `the of and or to with without not no is are by at on for from after before above below between beyond than this that
  left right side both pulses felt heard block blocked narrowing narrowed open artery arteries site sites leg foot ankle
  toe toes thigh calf knee skin pain wound ulcer pressure limit hour hours minutes day days seconds femoral popliteal tibial
  radial ulnar brachial carotid subclavian axillary iliac renal palmar aortic absent reduced bounding systolic continuous
  nothing examined recorded found expected clear limb limbs stage blood flow vein veins`.split(/\s+/),
);
/** Words spelt alike in both languages: what consists of nothing else may be said alike. */
const ALIKE = new Set(
  `xyz normal doppler arm arms hand finger warm symptom start diabetes bypass stent amputation compression stents
  r l s h m cm min mmhg kpa x esc parc tasc ii iwgdf acc aha global vascular guidelines rutherford fontaine wifi iib iia iii iv i
  dorsalis dors pedis aorta truncus brachiocephalicus t e b a d ax br ca sc ra ul ao re il fe po dp`.split(
    /\s+/,
  ),
);
/** Texts with English in them by right: names of fields of the record, and titles of works. */
const QUOTES_ENGLISH = ['examination › fault', 'bedside › limitOption'];

const all = entries(english as unknown as Words, de as unknown as Words, SAMPLES as unknown as Words);

const AREAS = Object.keys(english);

/** Everything an area says, entry by entry. */
function told(area: string): { entry: Entry; said: string; meant: string }[] {
  return all
    .filter(({ path }) => path.startsWith(`${area} › `))
    .flatMap((entry) => pairs(entry).map(([said, meant]) => ({ entry, said, meant })));
}

describe('German', () => {
  it('has every entry of English, of the same kind, and no other', () => {
    for (const { path, meant, said } of all) expect(typeof said, path).toBe(typeof meant);
  });

  it('is called with samples at every entry that is a function', () => {
    for (const { path, meant, samples } of all) {
      if (typeof meant === 'function') expect(samples?.length ?? 0, path).toBeGreaterThan(0);
    }
  });

  it.each(AREAS)(
    'says everything of %s in words of its own, with nothing left out or left English',
    (area) => {
      for (const { entry, said, meant } of told(area)) {
        const where = `${entry.path}: "${said}" for "${meant}"`;
        expect(said.trim() === '', where).toBe(meant.trim() === '');
        expect(said, where).not.toMatch(/undefined|NaN|null|\[object|Infinity| {2}|\s[,.;]/);
        if (QUOTES_ENGLISH.includes(entry.path)) continue;
        const words = wordsOf(said).map((word) => word.toLowerCase());
        if (said === meant)
          expect(
            words.filter((word) => !ALIKE.has(word)),
            where,
          ).toEqual([]);
        expect(
          words.filter((word) => ENGLISH.has(word)),
          where,
        ).toEqual([]);
      }
    },
  );

  it.each(AREAS)('writes the numbers of %s with a comma', (area) => {
    for (const { entry, said } of told(area)) {
      if (!QUOTES_ENGLISH.includes(entry.path)) expect(said, entry.path).not.toMatch(/\d\.\d|\d%/);
    }
  });

  it('writes a date in full', () => {
    expect(de.map.when('2026-05-01T10:30Z')).toBe('1. Mai 2026');
  });

  it('tells what is wrong with a record, what was found and what was expected', () => {
    const fault = { code: 'conflict', path: ['pulses', 'femoral', 'left'], found: '"cast"' } as const;
    expect(de.examination.fault({ ...fault, expected: { code: 'grade-or-reason' } })).toBe(
      'pulses › femoral › left: gefunden "cast"; erwartet ein Grad oder ein Grund, nicht beides.',
    );
    const bound = { code: 'at-least', value: 1, of: 'characters' } as const;
    expect(de.examination.fault({ ...fault, expected: bound })).toContain('mindestens 1 Zeichen');
  });
});
