import type { RuleTable } from '../rule.js';
import type { Otherwise } from '../terms.js';
import { either } from './phrases.js';
import { at, spot } from './spots.js';

/** What the pulses alone say, for a reader who is no clinician. */
export const plainRule: Otherwise<RuleTable> = {
  heading: 'What the pulses alone say',
  felt: { absent: 'not felt', reduced: 'weak', normal: 'felt', bounding: 'unusually strong' },
  kinds: { block: 'blockage', narrowing: 'narrowing' },
  article: () => 'a',
  inArtery: (names) => `of the ${either(names)}`,
  beyond: {
    weakly: (place) => `, with ${at(place)} weakly felt beyond it`,
    'in-full': (place) => `, since ${at(place)} is felt in full beyond it`,
  },
  noPulseAnywhere: 'No pulse felt at any place that was checked: the circulation as a whole comes first',
  reducedEverywhere: 'Every pulse is weak: weak circulation or cold is more likely than many narrowings',
  allFelt: (pulses) => `All ${pulses} pulses felt, none weak: no blockage found so far`,
  limbFelt: (limb) => `${limb}: all pulses felt, none weak`,
  limbFeltTo: (limb, to, ungraded) =>
    `${limb}: felt as far as ${spot(to)}; ${ungraded} ${ungraded === 1 ? 'site' : 'sites'} not checked`,
  limbUngraded: (limb) => `${limb}: no pulse checked`,
  aortaOnly: 'The main artery of the belly is felt; nothing below it was checked',
  notExcluded: 'A pulse that is felt does not rule out disease',
  fromHeart: (to) => `No pulse felt nearer to the heart: the segment runs from the heart to ${spot(to)}.`,
  missing: {
    'dorsalis-pedis': 'Some healthy people have no pulse on top of the foot.',
    'posterior-tibial': 'A few healthy people have no pulse at the inner ankle.',
  },
  outOfReach: 'A main artery that cannot be felt in the belly says little by itself.',
  contradiction: (stronger, weaker) =>
    `${at(stronger)} pulse is stronger than ${at(weaker)} above it: one may have been misjudged, or natural detours fill the lower one. Feel both again.`,
};
