import type { Side } from '../anatomy/index.js';
import type {
  Examination,
  FontaineStage,
  LegOverrules,
  Overrule,
  RutherfordCategory,
  WifiStage,
} from '../examination/index.js';
import type { PressureSettings } from '../pressures/index.js';
import { type CompressionChoices, type TriageChoices, triageSettings } from '../triage/index.js';
import { isAcute } from './acute-leg.js';
import { type AcuteStage, acuteStageOf } from './acute.js';
import {
  type ChronicSettings,
  type ChronicStage,
  DEFAULT_CHRONIC_SETTINGS,
  fontaineOf,
  isNotAtherosclerotic,
} from './chronic.js';
import { fontaineStage } from './fontaine.js';
import { rutherfordStage } from './rutherford.js';
import { type Derived, finalStage } from './derived.js';
import { type LegFindings, legFindings, limbState } from './findings.js';
import {
  combineWifi,
  DEFAULT_WIFI_SETTINGS,
  infectionGrade,
  ischaemiaGrade,
  type WifiExclusion,
  type WifiReading,
  type WifiSettings,
  woundGrade,
} from './wifi.js';

/** Choices where sources disagree or leave something open. */
export interface StagingSettings extends ChronicSettings, WifiSettings {
  readonly pressures: Partial<PressureSettings>;
  readonly triage: TriageChoices;
  /** Limits of compression, beside the stages. */
  readonly compression: CompressionChoices;
}
export const DEFAULT_STAGING_SETTINGS: StagingSettings = {
  ...DEFAULT_CHRONIC_SETTINGS,
  ...DEFAULT_WIFI_SETTINGS,
  pressures: {},
  triage: {},
  compression: {},
};

/** Every stage of one leg, derived from the record or set by the clinician. */
export interface LegStages {
  readonly side: Side;
  readonly acute: AcuteStage;
  readonly fontaine: ChronicStage<FontaineStage>;
  readonly rutherford: ChronicStage<RutherfordCategory>;
  /** Set where the two chronic schemes, as they finally stand, do not fit the usual mapping. */
  readonly schemesDiffer: boolean;
  readonly wifi: WifiReading;
}

function withOverrule<T extends string | number, D extends Derived<T>>(
  derived: D,
  overrule: Overrule<T> | undefined,
): D {
  return overrule ? { ...derived, overrule } : derived;
}

function wifiExclusion(findings: LegFindings): WifiExclusion | undefined {
  const { facts, examination, tissueLoss, wounds } = findings;
  if (facts.endLost) return 'amputated';
  if (isAcute(findings)) return 'acute';
  const { mechanism } = examination.context ?? {};
  if (mechanism === 'injury' || isNotAtherosclerotic(mechanism)) return mechanism;
  const venous = facts.inspection.ulcerCause === 'venous' && !wounds.gangrene && tissueLoss === 'no';
  return venous ? 'venous-ulcer' : undefined;
}

function wifiReading(findings: LegFindings, overrules: LegOverrules, settings: StagingSettings): WifiReading {
  const wound = withOverrule(woundGrade(findings), overrules.wound);
  const ischaemia = withOverrule(ischaemiaGrade(findings, settings), overrules.ischaemia);
  const infection = withOverrule(infectionGrade(findings), overrules.infection);
  const combined = combineWifi(wound, ischaemia, infection);
  const excluded = wifiExclusion(findings);
  return {
    applies: !excluded,
    ...(excluded && { excluded }),
    wound,
    ischaemia,
    infection,
    ...combined,
    stage: withOverrule<WifiStage, Derived<WifiStage>>(combined.stage, overrules.wifi),
  };
}

/** Every stage of one leg, each with what it rests on, what is missing, and the clinician's own beside it. */
export function stageLeg(
  examination: Examination,
  side: Side,
  choices: Partial<StagingSettings> = {},
): LegStages {
  const settings = { ...DEFAULT_STAGING_SETTINGS, ...choices };
  const findings = legFindings(examination, side, settings);
  const overrules: LegOverrules = examination.staging?.leg?.[side] ?? {};
  const fontaine = withOverrule(fontaineStage(findings, settings), overrules.fontaine);
  const rutherford = withOverrule(rutherfordStage(findings), overrules.rutherford);
  const [f, r] = [finalStage(fontaine), finalStage(rutherford)];
  return {
    side,
    acute: acuteStageOf(examination, findings.state, findings.triage),
    fontaine,
    rutherford,
    schemesDiffer: f !== undefined && r !== undefined && fontaineOf(r) !== f,
    wifi: wifiReading(findings, overrules, settings),
  };
}

/** The acute class of one arm, by the classes described for the leg. */
export function stageArm(
  examination: Examination,
  side: Side,
  choices: Partial<StagingSettings> = {},
): AcuteStage {
  const settings = triageSettings(choices.triage);
  return acuteStageOf(examination, limbState(examination, { kind: 'arm', side }, settings), settings);
}
