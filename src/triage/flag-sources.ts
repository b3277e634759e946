import type { FlagCode } from './flag.js';
import { TRIAGE_SOURCES } from './sources.js';

type SourceId = keyof typeof TRIAGE_SOURCES;

/** The sources of the table behind each flag, the first the most important. */
const BEHIND: Readonly<Record<FlagCode, readonly SourceId[]>> = {
  circulation: ['practice'],
  'aneurysm-symptomatic': ['nice156'],
  dissection: ['dissection', 'practice'],
  'stroke-now': ['nice128'],
  'access-bleeding': ['practice'],
  'arterial-injury': ['hardSigns', 'east2012', 'wta', 'mills2004'],
  'aortic-occlusion': ['esvs2020', 'practice'],
  'aneurysm-with-acute-limb': ['practice'],
  'popliteal-aneurysm-acute': ['poplitealReferral', 'rcem', 'rutherford1997'],
  'acute-limb-irreversible': ['rutherford1997', 'esvs2020', 'rcem'],
  'acute-limb-threatened': ['rutherford1997', 'esvs2020', 'rcem', 'guideline2016', 'safety'],
  'acute-limb': ['rcem', 'esvs2020', 'guideline2016', 'safety'],
  'graft-occlusion': ['graftOcclusion'],
  'iatrogenic-hand': ['radialCatheter'],
  'fixed-mottling': ['rcem'],
  'compartment-syndrome': ['boast2014'],
  'arterial-injury-possible': ['wta', 'boyce2015', 'mills2004'],
  phlegmasia: ['phlegmasia'],
  'graft-infection': ['graftInfection'],
  'false-aneurysm': ['falseAneurysm'],
  'access-steal': ['monomelic', 'accessSteal'],
  'cold-injury': ['frostbite'],
  'wet-gangrene': ['practice'],
  'spreading-infection': ['infection'],
  'diabetic-foot-emergency': ['nice19'],
  'threatened-hand': ['digital'],
  'neuro-deficit': ['safety', 'practice'],
  'acute-limb-possible': ['safety', 'practice'],
  'no-doppler': ['practice'],
  'perfusion-poor': ['practice'],
  'aneurysm-possible': ['nice156', 'practice'],
  'popliteal-aneurysm-possible': ['poplitealReferral'],
  'access-thrombosed': ['practice'],
  'digital-ischaemia': ['blueToe'],
  'deep-infection': ['infection'],
  'diabetic-foot-active': ['nice19'],
  tia: ['nice128'],
  'chronic-limb-threat': ['gvg2019', 'guideline2024', 'vsgbi2019'],
  'foot-ulcer-unproven': ['woundStrategy', 'nice168', 'practice'],
  'ulnar-artery-hand': ['hypothenar'],
  'threatening-pressure': ['gvg2019'],
};

/** What a flag rests on, as cited. */
export const flagSources = (code: FlagCode): readonly string[] =>
  BEHIND[code].map((id) => TRIAGE_SOURCES[id]);
