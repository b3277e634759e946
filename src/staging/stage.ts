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
import { type AcuteSettings, type AcuteStage, acuteStageOf, DEFAULT_ACUTE_SETTINGS } from './acute.js';
import { type ChronicSettings, type ChronicStage, DEFAULT_CHRONIC_SETTINGS, fontaineOf } from './chronic.js';
import { fontaineStage } from './fontaine.js';
import { rutherfordStage } from './rutherford.js';
import { type Derived, finalStage } from './derived.js';
import { type LimbFindings, limbFindings } from './findings.js';
import {
  combineWifi,
  DEFAULT_WIFI_SETTINGS,
  infectionGrade,
  ischaemiaGrade,
  type WifiReading,
  type WifiSettings,
  woundGrade,
} from './wifi.js';

/** Choices where sources disagree or leave something open. */
export interface StagingSettings extends ChronicSettings, AcuteSettings, WifiSettings {
  readonly pressures: Partial<PressureSettings>;
}
export const DEFAULT_STAGING_SETTINGS: StagingSettings = {
  ...DEFAULT_CHRONIC_SETTINGS,
  ...DEFAULT_ACUTE_SETTINGS,
  ...DEFAULT_WIFI_SETTINGS,
  pressures: {},
};

/** Every stage of one leg. */
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

/** Why the wound, ischaemia and infection scheme is not meant for a limb. Source: Mills 2014. */
function wifiExclusion(examination: Examination, findings: LimbFindings): string | undefined {
  if (findings.endLost) return 'amputated';
  if (findings.acute === 'yes') return 'acute';
  const { mechanism } = examination.context ?? {};
  return mechanism === 'vasculitis' || mechanism === 'injury' ? mechanism : undefined;
}

function wifiReading(
  examination: Examination,
  findings: LimbFindings,
  overrules: LegOverrules,
  settings: StagingSettings,
): WifiReading {
  const wound = withOverrule(woundGrade(findings), overrules.wound);
  const ischaemia = withOverrule(
    ischaemiaGrade(findings, examination.pressures, settings, settings.pressures),
    overrules.ischaemia,
  );
  const infection = withOverrule(infectionGrade(findings), overrules.infection);
  const combined = combineWifi(wound, ischaemia, infection);
  const excluded = wifiExclusion(examination, findings);
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
  const findings = limbFindings(examination, { kind: 'leg', side });
  const overrules: LegOverrules = examination.staging?.leg?.[side] ?? {};
  const { pressures } = examination;
  const fontaine = withOverrule(
    fontaineStage(findings, pressures, settings, settings.pressures),
    overrules.fontaine,
  );
  const rutherford = withOverrule(
    rutherfordStage(findings, pressures, settings, settings.pressures),
    overrules.rutherford,
  );
  const [f, r] = [finalStage(fontaine), finalStage(rutherford)];
  return {
    side,
    acute: acuteStageOf(examination, findings, settings),
    fontaine,
    rutherford,
    schemesDiffer: f !== undefined && r !== undefined && fontaineOf(r) !== f,
    wifi: wifiReading(examination, findings, overrules, settings),
  };
}

/** The acute class of one arm, by the classes described for the leg. */
export function stageArm(
  examination: Examination,
  side: Side,
  choices: Partial<StagingSettings> = {},
): AcuteStage {
  const settings = { ...DEFAULT_STAGING_SETTINGS, ...choices };
  return acuteStageOf(examination, limbFindings(examination, { kind: 'arm', side }), settings);
}
