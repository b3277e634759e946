import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination, parseExamination } from '../../../src/examination/index.js';
import {
  itemsOf,
  type Report,
  type ReportItem,
  reportOf,
  type SiteGroup,
} from '../../../src/report/index.js';
import { partMessagesFor } from '../../../src/locale/parts.js';
import '../../../src/locale/de/register.js';
import { anyExamination } from '../../tools/arbitraries.js';
import { examined } from '../../tools/examinations.js';
import { LEAVES, recordWith } from '../../tools/record-fields.js';

/** Said as date, examiner, scale and unit, or how the record is written. */
const ABOUT = [
  'format',
  'scale',
  'examinedAt',
  'examiner',
  'status',
  'amendments',
  'carried',
  'pressures.unit',
];

/** Every item that stands anywhere in a report; those of alike sites by what each of them says. */
function inReport({ parts, background, tests, pressures, method, ownStages, couldNot, calls }: Report): {
  told: ReportItem[];
  normal: ReportItem[];
  sites: { told: SiteGroup[]; normal: SiteGroup[] };
} {
  return {
    told: [
      ...parts.flatMap(({ others }) => others),
      ...background.told,
      ...tests,
      ...(pressures?.items ?? []),
      ...method,
      ...ownStages,
      ...couldNot,
      ...calls,
    ],
    normal: [...parts.flatMap(({ normals }) => normals.others), ...background.normal],
    sites: {
      told: parts.flatMap(({ sites }) => sites),
      normal: parts.flatMap(({ normals }) => normals.sites),
    },
  };
}

function pathsIn(report: Report): string[] {
  const { told, normal, sites } = inReport(report);
  return [...told, ...normal, ...sites.told, ...sites.normal].flatMap(({ from }) => from);
}

/** The paths of all values of a record, entries of lists by their place. */
function leavesOf(value: unknown, path: readonly string[] = []): string[] {
  if (typeof value !== 'object' || value === null || (Array.isArray(value) && !value.length))
    return [path.join('.')];
  return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, [...path, key]));
}

function at(examination: Examination, path: string): unknown {
  return path.split('.').reduce<unknown>((in_, key) => (in_ as Record<string, unknown>)?.[key], examination);
}

const covers = (paths: readonly string[], leaf: string): boolean =>
  paths.some((path) => leaf === path || leaf.startsWith(`${path}.`));
const isFinding = (leaf: string): boolean =>
  !ABOUT.some((field) => leaf === field || leaf.startsWith(`${field}.`));

describe('a finger or toe in a report', () => {
  it.each([
    ['en', 'leg', 'first', 'Great toe: ulcer'],
    ['en', 'arm', 'first', 'Thumb: ulcer'],
    ['en', 'leg', 'second', 'Second toe: ulcer'],
    ['de', 'leg', 'first', 'Großzehe: Ulkus'],
    ['de', 'arm', 'second', 'Zeigefinger: Ulkus'],
  ] as const)('is named as what it is, in %s at the %s: %s', (language, kind, digit, said) => {
    const record = {
      ...emptyExamination(),
      inspection: { [kind]: { right: { digits: { [digit]: 'ulcer' } } } },
    };
    const { report: words } = partMessagesFor(language);
    const [part] = reportOf(record as Examination).parts;
    expect(part!.others.map(words.phrase)).toEqual([said]);
  });
});

describe('reportOf(examination)', () => {
  it('has a place for every field of the record', () => {
    const silent = LEAVES.filter(({ path }) => isFinding(path.join('.'))).flatMap(({ path, value }) => {
      const parsed = parseExamination(recordWith(path, value));
      if (!parsed.ok) return [`${path.join('.')}: ${JSON.stringify(parsed.faults)}`];
      const paths = Object.values(itemsOf(parsed.value)).flatMap((items) =>
        items.flatMap(({ from }) => from),
      );
      return covers(paths, path.join('.')) ? [] : [path.join('.')];
    });
    expect(silent).toEqual([]);
  });

  it('says nothing that is not recorded and leaves nothing out', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        const paths = pathsIn(reportOf(examination));
        for (const path of paths) expect(at(examination, path), path).toBeDefined();
        for (const leaf of leavesOf(examination).filter(isFinding))
          expect(covers(paths, leaf), leaf).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  it('tells every finding that is not as usual in the open, and counts all others as normal', () => {
    fc.assert(
      fc.property(anyExamination, (examination) => {
        const items = Object.values(itemsOf(examination)).flat();
        const report = reportOf(examination);
        const { told, normal, sites } = inReport(report);
        const isNormal = ({ weight }: ReportItem): boolean => weight === 'normal';
        const open = [...told, ...sites.told].flatMap(({ from }) => from);
        const collapsed = [...normal, ...sites.normal].flatMap(({ from }) => from);
        for (const { from } of items.filter((item) => !isNormal(item)))
          expect(open).toEqual(expect.arrayContaining([...from]));
        // What is normal stands in the open only at a site where something else is not; a normal signal where nobody could feel does not.
        const beside = [...told.filter(({ weight }) => weight !== 'could-not'), ...sites.told].flatMap(
          ({ from }) => from,
        );
        const normals = items.filter(isNormal).flatMap(({ from }) => from);
        expect(normals.filter((path) => !beside.includes(path)).sort()).toEqual(collapsed.sort());
        const counted = report.parts.reduce((sum, { normals: { count } }) => sum + count, 0);
        expect(counted + report.background.normal.length).toBe(
          items.filter((item) => isNormal(item) && item.from.some((path) => collapsed.includes(path))).length,
        );
      }),
      {
        numRuns: 25,
        examples: [
          [
            {
              ...emptyExamination(),
              pulses: {
                'superficial-temporal': { right: { couldNotExamine: 'dressing', doppler: 'triphasic' } },
              },
            },
          ],
        ],
      },
    );
  });

  it('says of an empty record only that nothing was felt', () => {
    const report = reportOf(emptyExamination());
    expect(pathsIn(report)).toEqual([]);
    expect(report.parts).toEqual([]);
    expect(report.conclusion).toMatchObject({ limbs: [], leads: [] });
    expect(report.unfelt.every(({ all }) => all)).toBe(true);
  });

  it('puts the limb first that a flag names, then the one the conclusion names', () => {
    const acute = examined(
      {
        'left femoral': 'normal',
        'left popliteal': 'absent',
        'right femoral': 'absent',
        'right radial': 'normal',
      },
      {
        ...emptyExamination(),
        onset: 'acute',
        inspection: { leg: { right: { sensation: 'beyond-digits', movement: 'weak', colour: 'pale' } } },
      },
    );
    const { parts, triage } = reportOf(acute);
    expect(triage.flags[0]?.limb).toMatchObject({ kind: 'leg', side: 'right' });
    expect(parts.map(({ at: part }) => part).slice(0, 2)).toEqual(['right leg', 'left leg']);
    expect(parts.find(({ at: part }) => part === 'right arm')).toMatchObject({ affected: false });
  });

  it('gathers sites in which the very same was found, proximal first', () => {
    const { parts } = reportOf(
      examined({
        'left femoral': 'normal',
        'left popliteal': 'absent',
        'left posterior-tibial': 'absent',
        'left dorsalis-pedis': 'absent',
      }),
    );
    const [leg] = parts;
    expect(leg?.sites.map(({ places }) => places.map(({ site }) => site))).toEqual([
      ['popliteal', 'posterior-tibial', 'dorsalis-pedis'],
    ]);
    expect(leg?.normals.count).toBe(1);
  });

  it('keeps negatives that a reader must know in the open', () => {
    const { parts } = reportOf({
      ...emptyExamination(),
      inspection: { leg: { left: { sensation: 'normal', hair: 'normal', ulcer: 'none' } } },
    });
    expect(parts[0]?.negatives.flatMap(({ from }) => from)).toEqual([
      'inspection.leg.left.ulcer',
      'inspection.leg.left.sensation',
    ]);
    expect(parts[0]?.normals.count).toBe(3);
  });

  it('never collapses the examiner’s own words', () => {
    const { parts } = reportOf(examined({ 'left femoral': { grade: 'normal', note: 'deep' } }));
    expect(parts[0]?.normals.count).toBe(0);
    expect(parts[0]?.sites).toHaveLength(1);
  });

  it('names what could not be examined with its reason, and never as not felt', () => {
    const report = reportOf(examined({ 'left femoral': { couldNotExamine: 'dressing' } }));
    expect(report.couldNot.map(({ from }) => from[0])).toEqual(['pulses.femoral.left']);
    expect(
      report.unfelt.find(({ at: part }) => part === 'left leg')?.places.map(({ site }) => site),
    ).not.toContain('femoral');
  });
});
