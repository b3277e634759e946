/** Arguments for every entry of the locale that is a function, in the areas of this part. */
import {
  LIMBS,
  limbKey,
  namedPiece,
  PIECES,
  PLACES,
  PULSE_PLACES,
  SIDES,
  SITE_IDS,
  PLATE_VIEWS,
  platePlaces,
  SKIN_PLACES,
  type SkinName,
  VESSELS,
} from '../../src/anatomy/index.js';
import {
  BRUITS,
  COUNTED,
  DOPPLER_SIGNALS,
  emptyExamination,
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
  unstatedPortions,
  VALUE_TYPES,
  VERTEBRAL_FLOWS,
} from '../../src/examination/index.js';
import {
  type ActId,
  type Assumption,
  CAUSES,
  type FindingId,
  readExamination,
  type Whereabouts,
  whereaboutsOf,
} from '../../src/localisation/index.js';
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
  NATURES,
  type NextStatement,
  type OccludedStatement,
  occludedStatements,
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
const WHERES: readonly Whereabouts[] = [
  ...each(networks, (network) => LIMBS.flatMap((limb) => whereaboutsOf(network, limbKey(limb)) ?? [])),
  ...(['absent', 'reduced'] as const).flatMap((pulse): Whereabouts[] => {
    const left = { limb: 'left leg', pieces: [], probability: 0.5, pulse } as const;
    const femoral = { site: 'femoral', side: 'left' } as const;
    return [
      { ...left, above: femoral, below: [] },
      { ...left, below: [femoral] },
      { ...left, below: [] },
    ];
  }),
];
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
  ...LIMBS.flatMap((limb) => [
    { kind: 'digit-index' as const, limb, value: 0.4 },
    { kind: 'wound' as const, limb },
    { kind: 'numbness' as const, limb },
    { kind: 'skin' as const, limb, temperature: 'warm' as const },
    { kind: 'skin' as const, limb, temperature: 'cold' as const, level: 'knee' as const },
  ]),
  { kind: 'incompressible', place: anyPlace },
  ...two(SIDES, [true, false]).map(([side, falls]) => ({ kind: 'exercise' as const, side, falls })),
  ...three(SIDES, ['radial', 'ulnar'] as const, [true, false]).map(([side, artery, fills]) => ({
    kind: 'hand-arch' as const,
    side,
    artery,
    fills,
  })),
  ...two(['radio-radial', 'radio-femoral'] as const, [...SIDES, 'both', 'none'] as const).map(
    ([of, side]) => ({
      kind: 'delay' as const,
      of,
      side,
    }),
  ),
  { kind: 'graft-pulse', vessel: { artery: 'popliteal', side: 'left' }, pulse: 'present' },
  { kind: 'graft-pulse', vessel: { artery: 'popliteal', side: 'right' }, pulse: 'absent' },
  ...two(SIDES, VERTEBRAL_FLOWS).map(([side, flow]) => ({ kind: 'vertebral' as const, side, flow })),
  ...two(SIDES, ['dizzy', 'chest-pain'] as const).map(([side, symptom]) => ({
    kind: 'steal' as const,
    side,
    symptom,
  })),
];
const ASSUMPTIONS: Assumption[] = [
  ...CAUSES.map((cause) => ({ kind: 'cause' as const, cause })),
  ...PULSE_PLACES.map(({ site }) => ({ kind: 'palpation' as const, site })),
  ...(['bruit', 'doppler', 'index', 'pain', 'delay', 'seen'] as const).map((kind) => ({ kind })),
];
const ACTS: ActId[] = [
  ...PLACES.flatMap((place) => (['feel', 'listen'] as const).map((kind) => ({ kind, place }))),
  ...PULSE_PLACES.map((place) => ({ kind: 'doppler' as const, place })),
  ...two(['ankle-pressure', 'toe-pressure'] as const, SIDES).map(([kind, side]) => ({ kind, side })),
  ...(['radio-radial', 'radio-femoral'] as const).map((of) => ({ kind: 'delay' as const, of })),
  ...LIMBS.map((limb) => ({ kind: 'pain-level' as const, limb })),
  { kind: 'arm-pressures' },
  { kind: 'onset' },
];
const LESION_STATES = ['narrowed', 'blocked'] as const;

const NAMES: SkinName[] = [
  ...SKIN_PLACES,
  ...PLATE_VIEWS.flatMap(platePlaces).map(({ name }) => name),
  ...two(SIDES, ['upper', 'mid', 'lower'] as const).map(([side, third]): SkinName => {
    return { region: 'shin', side, third };
  }),
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
  form: { toState: one([['xyz'], ['xa', 'xb', 'xc', 'xd', 'xe', 'xf']]) },
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
    occluded: one<OccludedStatement>([
      ...each(networks, ({ limbs }) => Object.values(limbs).flatMap(occludedStatements)),
      ...(['absent', 'reduced'] as const).map((pulse) => ({
        code: 'entry' as const,
        pieces: ['left popliteal proximal' as const],
        pulse,
        probability: 0.5,
      })),
      { code: 'open', probability: 0.4 },
      { code: 'elsewhere', probability: 0.1 },
    ]),
    between: one(WHERES),
    headline: one(WHERES),
    stretch: one(WHERES),
    further: two(LESION_STATES, ['above', 'beyond'] as const).map(([state, where]) => [
      {
        pieces: ['left external-iliac' as const],
        artery: 'external-iliac' as const,
        level: 'aorto-iliac' as const,
        state,
        where,
        probability: 0.5,
      },
    ]),
    notExcluded: one([
      ['emboli'],
      ['small-arteries', 'injury'],
      ['small-arteries', 'emboli', 'injury', 'exertion'],
    ] as const),
    conflict: one([{ finding: FINDINGS[0] as FindingId, with: FINDINGS[1] as FindingId, probability: 0.01 }]),
    nature: one(NATURES.map((nature) => ({ nature, probability: 0.6 }))),
    weight: two(FINDINGS.slice(0, 1), ['for', 'against'] as const).map(([finding, way]) => [
      { finding, way, weight: 1.5, odds: 4.5 },
    ]),
    finding: one(FINDINGS),
    act: one(ACTS),
    next: one<NextStatement>([
      ...ACTS.slice(0, 2).map((act) => ({ code: 'act' as const, act })),
      ...(['circulation', 'swelling', 'access', 'from-birth'] as const).map((question) => ({
        code: 'settle' as const,
        question,
      })),
      { code: 'enough' },
    ]),
    flagAsks: [[]],
    firmness: one(['firm', 'fairly-firm', 'not-firm'] as const),
    firm: one<FirmStatement>([
      ...three(
        ['firm', 'fairly-firm', 'not-firm'] as const,
        [[], ...ASSUMPTIONS.map((a) => [a]), ASSUMPTIONS.slice(0, 2)],
        [0, 1, 3],
      ).map(([code, hangsOn, ungraded], i) => ({
        code,
        held: 4,
        tried: 6,
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
    portionNormal: two(
      unstatedPortions(emptyExamination()).map(({ portion }) => portion),
      [1, 3],
    ),
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
    when: [[undefined], ['2026-05-01T10:30Z']],
    earlierFinding: TEXT,
    changed: each(PULSES, (before) =>
      HEARD.map((heard): [undefined, undefined, typeof before, typeof heard, '0-3'] => [
        undefined,
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
    before: three(PULSES, HEARD, SCALE_IDS),
    findings: three(PULSES, HEARD, SCALE_IDS),
    findingShort: three(PULSES, HEARD, SCALE_IDS),
    siteLabel: two(PLACES, ['xyz']),
    listenAt: PLACE,
    recorded: two(PLACES, ['xyz']),
    nothingTo: two(PLACES, ['feel', 'hear', 'expand'] as const),
    notOnScale: two([4, 9], SCALE_IDS),
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
    otherDigits: [[]],
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
