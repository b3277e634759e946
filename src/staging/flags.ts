import { PULSE_PLACES, type Side, SIDES } from '../anatomy/index.js';
import { type Examination, pulseAt } from '../examination/index.js';
import { limbThreats, type PressureSettings, pressureSettings } from '../pressures/index.js';
import { type AcuteSettings, acuteStageOf, ACUTE_TIMING, DEFAULT_ACUTE_SETTINGS } from './acute.js';
import { finalStage, given, ground, type Ground, type MissingCode } from './derived.js';
import { type LimbFindings, groundAt, limbFindings, type StagedKind, woundGrounds } from './findings.js';
import { INFECTION_BOUNDS } from './infection.js';

/** How soon someone must see it: at once, the same day, within days. */
export const URGENCIES = ['now', 'today', 'soon'] as const;
export type Urgency = (typeof URGENCIES)[number];

/** What a flag warns of, in the order in which flags of one urgency are shown. */
export const FLAG_CODES = [
  'acute-limb-irreversible',
  'acute-limb-threatened',
  'injured-limb-pulseless',
  'dissection',
  'wet-gangrene',
  'spreading-infection',
  'fixed-mottling',
  'tense-muscle',
  'expansile-mass',
  'acute-limb',
  'weakness',
  'sensory-loss',
  'no-doppler',
  'deep-infection',
  'chronic-limb-threat',
  'threatening-pressure',
] as const;
export type FlagCode = (typeof FLAG_CODES)[number];

/** One red flag: what it warns of, how urgent it is, which limb, and what raised it. */
export interface RedFlag {
  readonly code: FlagCode;
  readonly urgency: Urgency;
  /** Missing where it is not about one limb. */
  readonly limb?: { readonly kind: StagedKind; readonly side: Side };
  readonly grounds: readonly Ground[];
  /** What would tell more. */
  readonly missing: readonly MissingCode[];
  /** Hours within which blood flow should be restored, where the class names them. */
  readonly hours?: readonly [number, number];
}

/** Choices that flags depend on, where sources disagree. */
export interface FlagSettings extends AcuteSettings {
  readonly pressures?: Partial<PressureSettings>;
}

type Raised = Omit<RedFlag, 'limb' | 'missing'> & { missing?: readonly MissingCode[] };

const absentGrounds = ({ absent }: LimbFindings): Ground[] =>
  absent.map((place) => groundAt('pulse-absent', place));

function acuteFlags(examination: Examination, findings: LimbFindings, settings: FlagSettings): Raised[] {
  if (findings.acute !== 'yes') return [];
  const stage = acuteStageOf(examination, findings, settings);
  const certain = finalStage(stage);
  const atLeast = certain ?? stage.atLeast;
  const told = given(findings.symptom === 'tissue-loss', ground('symptom', { value: 'tissue-loss' }));
  const grounds = [...stage.grounds, ...told, ...findings.signs];
  const { missing } = stage;
  if (certain === 'III') return [{ code: 'acute-limb-irreversible', urgency: 'now', grounds, missing }];
  const hours = atLeast && ACUTE_TIMING[atLeast].hours;
  if (atLeast === 'IIa' || atLeast === 'IIb') {
    return [{ code: 'acute-limb-threatened', urgency: 'now', grounds, missing, ...(hours && { hours }) }];
  }
  // A viable limb can wait hours; one whose class is still open cannot be taken for viable.
  return [
    {
      code: 'acute-limb',
      urgency: certain === 'I' ? 'today' : 'now',
      grounds,
      missing,
      ...(certain === 'I' && hours && { hours }),
    },
  ];
}

/** Signs that count whatever the onset; the acute flags say the same with more, so they stand in for these. */
function signFlags(findings: LimbFindings): Raised[] {
  const { sensation, movement, arterial, acute, inspection } = findings;
  if (acute === 'yes') return [];
  const ischaemic =
    findings.absent.length > 0 ||
    arterial === 'inaudible' ||
    inspection.temperature === 'cold' ||
    inspection.colour === 'pale';
  const urgency: Urgency = ischaemic && acute === 'unknown' ? 'now' : 'today';
  const flags: Raised[] = [];
  if (movement === 'weak' || movement === 'paralysed') {
    const grounds = [ground('movement', { value: movement }), ...absentGrounds(findings)];
    flags.push({ code: 'weakness', urgency, grounds, missing: given(acute === 'unknown', 'onset') });
  }
  if (sensation !== undefined && sensation !== 'normal') {
    const grounds = [ground('sensation', { value: sensation }), ...absentGrounds(findings)];
    flags.push({ code: 'sensory-loss', urgency, grounds, missing: given(acute === 'unknown', 'onset') });
  }
  if (arterial === 'inaudible') {
    const grounds = [ground('arterial', { value: arterial }), ...absentGrounds(findings)];
    flags.push({
      code: 'no-doppler',
      urgency: acute === 'unknown' ? 'now' : 'today',
      grounds,
      missing: given(acute === 'unknown', 'onset'),
    });
  }
  return flags;
}

function skinFlags({ inspection, acute }: LimbFindings): Raised[] {
  const { gangrene, gangreneExtent, colour, muscle, infection, systemic, deepInfection, rednessCm } =
    inspection;
  const flags: Raised[] = [];
  if (gangrene === 'wet') {
    const grounds = [ground('gangrene', { value: gangrene, extent: gangreneExtent })];
    flags.push({ code: 'wet-gangrene', urgency: 'now', grounds });
  }
  if (colour === 'fixed-mottled') {
    flags.push({
      code: 'fixed-mottling',
      urgency: 'now',
      grounds: [ground('colour', { value: colour })],
    });
  }
  if (muscle === 'tense' || (muscle === 'tender' && acute === 'yes')) {
    flags.push({
      code: 'tense-muscle',
      urgency: 'now',
      grounds: [ground('muscle', { value: muscle })],
    });
  }
  const local = (infection?.length ?? 0) > 0 || deepInfection === true;
  const systemicGround = ground('systemic', { signs: (systemic ?? []).join(' ') });
  if (local && (systemic?.length ?? 0) >= INFECTION_BOUNDS.systemicSigns) {
    flags.push({ code: 'spreading-infection', urgency: 'now', grounds: [systemicGround] });
  } else if (deepInfection || (rednessCm ?? 0) > INFECTION_BOUNDS.moderateOver) {
    const grounds = [
      ...given(deepInfection, ground('deep-infection')),
      ...given(rednessCm !== undefined, ground('redness', { cm: rednessCm })),
    ];
    flags.push({ code: 'deep-infection', urgency: 'today', grounds });
  }
  return flags;
}

function chronicFlags(examination: Examination, findings: LimbFindings, settings: FlagSettings): Raised[] {
  if (findings.acute === 'yes' || findings.kind === 'arm') return [];
  const { symptom, tissueLoss, side } = findings;
  const { pressures = {} } = examination;
  const threats = limbThreats(pressures, side, tissueLoss, pressureSettings(settings.pressures ?? {})).map(
    ({ measure, value, limit }) => ground(`${measure}-threat`, { value, limit }),
  );
  if (!tissueLoss && symptom !== 'rest-pain') {
    return given(threats.length, {
      code: 'threatening-pressure',
      urgency: 'soon',
      grounds: threats,
    } as const);
  }
  const pain = given(symptom === 'rest-pain', ground('symptom', { value: symptom }));
  return [
    {
      code: 'chronic-limb-threat',
      urgency: 'soon',
      grounds: [...pain, ...woundGrounds(findings), ...threats],
      missing: [
        ...given(findings.acute === 'unknown', 'onset'),
        ...given(!threats.length && pressures.toe?.[side] === undefined, 'toe'),
      ],
    },
  ];
}

function injuryFlags(examination: Examination, findings: LimbFindings): Raised[] {
  const { mechanism, injury } = examination.context ?? {};
  const place = injury?.[findings.side];
  const arm =
    place !== undefined && ['shoulder', 'upper-arm', 'elbow', 'forearm', 'wrist-hand'].includes(place);
  const here = place !== undefined && arm === (findings.kind === 'arm');
  if (mechanism !== 'injury' || !here || !findings.absent.length) return [];
  return [
    {
      code: 'injured-limb-pulseless',
      urgency: 'now',
      grounds: [ground('injury', { place }), ...absentGrounds(findings)],
    },
  ];
}

function generalFlags(examination: Examination): RedFlag[] {
  const expansile = PULSE_PLACES.filter((place) => pulseAt(examination, place)?.expansile);
  const flags: RedFlag[] = [];
  if (expansile.length) {
    flags.push({
      code: 'expansile-mass',
      urgency: examination.onset === 'acute' ? 'now' : 'today',
      grounds: expansile.map((place) => groundAt('expansile', place)),
      missing: [],
    });
  }
  const absent = PULSE_PLACES.filter((place) => pulseAt(examination, place)?.grade === 'absent');
  if (examination.context?.mechanism === 'dissection') {
    const grounds: Ground[] = [
      ground('mechanism', { value: 'dissection' }),
      ...absent.map((place) => groundAt('pulse-absent', place)),
    ];
    flags.push({ code: 'dissection', urgency: 'now', grounds, missing: [] });
  }
  return flags;
}

/**
 * Red flags of the whole record, the most urgent first. They say what to take seriously and what raised it; what is done
 * then is decided by local pathways and the clinician. An acutely threatened limb is flagged as soon as the findings
 * allow it, before everything is entered.
 */
export function redFlags(examination: Examination, choices: Partial<FlagSettings> = {}): RedFlag[] {
  const settings = { ...DEFAULT_ACUTE_SETTINGS, ...choices };
  const limbs = (['leg', 'arm'] as const).flatMap((kind) => SIDES.map((side) => ({ kind, side })));
  const flags = limbs.flatMap((limb): RedFlag[] => {
    const findings = limbFindings(examination, limb);
    const raised = [
      ...acuteFlags(examination, findings, settings),
      ...injuryFlags(examination, findings),
      ...signFlags(findings),
      ...skinFlags(findings),
      ...chronicFlags(examination, findings, settings),
    ];
    return raised.map((flag) => ({ missing: [], ...flag, limb }));
  });
  return [...flags, ...generalFlags(examination)].sort(
    (a, b) =>
      URGENCIES.indexOf(a.urgency) - URGENCIES.indexOf(b.urgency) ||
      FLAG_CODES.indexOf(a.code) - FLAG_CODES.indexOf(b.code),
  );
}
