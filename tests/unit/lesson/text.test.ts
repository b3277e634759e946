import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  jsonPlaces,
  lessonJsonSchema,
  lineAt,
  parseLesson,
  parseLessonText,
  SHIPPED_LESSON_IDS,
  shippedLesson,
  shippedLessonInput,
} from '../../../src/lesson/index.js';
import { expectedIn } from '../../tools/faults.js';

/** Every path of a value, with the value there. */
function* pathsOf(value: unknown, path: (string | number)[] = []): Generator<[(string | number)[], unknown]> {
  yield [path, value];
  if (Array.isArray(value)) for (const [i, one] of value.entries()) yield* pathsOf(one, [...path, i]);
  else if (typeof value === 'object' && value !== null)
    for (const [key, one] of Object.entries(value)) yield* pathsOf(one, [...path, key]);
}

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('the places of a JSON text', () => {
  it('are where its values begin, however it is written', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(0, 1, 2, 4), (value, indent) => {
        const json = JSON.parse(JSON.stringify(value)) as unknown;
        const text = JSON.stringify(json, null, indent);
        const places = jsonPlaces(text);
        expect(places.ok).toBe(true);
        if (!places.ok) return;
        for (const [path, one] of pathsOf(json)) {
          const from = places.placeOf(path);
          const short = JSON.stringify(one, null, indent).split('\n')[0]!;
          expect(text.slice(from, from + short.length)).toBe(short);
        }
      }),
    );
  });

  it('are given for exactly the texts that JSON.parse takes', () => {
    const broken = fc
      .tuple(
        fc.json(),
        fc.nat(),
        fc.constantFrom('', '"', '{', '}', ',', ':', '\\', '0', ' ', 'e', '-', '\n', '[1,]'),
      )
      .map(([text, n, put]) => {
        const at = n % (text.length + 1);
        return text.slice(0, at) + put + text.slice(at + (n % 2));
      });
    fc.assert(
      fc.property(fc.oneof(broken, fc.json(), fc.string()), (text) => {
        const places = jsonPlaces(text);
        expect(places.ok, text).toBe(parses(text));
        if (places.ok) return;
        // What stands before the place can still become JSON, so the fault is not told too late.
        expect(places.offset).toBeGreaterThanOrEqual(0);
        expect(places.offset).toBeLessThanOrEqual(text.length);
      }),
      { numRuns: 2000 },
    );
  });

  it('name the very character that is wrong', () => {
    const at = (text: string): number => {
      const places = jsonPlaces(text);
      return places.ok ? -1 : places.offset;
    };
    expect(at('{"a": 1,}')).toBe(8);
    expect(at('{"a" 1}')).toBe(5);
    expect(at('{"a": [1 2]}')).toBe(9);
    expect(at('{"a": "x')).toBe(8);
    expect(at("{'a': 1}")).toBe(1);
    expect(at('[1] 2')).toBe(4);
    expect(at('[01]')).toBe(2);
    expect(at('')).toBe(0);
    expect(lineAt('{\n  "a": 1,\n}', 12)).toEqual({ line: 3, column: 1 });
  });

  it('survive nesting without end', () => {
    expect(jsonPlaces('['.repeat(100_000)).ok).toBe(false);
  });
});

describe('a lesson as text', () => {
  it('is read as its value is, for each that ships', async () => {
    for (const id of SHIPPED_LESSON_IDS) {
      const read = parseLessonText(JSON.stringify(await shippedLessonInput(id)));
      expect(read).toEqual({ ok: true, lesson: await shippedLesson(id) });
    }
  });

  it('is told with path and expectation at the place in the text', async () => {
    const text = JSON.stringify(await shippedLessonInput('aortoiliac'), null, 2);
    const faultsOf = (other: string): string[] => {
      expect(other, 'the text was changed').not.toBe(text);
      const read = parseLessonText(other);
      return read.ok
        ? []
        : read.faults.map(({ fault, offset }) => {
            const { line } = lineAt(other, offset);
            return `${fault.path.join('.')} in ${other.split('\n')[line - 1]!.trim().slice(0, 20)}: ${expectedIn(fault.expected)}`;
          });
    };
    expect(faultsOf(text.replace('"aortoiliac"', '"Aorto iliac"'))).toEqual([
      'id in "id": "Aorto iliac",: short-name',
    ]);
    expect(faultsOf(text.replace(/"minutes": \d+/, '"minutes": 0'))).toEqual([
      'minutes in "minutes": 0,: at-least 1 number',
    ]);
    const [story] = faultsOf(text.replace(/("story": \{\s*)"en": "[^"]*",/, '$1'));
    expect(story).toBe('story in "story": {: title-languages');
    const [patient] = faultsOf(text.replace('"patient"', '"patients"'));
    expect(patient).toMatch(/^patients? in .*(someone-to-examine|format\|id)/);
    expect(faultsOf(text.slice(0, 40))[0]).toMatch(/json-text$/);
    expect(faultsOf('x'.repeat(1_000_001))[0]).toMatch(/at-most 1000000 characters$/);
  });

  it('says every rule of a lesson in its own words, none as "plain JSON"', () => {
    const bare = {
      format: 'pulse-map-lesson/1',
      id: 'a',
      title: { en: 'T', de: 'T' },
      story: { en: 'S', de: 'S' },
      patient: {},
      answer: { lesions: [], text: { en: 'A', de: 'A' } },
    };
    const codes = (lesson: object): string[] => {
      const parsed = parseLesson({ ...bare, ...lesson });
      return parsed.ok
        ? []
        : parsed.faults.map(({ path, expected }) => `${path.join('.')} ${expectedIn(expected)}`);
    };
    expect(codes({})).toEqual([]);
    expect(codes({ patient: undefined })).toEqual(['patient someone-to-examine']);
    expect(codes({ story: {} })).toContain('story some-language');
    expect(codes({ story: { en: 'S' } })).toEqual(['story title-languages']);
    expect(codes({ answer: { ...bare.answer, differs: { de: 'x' } } })).toEqual([
      'answer.differs title-languages',
    ]);
    expect(codes({ steps: { delays: { notes: { en: 'x' } } } })).toEqual([
      'steps.delays.notes title-languages',
    ]);
    expect(codes({ id: 'No' })).toEqual(['id short-name']);
    expect(codes({ patient: { lesions: [{ piece: 'left popliteal', at: 'adductor' }] } })).toEqual(
      expect.arrayContaining([expect.stringMatching(/^patient\.lesions\.0\.at /)]),
    );
    expect(JSON.stringify(lessonJsonSchema())).toContain('"pattern":"^[a-z0-9]+');
  });
});
