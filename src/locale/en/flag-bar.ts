import type { FlagChange, FlagCode, RedFlag, StagedLimb } from '../../triage/index.js';
import { anatomy } from './anatomy.js';
import { sentence } from './phrases.js';

/** What each flag warns of where there is room for a line on a phone. */
const short: Record<FlagCode, string> = {
  circulation: 'Shock or cardiac arrest?',
  'aneurysm-symptomatic': 'Aortic rupture?',
  dissection: 'Aortic dissection?',
  'stroke-now': 'Stroke?',
  'access-bleeding': 'access may bleed',
  'arterial-injury': 'arterial injury?',
  'aortic-occlusion': 'Acute aortic occlusion?',
  'aneurysm-with-acute-limb': 'ischaemia with aortic aneurysm',
  'popliteal-aneurysm-acute': 'thrombosed popliteal aneurysm?',
  'acute-limb-irreversible': 'may be irreversible',
  'acute-limb-threatened': 'may be threatened',
  'acute-limb': 'acute ischaemia?',
  'graft-occlusion': 'graft or stent occluded?',
  'iatrogenic-hand': 'ischaemia after a line',
  'fixed-mottling': 'fixed mottling',
  'compartment-syndrome': 'compartment syndrome?',
  'arterial-injury-possible': 'arterial injury not excluded',
  phlegmasia: 'phlegmasia?',
  'graft-infection': 'graft infection?',
  'false-aneurysm': 'false aneurysm?',
  'access-steal': 'access steal?',
  'cold-injury': 'cold injury',
  'wet-gangrene': 'wet gangrene',
  'spreading-infection': 'Sepsis?',
  'diabetic-foot-emergency': 'diabetic foot, limb at risk',
  'threatened-hand': 'digits critically ischaemic',
  'neuro-deficit': 'motor or sensory deficit',
  'acute-limb-possible': 'acute ischaemia not excluded',
  'no-doppler': 'no arterial signal',
  'perfusion-poor': 'perfusion severely reduced',
  'aneurysm-possible': 'Aneurysm?',
  'popliteal-aneurysm-possible': 'popliteal aneurysm?',
  'access-thrombosed': 'access thrombosed?',
  'digital-ischaemia': 'emboli to the digits?',
  'deep-infection': 'deep infection',
  'diabetic-foot-active': 'diabetic foot, active',
  tia: 'TIA?',
  'chronic-limb-threat': 'CLTI?',
  'foot-ulcer-unproven': 'ulcer, arteries not tested',
  'ulnar-artery-hand': 'ulnar artery occluded?',
  'threatening-pressure': 'perfusion pressure low',
};

const limbName = ({ kind, side }: StagedLimb): string => sentence(anatomy.limbs[`${side} ${kind}`]);
const classOf = ({ code, class: open }: RedFlag): string => {
  if (!open || (code !== 'acute-limb-threatened' && code !== 'acute-limb-irreversible')) return '';
  return open.atLeast === open.atMost ? ` (${open.atLeast})` : ` (${open.atLeast} to ${open.atMost})`;
};
const changed: Record<FlagChange['code'], string> = {
  raised: 'Red flag',
  worsened: 'Red flag, worse',
  eased: 'Red flag, less urgent',
  withdrawn: 'Red flag withdrawn',
};

/** The line in which the worst flag stands, and what it opens. */
export const flagBar = {
  /** A flag in few words, the limb first. */
  short: (flag: RedFlag) =>
    `${flag.limb ? `${limbName(flag.limb)}: ${short[flag.code]}` : sentence(short[flag.code])}${classOf(flag)}`,
  /** Spoken when the flags change. */
  changed: (code: FlagChange['code'], heading: string) => `${changed[code]}: ${heading}.`,
  /** Which of several flags this is. */
  place: (at: number, of: number) => `${at} of ${of}`,
  /** Time gone since the onset: by the clock, or up to an examination that is over. */
  elapsed: (hours: number, minutes: number, until: 'now' | 'examination') =>
    `${hours >= 48 ? `${Math.floor(hours / 24)} days` : `${hours} h${minutes ? ` ${minutes} min` : ''}`} ${
      until === 'now' ? 'since onset' : 'from onset to examination'
    }`,
  callNow: 'Call now',
  call: 'Call',
  openPathway: 'Pathway',
  /** The button that dials: whom, and the number. */
  callWhom: (whom: string | undefined, telephone: string) => `Call ${whom ? `${whom}: ` : ''}${telephone}`,
  /** The link to a page on which it is written whom to call. */
  pageOf: (whom: string | undefined) => (whom ? `Pathway: ${whom}` : 'Open the pathway'),
  /** Whose pathway decides. */
  byPathway: (name: string | undefined) => (name ? `By the pathway “${name}”.` : 'By your local pathway.'),
  asks: 'To ask and examine next',
  /** A question that stands before there is a flag. */
  open: 'Open question',
  openFor: (limb: StagedLimb | undefined) =>
    limb ? `${limbName(limb)}: when did it begin?` : 'When did it begin?',
};
export type FlagBarWords = typeof flagBar;
