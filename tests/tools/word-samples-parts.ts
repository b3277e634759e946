/** Arguments for every entry of the locale that is a function, in the areas of this part. */
import { SIDES } from '../../src/anatomy/index.js';
import { BEDSIDE_TEST_IDS, BEDSIDE_TESTS, readBedside } from '../../src/bedside/index.js';
import { CHANGE_WEIGHTS } from '../../src/comparison/index.js';
import {
  ACUTE_CLASSES,
  CALLED_TEAMS,
  FONTAINE_STAGES,
  ONSETS,
  REASONS,
  RUTHERFORD_CATEGORIES,
  WIFI_GRADES,
  WIFI_STAGES,
} from '../../src/examination/index.js';
import type { PartMessages } from '../../src/locale/index.js';
import {
  bedsideLines,
  methodStatements,
  pressureStatements,
  rateRanges,
  summaryStatements,
} from '../../src/statements/index.js';
import { LESSON_EDITOR_SAMPLES, LESSON_SAMPLES } from './word-samples-lesson.js';
import { PRACTICE_SAMPLES } from './word-samples-practice.js';
import { COUNTS, each, one, type Samples, SIDE, TEXT, three, two } from './word-samples-of.js';
import { type ArmsDoubt, readPressures } from '../../src/pressures/index.js';
import { NOTE_DOUBTS } from '../../src/notes/index.js';
import type { SchemeId } from '../../src/locale/staging.js';
import { MISSING_CODES } from '../../src/staging/index.js';
import {
  CUFF_CAUTIONS,
  CUFF_RULES,
  COMPRESSION_VERDICTS,
  QUESTION_CODES,
  type RedFlag,
  redFlags,
} from '../../src/triage/index.js';
import { CHANGES, flagged, FLAGGED_LIMBS, LEFT_FOOT, RIGHT_GROIN } from './change-samples.js';
import { COMPRESSED } from './compression-samples.js';
import { CHART_SAMPLES, UNCONFIRMED_SAMPLES, VISITS_SAMPLES } from './word-samples-visits.js';
import {
  CIRCULATION_STATEMENTS,
  CONTEXT_STATEMENTS,
  HISTORY_STATEMENTS,
  INSPECTION_STATEMENTS,
  LIMB_HISTORY_STATEMENTS,
} from './field-samples.js';
import { ALL_SOURCES } from './all-sources.js';
import { GROUNDS } from './ground-samples.js';
import { LETTER_STATEMENTS } from './letter-samples.js';
import { BEDSIDE, PRESSURES, WHOLE } from './word-records.js';
import { REPORT_SAMPLES } from './word-samples-report.js';

const UNITS = ['mmHg', 'kPa'] as const;
const pressures = PRESSURES.map((of) => ({ of, reading: readPressures(of) }));
const threats = (['ankle', 'toe', 'tcpo2', 'index'] as const).map((measure) => ({
  side: 'left' as const,
  measure,
  value: measure === 'index' ? 0.4 : 45,
  limit: 50,
  inclusive: measure === 'toe',
}));
const LEG = { kind: 'leg', side: 'left' } as const;
const DOUBTS: readonly ArmsDoubt[] = [
  { code: 'ankle-above-low-arms', side: 'left', index: 1.41, below: 100 },
  { code: 'arms-apart', mmHg: 30 },
  { code: 'arm-pulses', places: ['right radial', 'left radial'] },
  { code: 'low-though-hypertensive', below: 100 },
  { code: 'below-recorded', mmHg: 150 },
];
const field = 'Arm';

const STAGED: Record<SchemeId, readonly (string | number)[]> = {
  acute: ACUTE_CLASSES,
  fontaine: FONTAINE_STAGES,
  rutherford: RUTHERFORD_CATEGORIES,
  wound: WIFI_GRADES,
  ischaemia: WIFI_GRADES,
  infection: WIFI_GRADES,
  wifi: WIFI_STAGES,
};
const schemes = Object.keys(STAGED) as SchemeId[];
const stages = each(schemes, (scheme) => two([scheme], STAGED[scheme]));
const candidates = each(schemes, (scheme) =>
  two([scheme], [STAGED[scheme].slice(0, 2), STAGED[scheme].slice(0, 3)]),
);
const overruled = stages.map(
  ([scheme, stage]): [SchemeId, { stage: string | number; derived?: string | number; why?: string }] => [
    scheme,
    stage === 'I' || stage === 1 ? { stage } : { stage, derived: 1, why: 'xyz' },
  ],
);

export const PART_SAMPLES: Samples<PartMessages> = {
  bedside: {
    named: two(BEDSIDE_TEST_IDS, [undefined, 'Xyz']),
    accuracy: one(BEDSIDE_TEST_IDS.flatMap((id) => BEDSIDE_TESTS[id].accuracy ?? [])),
    read: each(BEDSIDE, (bedside) =>
      two(BEDSIDE_TEST_IDS, SIDES).flatMap(([id, side]) => {
        const reading = readBedside(id, side, bedside);
        return reading ? [[id, reading] as [typeof id, never]] : [];
      }),
    ),
    limitOption: each(BEDSIDE_TEST_IDS, (id) => {
      const { limits } = BEDSIDE_TESTS[id];
      return (limits?.options ?? []).map((option): [number, 's' | 'min' | 'deg'] => [
        option.value,
        limits?.unit ?? 's',
      ]);
    }),
    ratesInShort: one(
      BEDSIDE_TEST_IDS.flatMap((id) =>
        [undefined, 5, 9].flatMap((limit) => rateRanges(BEDSIDE_TESTS[id].falsePositives ?? [], limit)),
      ),
    ),
    rate: one(BEDSIDE_TEST_IDS.flatMap((id) => BEDSIDE_TESTS[id].falsePositives ?? [])),
    correctSide: [['xyz', 'xyz']],
    otherSide: [['xyz', 'xyz']],
    usualLimit: [
      [12.5, 's'],
      [20, 'deg'],
      [10, 'min'],
    ],
    refusedTime: [['xyz', 12.5, 's']],
    elevation: { figure: [['xyz', 12.5]], handle: TEXT, degrees: one([12.5]) },
    hand: { fist: one([30]), figure: [['xyz', 'xyz']], within: one([9]), beyond: one([9]) },
    cold: { usual: [[12, 60]] },
    position: { hold: one([30]) },
    stress: { left: [['1:00', '3:00']], leftOf: one(['3:00']), pace: one([2]), feltAt: [['xyz', 'xyz']] },
    line: one(BEDSIDE.flatMap(bedsideLines)),
  },
  chart: CHART_SAMPLES,
  comparison: {
    title: one(['', '3 May 2026']),
    weight: one(CHANGE_WEIGHTS),
    change: one(CHANGES),
    rest: one([
      { changes: [], notExaminedNow: [LEFT_FOOT, RIGHT_GROIN], notExaminedBefore: [LEFT_FOOT], same: 1 },
      { changes: CHANGES, notExaminedNow: [], notExaminedBefore: [LEFT_FOOT, RIGHT_GROIN], same: 12 },
    ]),
  },
  context: {
    repair: two(['bypass', 'stent'] as const, ['xyz']),
    remove: TEXT,
    said: one(CONTEXT_STATEMENTS),
  },
  flags: {
    heading: one(flagged),
    when: one([
      ...flagged,
      ...[1, 2].map((days): RedFlag => ({
        ...(flagged[0] as RedFlag),
        clock: { code: 'working-days', days },
      })),
    ]),
    action: one(flagged),
    ground: one(GROUNDS),
    because: one([...flagged, ...redFlags(WHOLE)]),
    unchecked: COUNTS,
    called: two(
      CALLED_TEAMS.map((team) => ({ team, at: '2026-05-01T10:30Z', whom: 'xyz' })),
      ['time', 'date'] as const,
    ),
    stillMissing: one(MISSING_CODES.map((code) => [code])),
    ask: one(QUESTION_CODES.map((code) => [code])),
    classOpen: one([
      { atLeast: 'I', atMost: 'III' },
      { atLeast: 'IIb', atMost: 'IIb' },
    ] as const),
    since: one([1, 6.5]),
    target: one([{ code: 'days-to-flow', inHospital: 5, atHome: 14 }] as const),
    cite: one(ALL_SOURCES),
    hours: one([
      [0, 6],
      [6, 24],
    ] as const),
    bar: {
      short: one(flagged),
      changed: two(['raised', 'worsened', 'eased', 'withdrawn'] as const, ['xyz']),
      place: [[1, 2]],
      elapsed: [
        [2, 50, 'now'],
        [0, 4, 'now'],
        [72, 0, 'examination'],
      ],
      callWhom: two([undefined, 'xyz'], ['+44 1632 960000']),
      pageOf: one([undefined, 'xyz']),
      byPathway: one(['xyz']),
      openFor: one(FLAGGED_LIMBS),
    },
  },
  history: {
    limb: one(LIMB_HISTORY_STATEMENTS),
    whole: one(HISTORY_STATEMENTS),
    circulation: one(CIRCULATION_STATEMENTS),
    refusedTime: TEXT,
  },
  inspection: {
    refillSaid: two(['short', 'over-traditional', 'slow'] as const, [2.9, 4.5]),
    limb: one(INSPECTION_STATEMENTS),
  },
  lesson: LESSON_SAMPLES,
  lessonEditor: LESSON_EDITOR_SAMPLES,
  practice: PRACTICE_SAMPLES,
  note: {
    summary: [
      [0, 0, 0],
      [1, 1, 1],
      [9, 2, 3],
    ],
    from: one([['xyz'], ['xyz', 'abc', 'def']]),
    at: [[['xyz', 'def'], 'abc']],
    now: TEXT,
    question: two([1, 2], NOTE_DOUBTS),
    open: one([[1], [1, 3], [1, 2, 3]]),
    record: one([1, 9]),
    recorded: one([1, 9]),
    undo: one([1, 9]),
  },
  letter: { said: one(LETTER_STATEMENTS), sites: { scale: TEXT } },
  pressures: {
    field: two([field], SIDES),
    whyFor: one([field]),
    number: two([82], UNITS),
    pressure: two([82, 'incompressible', ...REASONS] as const, UNITS),
    index: one(pressures.flatMap(({ reading }) => reading.indices)),
    band: one(pressures.flatMap(({ reading }) => reading.indices)),
    sum: two(
      pressures.flatMap(({ reading }) => reading.indices),
      UNITS,
    ),
    sums: one([['a', 'b']]),
    siteAfter: one([field]),
    denominator: two(
      pressures.flatMap(({ reading }) => (reading.denominator ? [reading.denominator.from] : [])),
      UNITS,
    ),
    oneArm: SIDE,
    incompressible: SIDE,
    cuff: one([
      ...CUFF_CAUTIONS.map((code) => ({ limb: LEG, code, rule: 'no-cuff' as const })),
      ...CUFF_RULES.map((rule) => ({ limb: LEG, code: 'graft' as const, rule })),
    ]),
    bothArms: two([DOUBTS.slice(0, 1), DOUBTS], UNITS),
    segment: two(
      pressures.flatMap(({ reading }) => reading.segments),
      UNITS,
    ),
    arm: two(
      pressures.flatMap(({ reading }) => reading.arms),
      UNITS,
    ),
    exercise: two(
      pressures.flatMap(({ reading }) => reading.exercise),
      UNITS,
    ),
    threat: three(['left'], [threats.slice(0, 1), threats], UNITS),
    flatCurve: SIDE,
    indexSince: one(
      [-0.15, 0.2].map((by) => ({
        side: 'left' as const,
        value: 0.8,
        before: 0.95,
        by,
        real: true,
        limit: 0.15,
      })),
    ),
    plotSummary: [
      [
        'left',
        [
          ['arm', 142],
          ['high-thigh', 120],
          ['ankle', 60],
        ],
        'kPa',
      ],
    ],
    refused: [[field, 'xyz', '40.0', 'kPa']],
    said: two(PRESSURES.flatMap(pressureStatements), UNITS),
    method: one(methodStatements({ ankle: 'lower', threat: 'parc-2015' })),
    methodsUsed: one([
      methodStatements({ ankle: 'lower', arm: 'mean' }).map((method, i) => ({ method, byDefault: i > 0 })),
    ]),
  },
  compression: {
    verdict: one(COMPRESSION_VERDICTS),
    lines: one(COMPRESSED),
  },
  exchange: {
    onScale: [['xyz', '3']],
    stage: TEXT,
  },
  staging: {
    stage: stages,
    meaning: stages,
    open: candidates,
    between: two(ACUTE_CLASSES.slice(0, 2), ACUTE_CLASSES.slice(2)),
    timing: one([[0, 6], [6, 24], undefined] as const),
    beside: one([['a', 'b']]),
    from: one([['a', 'b']]),
    risk: one(['very-low', 'low', 'moderate', 'high'] as const),
    benefit: one(['very-low', 'low', 'moderate', 'high'] as const),
    setTo: TEXT,
    overrule: overruled,
    yours: two(['xyz'], [undefined, 'xyz']),
    sentence: TEXT,
    said: one([WHOLE.staging ?? {}]),
  },
  unconfirmed: UNCONFIRMED_SAMPLES,
  visits: VISITS_SAMPLES,
  report: REPORT_SAMPLES,
  whole: {
    part: two(['history', 'pulses'] as const, [0, 1, 3]),
    count: COUNTS,
    open: one(['history', 'pulses'] as const),
    number: [[2.5], [2.5, 2]],
    onset: one(ONSETS),
    summary: [[summaryStatements(WHOLE)]],
  },
};
