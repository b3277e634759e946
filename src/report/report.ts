import { type LimbKey, limbKey, LIMBS, type Place, placeKey, PULSE_PLACES } from '../anatomy/index.js';
import {
  type Amendment,
  type Examination,
  type PressureUnit,
  type RecordStatus,
  type ScaleId,
  statusOf,
  unstatedPlaces,
} from '../examination/index.js';
import { methodOf, type PressureReading, readPressures } from '../pressures/index.js';
import { sidesWithTissueLoss, type StagingSettings } from '../staging/index.js';
import {
  type FoundStatement,
  type PressureNote,
  pressureNotes,
  type PressureVerdict,
  pressureVerdicts,
  sourcesOf,
} from '../statements/index.js';
import { triage, type Triage, triageSettings, uncheckedWords } from '../triage/index.js';
import { type Conclusion, conclusionOf } from './conclusion.js';
import { type BodyPart, itemsOf, partOf, type ReportItem } from './items.js';
import type { FindingPath } from './paths.js';
import { type StageReport, stagesOf } from './stages.js';

export interface ReportOptions {
  /** An earlier record of the same patient, which conclusion and indices take into account. */
  readonly earlier?: Examination | undefined;
  /** Limits of the page, as of its pathway; the record's own go before them. */
  readonly settings?: Partial<StagingSettings> | undefined;
}

/** Sites of one part of the body in which the very same was found, by finger and by ear. */
export interface SiteGroup {
  readonly places: readonly Place[];
  readonly statements: readonly FoundStatement[];
  readonly from: readonly FindingPath[];
}

/** What was found on one part of the body. Sites run from proximal to distal. */
export interface PartReport {
  readonly at: BodyPart;
  /** Whether anything here is not as usual, by itself, by a flag or by the conclusion. */
  readonly affected: boolean;
  /** Sites at which anything is not as usual, with all that was found there; alike ones together. */
  readonly sites: readonly SiteGroup[];
  /** What is not as usual otherwise, and what is neither: times, sizes, the examiner's words. */
  readonly others: readonly ReportItem[];
  /** Normal findings that a reader must know. */
  readonly negatives: readonly ReportItem[];
  /** Every other normal finding, the negatives among them; alike sites together. */
  readonly normals: {
    readonly count: number;
    readonly sites: readonly SiteGroup[];
    readonly others: readonly ReportItem[];
  };
}

/** Pulse sites of one part of the body that nobody felt. */
export interface Unfelt {
  readonly at: BodyPart;
  readonly places: readonly Place[];
  /** Whether these are all pulse sites of the part. */
  readonly all: boolean;
}

export interface PressureReport {
  readonly unit: PressureUnit;
  /** Every pressure and what goes with it, as recorded. */
  readonly items: readonly ReportItem[];
  readonly reading: PressureReading;
  readonly verdicts: readonly PressureVerdict[];
  readonly notes: readonly PressureNote[];
  readonly sources: readonly string[];
}

/**
 * The parts of a finished examination, for a report as for a letter: data, which a language says. Whatever stands in it comes from the
 * record or from what the library reads in it; what was not recorded is not in it, but for the list of what was not felt.
 */
export interface Report {
  readonly examinedAt?: string;
  readonly examiner?: string;
  readonly scale: ScaleId;
  /** How the record stands; missing where nobody said. */
  readonly status?: RecordStatus;
  readonly amendments: readonly Amendment[];
  /** Flags, the gravest first, with what they still ask. */
  readonly triage: Triage;
  readonly conclusion: Conclusion;
  /** Parts of the body of which anything is said; those a flag or the conclusion names first, then the other affected ones. */
  readonly parts: readonly PartReport[];
  /** Of the patient as a whole: history, what is known, delays and marks on the skin. */
  readonly background: {
    /** Not as usual, or neither. */
    readonly told: readonly ReportItem[];
    readonly normal: readonly ReportItem[];
  };
  readonly tests: readonly ReportItem[];
  readonly pressures?: PressureReport;
  /** Methods and limits that were chosen. */
  readonly method: readonly ReportItem[];
  readonly stages: readonly StageReport[];
  /** What the clinician set against a derived stage, as recorded. */
  readonly ownStages: readonly ReportItem[];
  /** What could not be examined, each with its reason. */
  readonly couldNot: readonly ReportItem[];
  readonly unfelt: readonly Unfelt[];
  readonly calls: readonly ReportItem[];
  /** Words of a later version that nothing here weighs. */
  readonly unchecked: number;
}

/** Legs first, since most examinations are about them. */
const PARTS: readonly BodyPart[] = [
  ...(['leg', 'arm'] as const).flatMap((kind) => LIMBS.filter((limb) => limb.kind === kind).map(limbKey)),
  'trunk',
  ...LIMBS.filter(({ kind }) => kind === 'head').map(limbKey),
];

/** Sites in which the very same was found, together in the place of the first. */
function grouped(items: readonly ReportItem[]): SiteGroup[] {
  const sites = new Map<string, SiteGroup>();
  for (const { line, from } of items) {
    if (line.code !== 'site') continue;
    const key = placeKey(line.place);
    const before = sites.get(key);
    sites.set(key, {
      places: [line.place],
      statements: [...(before?.statements ?? []), ...line.statements],
      from: [...(before?.from ?? []), ...from],
    });
  }
  const groups = new Map<string, SiteGroup>();
  for (const site of sites.values()) {
    const key = JSON.stringify(site.statements);
    const before = groups.get(key);
    groups.set(key, {
      places: [...(before?.places ?? []), ...site.places],
      statements: site.statements,
      from: [...(before?.from ?? []), ...site.from],
    });
  }
  return [...groups.values()];
}

const isSite = ({ line }: ReportItem): boolean => line.code === 'site';
/** The place an item is about, as its key; none where it is about no site. */
const placeOf = ({ line }: ReportItem): string[] => (line.code === 'site' ? [placeKey(line.place)] : []);
const isNormal = ({ weight }: ReportItem): boolean => weight === 'normal';
const isTold = ({ weight }: ReportItem): boolean => weight === 'abnormal' || weight === 'fact';

function partReport(at: BodyPart, all: readonly ReportItem[], named: boolean): PartReport | undefined {
  const own = all.filter((item) => item.at === at && item.weight !== 'could-not');
  if (!own.length && !named) return undefined;
  const told = own.filter(isTold);
  const places = new Set(told.flatMap(placeOf));
  const atTold = (item: ReportItem): boolean => placeOf(item).some((key) => places.has(key));
  const normal = own.filter((item) => isNormal(item) && !atTold(item));
  return {
    at,
    affected: named || own.some(({ weight }) => weight === 'abnormal'),
    sites: grouped(own.filter(atTold)),
    others: told.filter((item) => !isSite(item)),
    negatives: normal.filter(({ telling }) => telling),
    normals: {
      count: normal.length,
      sites: grouped(normal),
      others: normal.filter((item) => !isSite(item)),
    },
  };
}

function pressureReport(
  examination: Examination,
  items: readonly ReportItem[],
  { earlier, settings = {} }: ReportOptions,
): PressureReport | undefined {
  const { pressures } = examination;
  if (!pressures || !items.length) return undefined;
  const reading = readPressures(pressures, methodOf(examination, settings.pressures));
  const wounds = sidesWithTissueLoss(examination, settings);
  return {
    unit: pressures.unit ?? 'mmHg',
    items,
    reading,
    verdicts: pressureVerdicts(pressures, reading, wounds, earlier?.pressures),
    notes: pressureNotes(
      examination,
      reading,
      triageSettings(settings.triage).armsDoubt,
      examination.method,
      settings.pressures,
    ),
    sources: sourcesOf({ code: 'pressures', pressures, settings: reading.settings }),
  };
}

function unfelt(examination: Examination): Unfelt[] {
  const missing = unstatedPlaces(examination);
  return PARTS.flatMap((at): Unfelt[] => {
    const places = missing.filter((place) => partOf(place) === at);
    const all = PULSE_PLACES.filter((place) => partOf(place) === at).length === places.length;
    return places.length ? [{ at, places, all }] : [];
  });
}

/**
 * What a finished examination says, put in the order in which one reads it: flags, conclusion, findings by exception, tests, pressures,
 * stages, and what was not examined.
 * @param examination a record that was read
 */
export function reportOf(examination: Examination, options: ReportOptions = {}): Report {
  const { settings = {} } = options;
  const urgent = triage(examination, settings);
  const flagged = urgent.flags.flatMap(({ limb }): LimbKey[] => (limb ? [limbKey(limb)] : []));
  const conclusion = conclusionOf(examination, flagged, options.earlier);
  const named = [...new Set<BodyPart>([...flagged, ...conclusion.limbs.map(({ limb }) => limb)])];
  const items = itemsOf(examination);
  const ofBody = [
    ...items.history,
    ...items.context,
    ...items.inspection,
    ...items.marks,
    ...items.sites,
    ...items.delays,
  ];
  const whole = ofBody.filter(({ at }) => at === undefined);
  const parts = [...new Set([...named, ...PARTS])].flatMap(
    (at) => partReport(at, ofBody, named.includes(at)) ?? [],
  );
  const pressures = pressureReport(
    examination,
    items.pressures.filter(({ line }) => line.code !== 'method'),
    options,
  );
  const { examinedAt, examiner, scale } = examination;
  const status = statusOf(examination);
  return {
    ...(examinedAt && { examinedAt }),
    ...(examiner && { examiner }),
    scale,
    ...(status && { status }),
    amendments: examination.amendments ?? [],
    triage: urgent,
    conclusion,
    parts: [...parts.filter(({ affected }) => affected), ...parts.filter(({ affected }) => !affected)],
    background: { told: whole.filter(isTold), normal: whole.filter(isNormal) },
    tests: items.bedside.filter(({ weight }) => weight !== 'could-not'),
    ...(pressures && { pressures }),
    method: items.pressures.filter(({ line }) => line.code === 'method'),
    stages: stagesOf(examination, settings),
    ownStages: items.staging,
    couldNot: [...ofBody, ...items.bedside, ...items.pressures].filter(
      ({ weight }) => weight === 'could-not',
    ),
    unfelt: unfelt(examination),
    calls: items.calls,
    unchecked: uncheckedWords(examination),
  };
}
