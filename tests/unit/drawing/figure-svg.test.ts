import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figureBody, figureSVG, VIEWS } from '../../../src/picture.js';
import { emptyExamination, PLACES, setPulse } from '../../../src/core.js';
import '../../../src/locale/de/register.js';
import { anyExamination, gradedExamination } from '../../tools/arbitraries.js';
import { examined, place } from '../../tools/examinations.js';

const SICK = examined({
  'right femoral': 'normal',
  'left femoral': 'absent',
  'left popliteal': 'absent',
  'right popliteal': 'reduced',
  'right radial': 'bounding',
});

const LOOK = { width: 160 } as const;
const size = (text: string): number => Buffer.byteLength(text);
const titles = (text: string): string[] =>
  [...text.matchAll(/<title>([^<]*)<\/title>/g)].map(([, said]) => said!);
const described = (text: string): string => /<desc>([^]*)<\/desc>/.exec(text)?.[1] ?? '';

describe('figureSVG', () => {
  it('says in words what it shows, and never more than was found', () => {
    expect(described(figureSVG(SICK))).toContain('Left popliteal: 0, absent');
    expect(described(figureSVG(SICK))).toContain('Occlusion above left femoral');
    expect(described(figureSVG(emptyExamination()))).toMatch(/^0 of \d+, scale/);
    expect(described(figureSVG(SICK, { language: 'de' }))).toContain('Poplitea links: 0, fehlend');
  });

  it('is called by the map and the date of the record, or as told', () => {
    const dated = { ...SICK, examinedAt: '2026-03-05T09:00:00Z' };
    expect(titles(figureSVG(dated))[0]).toBe('Pulse map, 5 March 2026');
    expect(titles(figureSVG(dated, { title: 'Visit <1>' }))[0]).toBe('Visit &lt;1&gt;');
  });

  it('calls every site with its finding where it carries names', () => {
    const said = titles(figureSVG(SICK, { names: true }));
    expect(said).toContain('Left popliteal: 0, absent');
    expect(said.filter((one) => / (not examined|not auscultated)|: \d/.test(one))).toHaveLength(
      PLACES.length,
    );
  });

  it('is the same each time', () => {
    fc.assert(
      fc.property(anyExamination, fc.constantFrom(...VIEWS), (examination, view) => {
        expect(figureSVG(examination, { view })).toBe(figureSVG(structuredClone(examination), { view }));
      }),
      { numRuns: 6 },
    );
  });

  it('changes with every grade', () => {
    for (const grade of ['absent', 'reduced', 'bounding', 'normal'] as const)
      expect(figureSVG(setPulse(SICK, place('left radial'), { grade }))).not.toBe(figureSVG(SICK));
  });

  it('refers to nothing that the shared body does not have', () => {
    fc.assert(
      fc.property(gradedExamination, fc.constantFrom(...VIEWS), (examination, view) => {
        const ids = new Set(
          [...figureBody({ ...LOOK, view }).matchAll(/ id="([^"]*)"/g)].map(([, id]) => id),
        );
        const text = figureSVG(examination, { ...LOOK, view, shared: true });
        const used = [...text.matchAll(/href="#([^"]*)"/g)].map(([, id]) => id);
        expect(used.length).toBeGreaterThan(0);
        expect(used.filter((id) => !ids.has(id))).toEqual([]);
      }),
      { numRuns: 6 },
    );
  });

  it('refers to nothing at all on its own', () => {
    for (const names of [true, false])
      expect(figureSVG(SICK, { names })).not.toMatch(/<use|href|style=|var\(/);
  });

  it('has ids of its own for what is clipped, the same for equal pictures only', () => {
    const ulcer = (x: number) => ({
      ...SICK,
      marks: [
        {
          id: 'm1',
          kind: 'ulcer' as const,
          points: [
            [x, 1380],
            [x + 20, 1380],
            [x + 10, 1400],
          ] as [number, number][],
        },
      ],
    });
    const ids = (x: number) => [...figureSVG(ulcer(x)).matchAll(/ id="([^"]*)"/g)].map(([, id]) => id!);
    expect(ids(780)).toHaveLength(1);
    expect(ids(780)).toEqual(ids(780));
    expect(ids(780)).not.toEqual(ids(790));
  });

  // Ceilings of the code, not measurements: what a list of 50 visits costs beyond the body that they share.
  it('takes little beside the shared body', () => {
    expect(size(figureSVG(emptyExamination(), { ...LOOK, shared: true }))).toBeLessThan(2_000);
    const one = examined({
      'left femoral': 'normal',
      'left popliteal': 'absent',
      'left dorsalis-pedis': 'absent',
    });
    expect(size(figureSVG(one, { ...LOOK, shared: true }))).toBeLessThan(4_000);
    // Nearly every artery differs here, and each is cut where its depth changes.
    expect(size(figureSVG(SICK, { ...LOOK, shared: true }))).toBeLessThan(8_000);
  });

  it('refuses a view or a width that is none', () => {
    expect(() => figureSVG(SICK, { view: 'toes' as never })).toThrow(/view: found "toes", expected whole/);
    expect(() => figureSVG(SICK, { width: 4 })).toThrow(/width: found 4, expected a number from 40 to 4096/);
    expect(() => figureBody({ width: Number.NaN })).toThrow(RangeError);
  });
});
