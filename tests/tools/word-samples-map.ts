/** Arguments for every entry of the locale that is a function, in the areas of this part. */
import {
  ARTERY_IDS,
  LIMBS,
  limbKey,
  namedPiece,
  PIECES,
  PLACES,
  PULSE_PLACES,
  SIDES,
  SITE_IDS,
  SKIN_PLACES,
  type SkinName,
  VESSELS,
} from '../../src/anatomy/index.js';
import {
  BRUITS,
  COUNTED,
  DOPPLER_SIGNALS,
  type Expectation,
  GRADES,
  MARK_KINDS,
  ONSETS,
  parseExamination,
  type PulseFinding,
  REASONS,
  RULE_CODES,
  SCALE_IDS,
  SCALES,
  VALUE_TYPES,
} from '../../src/examination/index.js';
import { type Assumption, CAUSES, type FindingId, readExamination } from '../../src/localisation/index.js';
import type { Messages } from '../../src/locale/index.js';
import {
  type BeginsStatement,
  beginsStatements,
  feltAt,
  type FirmStatement,
  foundStatements,
  lesionReasons,
  lesionStatements,
  limbLead,
  ruleLeads,
  silenceAt,
  type StoryStatement,
  type VoicesStatement,
} from '../../src/statements/index.js';
import { COUNTS, each, one, type Samples, SIDE, TEXT, three, two } from './word-samples-of.js';
import { READ } from './word-records.js';

const STEPS = Object.values(SCALES).flatMap(({ steps }) => steps);
const PLACE = one(PLACES);
const LIMB = one(LIMBS);
const KEYS = LIMBS.map(limbKey);
const PULSES: readonly (PulseFinding | undefined)[] = [
  undefined,
  ...GRADES.map((grade) => ({ grade })),
  ...REASONS.map((couldNotExamine) => ({ couldNotExamine })),
  ...DOPPLER_SIGNALS.map((doppler) => ({ doppler })),
  { grade: 'bounding', increased: true, thrill: true, expansile: true, note: 'xyz' },
];
const HEARD = [
  undefined,
  ...BRUITS.map((bruit) => ({ bruit })),
  { couldNotExamine: 'cast' as const, note: 'xyz' },
];

const readings = READ.map((examination) => ({ examination, reading: readExamination(examination) }));
const rules = each(readings, ({ examination, reading }) =>
  Object.values(reading.rule).map((rule) => ({ examination, rule })),
);
const networks = each(readings, ({ reading: { network } }) => (network.status === 'read' ? [network] : []));
const details = each(networks, (network) =>
  Object.values(network.detail).filter((detail) => detail !== undefined),
);
const LEADS = [
  ...rules.map(({ rule }) => limbLead(rule)),
  ...each(readings, ({ reading }) => ruleLeads(reading.rule)),
];
const anyPlace = { site: 'femoral', side: 'left' } as const;
const FINDINGS: FindingId[] = [
  ...each(details, ({ evidence }) => evidence.map(({ finding }) => finding)),
  ...DOPPLER_SIGNALS.map((signal) => ({ kind: 'doppler' as const, place: anyPlace, signal })),
  { kind: 'thrill', place: anyPlace },
  ...BRUITS.map((bruit) => ({
    kind: 'bruit' as const,
    place: { site: 'femoral' as const, side: 'left' as const },
    bruit,
  })),
  { kind: 'index', place: anyPlace, value: 0.5 },
  { kind: 'ankle-index', side: 'left', value: 0.5 },
  ...two(LIMBS, ['none', 'calf-upper', 'arm'] as const).map(([limb, muscle]) => ({
    kind: 'pain' as const,
    limb,
    muscle,
  })),
  ...two(['radio-radial', 'radio-femoral'] as const, [...SIDES, 'both', 'none'] as const).map(
    ([of, side]) => ({
      kind: 'delay' as const,
      of,
      side,
    }),
  ),
];
const ASSUMPTIONS: Assumption[] = [
  ...CAUSES.map((cause) => ({ kind: 'cause' as const, cause })),
  ...ARTERY_IDS.map((artery) => ({ kind: 'artery' as const, artery })),
  ...PULSE_PLACES.map(({ site }) => ({ kind: 'palpation' as const, site })),
  ...(['narrowed', 'blocked'] as const).map((through) => ({ kind: 'passage' as const, through })),
  ...(['bruit', 'doppler', 'index', 'pain', 'delay'] as const).map((kind) => ({ kind })),
];
const LESION_STATES = ['narrowed', 'blocked'] as const;

const NAMES: SkinName[] = [
  ...SKIN_PLACES,
  ...two(SIDES, ['upper', 'mid', 'lower'] as const).map(([side, third]) => ({
    region: 'shin' as const,
    side,
    third,
  })),
  { region: 'knee', side: 'left', to: 'toes' },
];
const WHERE = [[], NAMES.slice(0, 1), NAMES.slice(-2), NAMES.slice(0, 4)];

const faulty = [
  [],
  { format: 'pulse-map/9', scale: '0-3' },
  { format: 'pulse-map/1' },
  { format: 'pulse-map/1', scale: 3, pulses: { femoral: { both: {} } }, examiner: 'x'.repeat(5000) },
  {
    format: 'pulse-map/1',
    scale: '0-3',
    pulses: { femoral: { left: { grade: 'normal', couldNotExamine: 'cast' } } },
  },
].flatMap((input) => {
  const parsed = parseExamination(input);
  return parsed.ok ? [] : parsed.faults;
});

/** Everything a value may be expected to be. */
const EXPECTATIONS: readonly Expectation[] = [
  ...RULE_CODES.map((code) => ({ code })),
  ...VALUE_TYPES.map((type) => ({ code: 'type' as const, type })),
  ...COUNTED.flatMap((of) =>
    [1, 7].flatMap((value) =>
      (['at-least', 'at-most', 'more-than'] as const).map((code) => ({ code, value, of })),
    ),
  ),
  { code: 'one-of', values: ['absent', 2, true] },
  { code: 'fields', names: [] },
  { code: 'fields', names: ['right', 'left'] },
  { code: 'pressure', least: 1, most: 300, words: ['pain', 'other'] },
];

export const MAP_SAMPLES: Samples<Messages> = {
  anatomy: {
    place: PLACE,
    vessel: one(VESSELS),
    piece: one(PIECES.map(({ key }) => key)),
    stretches: one([[], PIECES.map(namedPiece)]),
  },
  examination: {
    couldNot: one(REASONS),
    step: one(STEPS),
    fault: one([
      ...faulty,
      ...EXPECTATIONS.map((expected) => ({ code: 'conflict' as const, path: [], found: '', expected })),
    ]),
    unknownEntries: COUNTS,
  },
  localisation: {
    begins: one<BeginsStatement>([
      ...each(networks, ({ limbs }) => Object.values(limbs).flatMap(beginsStatements)),
      { code: 'nothing', probability: 0.4 },
      { code: 'elsewhere', probability: 0.1 },
    ]),
    voices: one<VoicesStatement>([
      { code: 'agree' },
      { code: 'disagree', pieces: ['left popliteal proximal'] },
      { code: 'rule-alone' },
      { code: 'network-alone', pieces: ['left popliteal proximal'] },
    ]),
    downstream: two(
      PIECES.map(({ key }) => key),
      LESION_STATES,
    ).map(([piece, state]) => [{ piece, state, probability: 0.5 }]),
    weight: two(FINDINGS.slice(0, 1), ['for', 'against'] as const).map(([finding, way]) => [
      { finding, way, weight: 1.5, odds: 4.5 },
    ]),
    finding: one(FINDINGS),
    act: one([
      ...PLACES.flatMap((place) => (['feel', 'listen'] as const).map((kind) => ({ kind, place }))),
      ...SIDES.map((side) => ({ kind: 'ankle-pressure' as const, side })),
      { kind: 'arm-pressures' },
    ]),
    firm: one<FirmStatement>([
      { code: 'firm' },
      ...three(
        ['fairly-firm', 'not-firm'] as const,
        [[], ...ASSUMPTIONS.map((a) => [a]), ASSUMPTIONS.slice(0, 2)],
        [0, 1, 3],
      ).map(([code, hangsOn, ungraded], i) => ({
        code,
        hangsOn,
        limb: KEYS[i % KEYS.length] as (typeof KEYS)[number],
        ungraded,
      })),
    ]),
    story: one<StoryStatement>([
      ...CAUSES.map((cause) => ({ code: 'all-open' as const, cause, probability: 0.5 })),
      {
        code: 'lesions',
        cause: 'embolic',
        lesions: LESION_STATES.map((state, i) => ({ piece: PIECES[i + 20]?.key ?? 'left popliteal', state })),
        probability: 0.5,
      },
    ]),
    impossible: [[{ code: 'impossible' }], [{ code: 'any-of', findings: FINDINGS.slice(0, 2) }]],
    where: PLACE,
  },
  map: {
    carryStep: TEXT,
    carrying: TEXT,
    allNormal: COUNTS,
    otherNormal: COUNTS,
    allRecorded: COUNTS,
    pulseOn: one(SCALE_IDS),
    siteTitle: PLACE,
    gradeWord: one(STEPS),
    reasonWord: one(REASONS),
    dopplerWord: one(DOPPLER_SIGNALS),
    next: PLACE,
    siteName: one(SITE_IDS),
    pulseColumn: SIDE,
    bruitColumn: SIDE,
    pulseOf: PLACE,
    bruitOf: PLACE,
    moreOf: PLACE,
    noteOf: two([...SIDES, 'midline'] as const, ['xyz']),
    was: one([undefined, ...STEPS]),
    when: [[undefined], ['2026-05-01T10:30Z']],
    earlierFinding: TEXT,
    changed: each(PULSES, (before) =>
      HEARD.map((heard): [string, undefined, typeof before, typeof heard, '0-3'] => [
        '',
        undefined,
        before,
        heard,
        '0-3',
      ]),
    ),
    earlier: one(['', '1.']),
    sameAsOther: SIDE,
    fillLimb: LIMB,
    clearLimb: LIMB,
    limbFilled: LIMB,
    limbCleared: LIMB,
    limbUnchanged: LIMB,
    collateral: PLACE,
    found: one(three(PULSES, HEARD, SCALE_IDS).flatMap((of) => foundStatements(...of))),
    findings: three(PULSES, HEARD, SCALE_IDS),
    findingShort: three(PULSES, HEARD, SCALE_IDS),
    siteLabel: two(PLACES, ['xyz']),
    listenAt: PLACE,
    recorded: two(PLACES, ['xyz']),
    nothingTo: two(PLACES, ['feel', 'hear'] as const),
    notOnScale: two([4, 9], SCALE_IDS),
    restNormal: COUNTS,
    count: [
      [3, 23, '0-3'],
      [3, 23, 'words'],
    ],
    onsetWord: one(ONSETS),
    radioFemoral: TEXT,
    lesionMark: three(['block', 'narrowing'] as const, ['xyz'], ['', '50']),
    siteTiny: one(SITE_IDS),
    siteShort: one(SITE_IDS),
  },
  marks: {
    kindWord: one(MARK_KINDS),
    kindShort: one(MARK_KINDS),
    placeWord: one(NAMES),
    where: one(WHERE),
    whereWord: one(WHERE),
    mark: three(MARK_KINDS, WHERE, [undefined, 'xyz']),
    recorded: two(MARK_KINDS, WHERE),
    changed: three(MARK_KINDS, WHERE, [undefined, 'xyz']),
    removed: three(MARK_KINDS, WHERE, [1, 3]),
    full: COUNTS,
  },
  reading: {
    percent: one([0, 0.001, 0.4, 0.999, 1]),
    exactPercent: one([0.123]),
    limbTitle: LIMB,
    open: PLACE,
    noBlock: one([0.123]),
    levelsOf: one(KEYS),
  },
  rule: {
    lead: one(LEADS),
    lesion: one(rules.flatMap(({ rule }) => lesionStatements(rule))),
    reason: one(
      rules.flatMap(({ examination, rule }) => rule.lesions.map((one) => lesionReasons(examination, one))),
    ),
    contradiction: one(rules.flatMap(({ rule }) => rule.contradictions)),
    finding: two(READ, PULSE_PLACES.slice(0, 4)).map(([examination, place]) => [feltAt(examination, place)]),
    silence: two(READ.slice(10), PULSE_PLACES).map(([examination, place]) => [silenceAt(examination, place)]),
  },
};
