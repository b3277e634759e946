import { DISEASE_SOURCE, TRIAGE_SOURCES } from '../triage/index.js';
import { STAGING_SOURCES } from './sources.js';
import { ISCHAEMIA_BOUNDS, WIFI_TABLES_SOURCE } from './wifi.js';

/** The schemes by which a limb is staged. */
export type StageScheme = 'acute' | 'fontaine' | 'rutherford' | 'wound' | 'ischaemia' | 'infection' | 'wifi';

const SOURCES: Readonly<Record<StageScheme, readonly string[]>> = {
  acute: [STAGING_SOURCES.rutherford1997, TRIAGE_SOURCES.esvs2020, TRIAGE_SOURCES.guideline2016],
  fontaine: [STAGING_SOURCES.fontaine1954, STAGING_SOURCES.tasc2, DISEASE_SOURCE],
  rutherford: [STAGING_SOURCES.rutherford1997, STAGING_SOURCES.tasc2, DISEASE_SOURCE],
  wound: [STAGING_SOURCES.mills2014],
  ischaemia: [ISCHAEMIA_BOUNDS.source],
  infection: [STAGING_SOURCES.mills2014, TRIAGE_SOURCES.infection],
  wifi: [WIFI_TABLES_SOURCE],
};

/** What a stage by a scheme rests on, as cited. */
export const stageSources = (scheme: StageScheme): readonly string[] => SOURCES[scheme];
