import { ruleFrom, type RuleTable } from '../rule.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { either, list, speech } from './phrases.js';
import { plainRule } from './rule-plain.js';
import { at, ends, spot } from './spots.js';

const table: RuleTable = {
  nothing: 'No pulse recorded',
  nothingMore: 'Nothing is said about any artery until a pulse is recorded.',
  heading: 'Pulse rule',
  checkAgain: 'Recheck',
  felt: { absent: 'absent', reduced: 'reduced', normal: 'palpable', bounding: 'bounding' },
  kinds: { block: 'occlusion', narrowing: 'stenosis' },
  doubtful: { block: 'doubtful', narrowing: 'doubtful' },
  article: (kind, doubtful) => (kind === 'block' && !doubtful ? 'an' : 'a'),
  inArtery: (names) => `of the ${either(names)} artery`,
  alone: (artery) => `${artery} alone`,
  aboveBothSites: (site) => `above both ${anatomy.sites[site]} pulses`,
  aboveBothEnds: (end) => `above the ${ends[end]} pulses of both sides`,
  above: (all) => `above ${list(all.map(spot))}`,
  between: (above, below) => `between ${at(above)} and ${spot(below)}`,
  aorta: 'in the aorta',
  aortaBeyondArch: 'in the aorta beyond the arch',
  atArteries: (names) => `at ${either(names.map((name) => `the ${name}`))}`,
  oneEachSide: () => 'or one on each side',
  oneAboveEach: () => 'or one above each',
  moreThanOne: () => 'or more than one',
  beyond: {
    weakly: (place) => `, with ${at(place)} weakly palpable distally`,
    'in-full': (place) => `, since ${at(place)} is fully palpable distally`,
  },
  further: (lesions) =>
    lesions.map((lesion, i) => `, ${i === lesions.length - 1 ? 'and ' : ''}${lesion}`).join(''),
  noPulseAnywhere:
    'No pulse palpable at any examined site: assess the circulation first (shock, cardiac arrest), before localising an occlusion',
  reducedEverywhere:
    'All palpable pulses reduced: consider low flow or vasoconstriction before multiple stenoses',
  allFelt: (pulses) => `All ${pulses} pulses palpable, none reduced: no occlusive lesion suggested`,
  limbFelt: (limb) => `${limb}: all pulses palpable, none reduced`,
  limbFeltTo: (limb, to, ungraded) =>
    `${limb}: palpable as far as ${spot(to)}; ${ungraded} ${ungraded === 1 ? 'site' : 'sites'} without a grade`,
  limbUngraded: (limb) => `${limb}: no pulse graded`,
  aortaOnly: 'Abdominal aorta palpable, nothing distal to it graded',
  notExcluded: 'A palpable pulse does not exclude arterial disease',
  fromHeart: (to) => `No proximal pulse palpable: the segment runs from the heart to ${spot(to)}.`,
  inBetween: (arteries) => `In between: ${arteries}.`,
  wide: (sites) => `${sites}, so the segment cannot be narrowed further.`,
  missing: {
    'dorsalis-pedis': 'Some healthy people have no dorsalis pedis pulse.',
    'posterior-tibial': 'A few healthy people have no posterior tibial pulse.',
  },
  outOfReach: 'An impalpable aorta excludes neither aneurysm nor aorto-iliac occlusion.',
  contradiction: (stronger, weaker) =>
    `${at(stronger)} pulse is stronger than ${at(weaker)} above it: one may have been misjudged, or collaterals reconstitute the distal pulse. Palpate both again.`,
};

export const rule = ruleFrom(inRegisters(table, plainRule), { anatomy, examination, speech });
