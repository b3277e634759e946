/** Every statement about inspection, history, circulation and what is known beforehand: each field with each of its values. */
import { SIDES, VESSELS } from '../../src/anatomy/index.js';
import {
  ACCESS_KINDS,
  ACCESS_SIGNS,
  AGE_BANDS,
  ANEURYSM_PLACES,
  ARM_AMPUTATIONS,
  ARM_LEVELS,
  type ArmHistory,
  type ArmInspection,
  ARTERIAL_DEVICES,
  type Circulation,
  type Context,
  DIGIT_STATES,
  DIGITS,
  FALSE_ANEURYSM_SIGNS,
  GANGRENE,
  GANGRENE_EXTENTS,
  GRAFT_INFECTION_SIGNS,
  GRAFT_PULSES,
  GRAFT_ROUTES,
  HAIR_STATES,
  INFECTION_SIGNS,
  INJURY_PLACES,
  INJURY_SIGNS,
  LEG_AMPUTATIONS,
  LEG_CLAUDICATION,
  LEG_LEVELS,
  type LegInspection,
  LIMB_ONSETS,
  LYMPH_NODES,
  LYMPHOEDEMA,
  MECHANISMS,
  MEDICINES,
  MONOFILAMENT,
  MOVEMENTS,
  MUSCLE_STATES,
  NAIL_STATES,
  OEDEMA_KINDS,
  type PatientHistory,
  REASONS,
  RHYTHMS,
  RISK_FACTORS,
  SENSATIONS,
  SEVERITIES,
  SKIN_COLOURS,
  SMOKING,
  SYMPTOMS,
  SYMPTOMS_ELSEWHERE,
  SYSTEMIC_SIGNS,
  TEMPERATURES,
  THROMBOSIS_SIGNS,
  ULCER_CAUSES,
  ULCER_DEPTHS,
  ULCER_PLACES,
  VENOUS_SIGNALS,
  VERTEBRAL_FLOWS,
} from '../../src/examination/index.js';
import {
  circulationStatements,
  contextStatements,
  historyStatements,
  inspectionStatements,
  limbHistoryStatements,
} from '../../src/statements/index.js';

const YES_NO = [true, false];

/** A record for each value of one field. */
const field = <K extends string, V>(key: K, values: readonly V[]): Record<K, V>[] =>
  values.map((value) => ({ [key]: value }) as Record<K, V>);
/** The same for a list: each word alone, none of them, and all. */
const listed = <K extends string, V>(key: K, values: readonly V[]): Record<K, readonly V[]>[] =>
  field(key, [...values.map((value) => [value]), [], values]);

const INSPECTIONS: readonly (LegInspection | ArmInspection)[] = [
  ...field('couldNotExamine', REASONS),
  ...field('colour', SKIN_COLOURS),
  ...field('temperature', TEMPERATURES),
  ...LEG_LEVELS.map((temperatureLevel) => ({ temperature: 'cool' as const, temperatureLevel })),
  ...ARM_LEVELS.map((temperatureLevel) => ({ temperature: 'cold' as const, temperatureLevel })),
  ...field('hair', HAIR_STATES),
  ...field('nails', NAIL_STATES),
  ...field('muscle', MUSCLE_STATES),
  ...field('oedema', OEDEMA_KINDS),
  ...field('ulcer', ULCER_DEPTHS),
  ...ULCER_PLACES.map((ulcerPlace) => ({ ulcer: 'deep' as const, ulcerPlace })),
  ...field('ulcerCause', ULCER_CAUSES),
  ...field('ulcerSizeMm', [1, 25]),
  ...field('gangrene', GANGRENE),
  ...GANGRENE_EXTENTS.map((gangreneExtent) => ({ gangrene: 'wet' as const, gangreneExtent })),
  ...listed('infection', INFECTION_SIGNS),
  ...field('rednessCm', [0.5, 2]),
  ...field('deepInfection', YES_NO),
  ...field('probeToBone', YES_NO),
  ...field('charcotSuspected', YES_NO),
  ...listed('systemic', SYSTEMIC_SIGNS),
  ...field('refill', [1, 4.5]),
  ...field('movement', MOVEMENTS),
  ...field('sensation', SENSATIONS),
  { deficitKnown: true },
  ...field('stretchPain', YES_NO),
  ...field('painOutOfProportion', YES_NO),
  { reperfused: true },
  ...listed('injurySigns', INJURY_SIGNS),
  ...listed('falseAneurysmSigns', FALSE_ANEURYSM_SIGNS),
  ...listed('thrombosisSigns', THROMBOSIS_SIGNS),
  ...DIGITS.flatMap((digit) => DIGIT_STATES.map((state) => ({ digits: { [digit]: state } }))),
  ...field('venousDoppler', VENOUS_SIGNALS),
  ...field('lymphNodes', LYMPH_NODES),
  ...field('lymphoedema', LYMPHOEDEMA),
  ...field('vertebralFlow', VERTEBRAL_FLOWS),
  ...field('monofilament', MONOFILAMENT),
  ...field('varices', YES_NO),
  ...field('pigment', YES_NO),
  { note: 'xyz' },
];

const LIMB_HISTORIES: readonly ArmHistory[] = [
  ...field('symptom', SYMPTOMS),
  ...field('distance', [150.5, 200]),
  ...field('severity', SEVERITIES),
  ...field('onset', LIMB_ONSETS),
  ...field('hours', [1, 5, 72]),
  ...field('onsetAt', ['2026-05-01T10:30Z', '2026-05-01T10:30+02:00']),
  { suddenPain: true },
  { newComplaint: true },
  { coldFingers: true },
  { dizzyOnUse: true },
  { chestPainOnUse: true },
  { note: 'xyz' },
];

const HISTORIES: readonly PatientHistory[] = [
  ...field('rhythm', RHYTHMS),
  ...listed('elsewhere', SYMPTOMS_ELSEWHERE),
  ...listed('risks', RISK_FACTORS),
  { operations: 'xyz' },
];

const CIRCULATIONS: readonly Circulation[] = [
  ...field('shock', YES_NO),
  { systolic: 120, diastolic: 80 },
  { systolic: 90 },
  { diastolic: 60 },
  { heartRate: 110 },
];

const each = <K extends string, V>(key: K, values: readonly V[]) =>
  values.flatMap((value) => SIDES.map((side) => ({ [key]: { [side]: value } })));
const FEMORAL = { artery: 'common-femoral', side: 'left', kind: 'bypass' } as const;

const CONTEXTS: readonly Context[] = [
  ...field('ageBand', AGE_BANDS),
  ...field('diabetes', YES_NO),
  ...field('smoking', SMOKING),
  ...field('mechanism', MECHANISMS),
  ...each('injury', INJURY_PLACES),
  ...each('legClaudication', LEG_CLAUDICATION),
  ...each('armClaudication', ['none', 'arm'] as const),
  ...each('legAmputation', LEG_AMPUTATIONS),
  ...each('armAmputation', ARM_AMPUTATIONS),
  ...each('absentFromBirth', [['dorsalis-pedis'], ['dorsalis-pedis', 'posterior-tibial']] as const),
  ...listed('radialHarvested', SIDES),
  ...field('revascularisations', [[], ...VESSELS.map((vessel) => [{ ...vessel, kind: 'stent' as const }])]),
  ...GRAFT_ROUTES.map((route) => ({ revascularisations: [{ ...FEMORAL, route }] })),
  ...GRAFT_PULSES.map((graftPulse) => ({ revascularisations: [{ ...FEMORAL, graftPulse }] })),
  ...listed('infectionSigns', GRAFT_INFECTION_SIGNS).map((signs) => ({
    revascularisations: [{ ...FEMORAL, ...signs }],
  })),
  { aneurysms: [] },
  ...ANEURYSM_PLACES.map((place) => ({ aneurysms: [{ place }, { place, side: 'left' as const }] })),
  { access: [] },
  ...ACCESS_KINDS.map((kind) => ({ access: [{ side: 'right' as const, kind }] })),
  ...listed('signs', ACCESS_SIGNS).map((signs) => ({
    access: [{ side: 'left' as const, kind: 'fistula' as const, ...signs }],
  })),
  { devices: [] },
  ...ARTERIAL_DEVICES.flatMap((kind) =>
    SIDES.map((side) => ({ devices: [{ limb: 'arm' as const, side, kind }] })),
  ),
  { coldInjury: { leg: { left: {} }, arm: { right: { hours: 6.5 } } } },
  ...listed('medicines', MEDICINES),
];

export const INSPECTION_STATEMENTS = (['leg', 'arm'] as const).flatMap((kind) =>
  INSPECTIONS.flatMap((limb) => inspectionStatements(limb, kind)),
);
export const LIMB_HISTORY_STATEMENTS = LIMB_HISTORIES.flatMap(limbHistoryStatements);
export const HISTORY_STATEMENTS = HISTORIES.flatMap(historyStatements);
export const CIRCULATION_STATEMENTS = CIRCULATIONS.flatMap(circulationStatements);
export const CONTEXT_STATEMENTS = CONTEXTS.flatMap(contextStatements);
