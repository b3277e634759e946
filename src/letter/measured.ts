import { SIDES } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import type { IndexReading, Used } from '../pressures/index.js';
import type { FindingPath, PressureReport, ReportItem } from '../report/index.js';
import type { PressureStatement, PressureVerdict } from '../statements/index.js';
import { recordedPaths } from './recorded.js';
import type { LetterSentence } from './types.js';

const KINDS = ['ankle', 'toe', 'wrist', 'finger'] as const;
const usedPath = ({ site, side }: Used): FindingPath => `pressures.${site}.${side}`;

/** The pressures an index rests on. */
function indexPaths({ numerator, denominator }: IndexReading): FindingPath[] {
  return [...(numerator ? [usedPath(numerator)] : []), ...(denominator?.from.map(usedPath) ?? [])];
}

const ANKLE = ['dorsalis-pedis', 'posterior-tibial'] as const;

/** Indices by kind, both sides in one sentence; one that could not be worked out is left out unless it is incompressible. */
export function indices(examination: Examination, report: PressureReport | undefined): LetterSentence[] {
  return KINDS.flatMap((kind): LetterSentence[] => {
    const readings = (report?.reading.indices ?? []).filter(
      (index) => index.kind === kind && (index.value !== undefined || index.band === 'incompressible'),
    );
    if (!readings.length) return [];
    const from = recordedPaths(examination, [
      ...readings.flatMap(indexPaths),
      ...readings
        .filter(({ numerator }) => !numerator)
        .flatMap(({ side }) => ANKLE.map((site) => `pressures.${site}.${side}`)),
    ]);
    return [{ says: { code: 'index', kind, readings }, from }];
  });
}

const pressureOf = ({ line }: ReportItem): PressureStatement | undefined =>
  line.code === 'pressure' ? line.statement : undefined;

/** The figures that were measured, in one sentence; the walk and the examiner's words in another. */
export function figures(examination: Examination, items: readonly ReportItem[]): LetterSentence[] {
  const unit = examination.pressures?.unit ?? 'mmHg';
  const told = items.filter((item) => pressureOf(item) && item.weight !== 'could-not');
  const groups: ((code: PressureStatement['code']) => boolean)[] = [
    (code) => code === 'pressure' || code === 'oxygen',
    (code) => code !== 'pressure' && code !== 'oxygen',
  ];
  return groups.flatMap((of): LetterSentence[] => {
    const own = told.filter((item) => of(pressureOf(item)!.code));
    const statements = own.flatMap((item) => pressureOf(item) ?? []);
    return statements.length
      ? [
          {
            says: { code: 'pressures', statements, unit },
            from: recordedPaths(
              examination,
              own.flatMap(({ from }) => from),
            ),
          },
        ]
      : [];
  });
}

/** The methods and limits that the examiner chose, by which the figures are read. */
export function methods(items: readonly ReportItem[]): LetterSentence[] {
  const own = items.filter(({ line }) => line.code === 'method');
  const chosen = own.flatMap(({ line }) => (line.code === 'method' ? [line.statement] : []));
  if (!chosen.length) return [];
  return [{ says: { code: 'methods', methods: chosen }, from: own.flatMap(({ from }) => from) }];
}

/** What could not be measured, and why. */
export function couldNotMeasure(examination: Examination, items: readonly ReportItem[]): LetterSentence[] {
  const unit = examination.pressures?.unit ?? 'mmHg';
  const own = items.filter((item) => pressureOf(item) && item.weight === 'could-not');
  const statements = own.flatMap((item) => pressureOf(item) ?? []);
  return statements.length
    ? [
        {
          says: { code: 'pressures', statements, unit, missing: true },
          from: own.flatMap(({ from }) => from),
        },
      ]
    : [];
}

const sitesAt = (side: 'right' | 'left', sites: readonly string[]) =>
  sites.map((site) => `pressures.${site}.${side}`);

function verdictPaths(verdict: PressureVerdict): FindingPath[] {
  switch (verdict.code) {
    case 'threat':
      return sitesAt(verdict.side, [...ANKLE, 'toe', 'tcpo2']);
    case 'flat-curve':
      return sitesAt(verdict.side, ['volumeCurve']);
    case 'index-change':
      return sitesAt(verdict.change.side, ANKLE);
    case 'segment':
      return sitesAt(verdict.finding.side, ['high-thigh', 'low-thigh', 'calf', ...ANKLE]);
    case 'arm':
      return SIDES.flatMap((side) => sitesAt(side, ['brachial', 'radial', 'ulnar']));
    case 'exercise':
      return ['pressures.afterExercise', ...sitesAt(verdict.reading.side, ANKLE)];
  }
}

/** A finding of a segment that leaves every level of a leg open points nowhere. */
const LEVELS_OF_A_LEG = 3;

/** Flags tell of threat; an index tells what a segment that points nowhere would. */
function isSaidElsewhere(verdict: PressureVerdict): boolean {
  if (verdict.code === 'segment') return verdict.finding.levels.length >= LEVELS_OF_A_LEG;
  return verdict.code === 'threat' || verdict.code === 'flat-curve';
}

/** What the pressures point to, but for what a red flag says already; a walk that changed nothing only in full. */
export function verdicts(
  examination: Examination,
  report: PressureReport | undefined,
  which: 'all' | 'abnormal',
): LetterSentence[] {
  if (!report) return [];
  const { unit } = report;
  return report.verdicts
    .filter((verdict) => !isSaidElsewhere(verdict))
    .filter((one) => which === 'all' || one.code !== 'exercise' || one.reading.code === 'abnormal')
    .map((verdict) => ({
      says: { code: 'verdict', verdict, unit },
      from: recordedPaths(examination, verdictPaths(verdict)),
    }));
}
