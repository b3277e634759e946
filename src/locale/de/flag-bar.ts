import type { FlagChange, FlagCode, RedFlag, StagedLimb } from '../../triage/index.js';
import type { FlagBarWords } from '../en/flag-bar.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

const short: Record<FlagCode, string> = {
  circulation: 'Schock oder Kreislaufstillstand?',
  'aneurysm-symptomatic': 'Aortenruptur?',
  dissection: 'Aortendissektion?',
  'stroke-now': 'Schlaganfall?',
  'access-bleeding': 'Shunt droht zu bluten',
  'arterial-injury': 'Arterienverletzung?',
  'aortic-occlusion': 'Akuter Aortenverschluss?',
  'aneurysm-with-acute-limb': 'Ischämie bei Aortenaneurysma',
  'popliteal-aneurysm-acute': 'Popliteaaneurysma verschlossen?',
  'acute-limb-irreversible': 'vielleicht irreversibel',
  'acute-limb-threatened': 'vielleicht bedroht',
  'acute-limb': 'akute Ischämie?',
  'graft-occlusion': 'Bypass oder Stent verschlossen?',
  'iatrogenic-hand': 'Ischämie nach Katheter',
  'fixed-mottling': 'fixierte Marmorierung',
  'compartment-syndrome': 'Kompartmentsyndrom?',
  'arterial-injury-possible': 'Arterienverletzung nicht ausgeschlossen',
  phlegmasia: 'Phlegmasie?',
  'graft-infection': 'Protheseninfekt?',
  'false-aneurysm': 'Aneurysma spurium?',
  'access-steal': 'Shunt-Steal?',
  'cold-injury': 'Kälteschaden',
  'wet-gangrene': 'feuchte Gangrän',
  'spreading-infection': 'Sepsisverdacht',
  'diabetic-foot-emergency': 'diabetischer Fuß, Extremität gefährdet',
  'threatened-hand': 'Finger kritisch ischämisch',
  'neuro-deficit': 'Ausfall von Kraft oder Gefühl',
  'acute-limb-possible': 'akute Ischämie nicht ausgeschlossen',
  'no-doppler': 'kein arterielles Signal',
  'perfusion-poor': 'Durchblutung stark vermindert',
  'aneurysm-possible': 'Aneurysmaverdacht',
  'popliteal-aneurysm-possible': 'Popliteaaneurysma?',
  'access-thrombosed': 'Shunt verschlossen?',
  'digital-ischaemia': 'Embolien in die Finger oder Zehen?',
  'deep-infection': 'tiefe Infektion',
  'diabetic-foot-active': 'diabetischer Fuß, aktiv',
  tia: 'TIA-Verdacht',
  'chronic-limb-threat': 'kritische Ischämie (CLTI)?',
  'foot-ulcer-unproven': 'Ulkus, Arterien nicht geprüft',
  'ulnar-artery-hand': 'A. ulnaris verschlossen?',
  'threatening-pressure': 'Perfusionsdruck niedrig',
};

const limbName = ({ kind, side }: StagedLimb): string => sentence(anatomy.limbs[`${side} ${kind}`]);
const classOf = ({ code, class: open }: RedFlag): string => {
  if (!open || (code !== 'acute-limb-threatened' && code !== 'acute-limb-irreversible')) return '';
  return open.atLeast === open.atMost ? ` (${open.atLeast})` : ` (${open.atLeast} bis ${open.atMost})`;
};
const changed: Record<FlagChange['code'], string> = {
  raised: 'Warnzeichen',
  worsened: 'Warnzeichen, schwerer',
  eased: 'Warnzeichen, weniger dringlich',
  withdrawn: 'Warnzeichen zurückgenommen',
};

export const flagBar: FlagBarWords = {
  short: (flag) =>
    `${flag.limb ? `${limbName(flag.limb)}: ${short[flag.code]}` : sentence(short[flag.code])}${classOf(flag)}`,
  changed: (code, heading) => `${changed[code]}: ${heading}.`,
  place: (at, of) => `${at} von ${of}`,
  elapsed: (hours, minutes, until) =>
    `${hours >= 48 ? `${Math.floor(hours / 24)} Tage` : `${hours} h${minutes ? ` ${minutes} min` : ''}`} ${
      until === 'now' ? 'seit Beginn' : 'von Beginn bis Untersuchung'
    }`,
  callNow: 'Jetzt rufen',
  call: 'Rufen',
  openPathway: 'Pfad',
  callWhom: (whom, telephone) => `Anrufen${whom ? `, ${whom}` : ''}: ${telephone}`,
  pageOf: (whom) => (whom ? `Behandlungspfad: ${whom}` : 'Behandlungspfad öffnen'),
  byPathway: (name) => (name ? `Nach dem Behandlungspfad „${name}“.` : 'Nach dem örtlichen Behandlungspfad.'),
  asks: 'Als Nächstes fragen und untersuchen',
  open: 'Offene Frage',
  openFor: (limb) => (limb ? `${limbName(limb)}: Wann hat es begonnen?` : 'Wann hat es begonnen?'),
};
