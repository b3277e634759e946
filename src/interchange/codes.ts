import { ARTERY_CODES, type ArteryId, type Side } from '../anatomy/index.js';

/*
 * Code systems and codes of the exchange. A published code stands here only where its number and meaning were read in a published text;
 * everything else is named by codes of our own, under identifiers that name nothing but this library and lead to no server.
 */

/** Code systems. Those beginning with `urn:pulse-map:` are this library's own and never change their meaning. */
export const SYSTEMS = {
  /** Fields of the record: their names from the outside inward, without the side, such as `pulses.femoral.thrill`. */
  field: 'urn:pulse-map:field',
  /** Words of the record: the field, a dot, and the word, such as `pulses.femoral.grade.absent`. */
  value: 'urn:pulse-map:value',
  /** Places of the body: a side and what lies there, such as `left femoral`; a side alone; `midline abdominal-aorta`. */
  place: 'urn:pulse-map:place',
  /** What this library derived from the record. Never read back: it follows from the rest. */
  derived: 'urn:pulse-map:derived',
  loinc: 'http://loinc.org',
  snomed: 'http://snomed.info/sct',
  ucum: 'http://unitsofmeasure.org',
  absent: 'http://terminology.hl7.org/CodeSystem/data-absent-reason',
  category: 'http://terminology.hl7.org/CodeSystem/observation-category',
  interpretation: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation',
} as const;

/** Extensions: the first is HL7's (extensions pack 5.2), the others are this library's own. */
export const EXTENSIONS = {
  laterality: 'http://hl7.org/fhir/StructureDefinition/observation-structureLaterality',
  /** Text or a time that FHIR does not take as it is, as a JSON string. */
  exact: 'urn:pulse-map:exact',
} as const;

/** Source: US Core and HL7 core vital-signs profiles; stored LOINC code pages. LOINC is copyright Regenstrief Institute, free of charge. */
export const LOINC = {
  pulse: '44974-4',
  findings: '10208-7',
  vitalSigns: '8716-3',
  systolic: '8480-6',
  diastolic: '8462-4',
  bloodPressure: '85354-9',
  heartRate: '8867-4',
  refill: '44971-0',
} as const;

/** Answers by numeral. Source: US Core example and stored value sets; which list belongs to 44974-4 was not seen, so the scale stands in text. */
export const LOINC_GRADES = ['LA6111-4', 'LA11841-6', 'LA11842-4', 'LA11843-2', 'LA11844-0'] as const;

/** Source: DICOM PS3.16 context groups, FHIR value sets, HL7 vital-signs and Norwegian sets, as printed there. */
export const SNOMED = {
  right: '24028007',
  left: '7771000',
  bilateral: '51440002',
  unilateralRight: '419465000',
  unilateralLeft: '419161000',
  palpation: '113011001',
  doppler: '420717009',
  ankleIndex: '446841001',
  carotid: '69105007',
  carotidRight: '721033002',
  carotidLeft: '721028001',
  upperArmRight: '368209003',
  upperArmLeft: '368208006',
  ankleRight: '6685009',
  ankleLeft: '51636004',
  toe: '29707007',
} as const;

/** An artery or part of a limb that a published code names, with its side where the code has one. */
export interface NamedPlace {
  readonly artery?: ArteryId;
  readonly part?: 'upper-arm' | 'ankle' | 'toe';
  readonly side?: Side;
}

function snomedPlaces(): ReadonlyMap<string, NamedPlace> {
  const arteries = (Object.keys(ARTERY_CODES) as ArteryId[]).flatMap((artery): [string, NamedPlace][] => {
    const { snomed } = ARTERY_CODES[artery];
    if (!snomed) return [];
    const sided = (['right', 'left'] as const).flatMap((side): [string, NamedPlace][] => {
      const code = snomed[side];
      return code ? [[code, { artery, side }]] : [];
    });
    return [[snomed.structure, { artery }], ...sided];
  });
  return new Map([
    ...arteries,
    [SNOMED.carotid, { artery: 'common-carotid' }],
    [SNOMED.carotidRight, { artery: 'common-carotid', side: 'right' }],
    [SNOMED.carotidLeft, { artery: 'common-carotid', side: 'left' }],
    [SNOMED.upperArmRight, { part: 'upper-arm', side: 'right' }],
    [SNOMED.upperArmLeft, { part: 'upper-arm', side: 'left' }],
    [SNOMED.ankleRight, { part: 'ankle', side: 'right' }],
    [SNOMED.ankleLeft, { part: 'ankle', side: 'left' }],
    [SNOMED.toe, { part: 'toe' }],
  ] satisfies [string, NamedPlace][]);
}

/** What each SNOMED CT code of a place means. */
export const SNOMED_PLACES = snomedPlaces();

/** The side each SNOMED CT code of a side means. */
export const SNOMED_SIDES: ReadonlyMap<string, Side> = new Map([
  [SNOMED.right, 'right'],
  [SNOMED.left, 'left'],
  [SNOMED.unilateralRight, 'right'],
  [SNOMED.unilateralLeft, 'left'],
] satisfies [string, Side][]);

/** Units by the code of UCUM. */
export type Unit =
  'mm[Hg]' | 's' | 'min' | 'h' | 'm' | 'cm' | 'mm' | 'deg' | 'Cel' | '/min' | '{ratio}' | '1';

const UNITS: readonly (readonly [RegExp, Unit])[] = [
  [/^circulation\.heartRate$/, '/min'],
  [/^(circulation|pressures)\.(?!.*minutes)/, 'mm[Hg]'],
  [/\.(minutes|rewarm)$|\.cold-provocation\.limit$/, 'min'],
  [/\.hours$/, 'h'],
  [/\.distance$/, 'm'],
  [/\.rednessCm$/, 'cm'],
  [/\.ulcerSizeMm$/, 'mm'],
  [/\.angle$|\.elevation\.limit$/, 'deg'],
  [/\.water$/, 'Cel'],
  [
    /^bedside\..*\.(seconds|white|blue|red|immersed)$|\.felt\.|\.refill$|\.(colour-return|dependent-rubor|venous-filling|hand-arch|arm-stress)\.limit$/,
    's',
  ],
];

/** The unit of a number of the record. */
export function unitOf(code: string): Unit {
  return UNITS.find(([pattern]) => pattern.test(code))?.[1] ?? '1';
}
