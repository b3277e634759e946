import type { SiteId } from '../../anatomy/index.js';
import type { PulseRegion } from '../../letter/index.js';
import type { Alike, LetterTable, Strength, WholeLimb } from '../letter-table.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { list, sentence } from './phrases.js';

/** A region of the body within a sentence. */
export const inRegion = {
  /** "either leg", "the left arm". */
  either: ({ kind, side }: WholeLimb): string =>
    side === 'both' ? `either ${kind}` : `the ${anatomy.limbs[`${side} ${kind}`]}`,
  /** "both legs", "the left arm". */
  whole: ({ kind, side }: WholeLimb): string =>
    side !== 'both'
      ? `the ${anatomy.limbs[`${side} ${kind}`]}`
      : kind === 'head'
        ? 'head and neck on both sides'
        : `both ${kind}s`,
  in: (region: PulseRegion): string =>
    region === 'trunk'
      ? 'in the abdomen'
      : region.endsWith('head')
        ? `on the ${region.split(' ')[0]} side of head and neck`
        : `in the ${anatomy.limbs[region]}`,
};

/** The place of a pulse without a comma in its name. */
const spot = (site: SiteId): string => anatomy.sites[site].replace(/, (.+)$/, ' ($1)');

/** How strong a pulse is, in the words of its grade. */
export const gradeWord = (strength: Strength): string =>
  strength === 'increased' ? examination.increased : examination.grades[strength];

const group = ({ strength, sites }: Alike): string =>
  sites.length > 1
    ? `the pulses at the ${list(sites.map(spot))} are ${gradeWord(strength)}`
    : `the pulse at the ${list(sites.map(spot))} is ${gradeWord(strength)}`;

/** Summaries and letters for a reader who is no clinician. */
export const plainLetter: Otherwise<LetterTable> = {
  says: {
    flag: (when, heading) => `Warning sign (${when}): ${heading}.`,
    moreFlags: (count) => (count === 1 ? 'One more warning sign.' : `${count} more warning signs.`),
    inspection: (limb, phrases) => `${limb}, what was seen: ${phrases.join('; ')}.`,
    because: (what) => `What was found: ${what}.`,
    noFlag: 'Nothing that was recorded is a warning sign; your doctor decides what comes next.',
    onset: {
      acute: 'It began suddenly.',
      chronic: 'It has been so for a long time.',
      unknown: 'It is not known when it began.',
    },
    claudicates: {
      none: 'no pain on walking',
      in: (muscle) => `pain on walking in the ${muscle}`,
      arm: 'tires when it is used',
      'no-arm': 'does not tire when it is used',
    },
    places: (side, sites) =>
      side === 'midline'
        ? `the ${list(sites.map(spot))}`
        : side === 'both'
          ? `the ${list(sites.map(spot))} on both sides`
          : `the ${side} ${list(sites.map(spot))}`,
    pressures: (unit, figures) => `Pressures in ${unit}: ${figures.join('; ').toLowerCase()}.`,
    pressuresAfter: (unit, figures) =>
      `Pressures after walking in ${unit}: ${figures.join('; ').toLowerCase()}.`,
    pulsesAt: (side, sites) =>
      `the ${sites.length > 1 || side === 'both' ? 'pulses' : 'pulse'} at the ${side === 'left' || side === 'right' ? `${side} ` : ''}${list(sites.map(spot))}${side === 'both' ? ' on both sides' : ''}`,
    aortaNormal: 'The pulse at the main artery of the belly is normal.',
    allPulses: (limbs, aorta) =>
      `All pulses of ${limbs}${aorta ? ', and the pulse at the main artery of the belly,' : ''} are normal.`,
    pulses: (region, groups) =>
      sentence(`${region === 'trunk' ? '' : `${inRegion.in(region)}, `}${groups.map(group).join('; ')}.`),
    normalPulse: {
      only: 'The one pulse checked is normal.',
      other: 'The only other pulse checked is normal.',
    },
    normalPulses: {
      only: (all) => `${all} pulses checked are normal.`,
      other: (all) => `${all} other pulses checked are normal.`,
    },
    expansile: (places) => `The pulse swells outwards at ${places}.`,
    thrill: (places) => `A buzzing is felt at ${places}.`,
    doppler: (signal, places) => `Flow sound at ${places}: ${signal}.`,
    bruit: {
      none: (places) => `No whooshing noise at ${places}.`,
      systolic: (places) => `A whooshing noise with each beat is heard at ${places}.`,
      continuous: (places) => `A continuous whooshing noise is heard at ${places}.`,
    },
    radioRadial: {
      none: 'The pulses of both wrists come together.',
      'right-later': 'The pulse of the right wrist comes later.',
      'left-later': 'The pulse of the left wrist comes later.',
    },
    radioFemoral: {
      none: (side) => `On the ${side}, groin and wrist pulse come together.`,
      delayed: (side) => `On the ${side}, the groin pulse comes later than the wrist pulse.`,
    },
    negatives: {
      ulcer: 'no open sore',
      gangrene: 'no dead tissue',
      systemic: 'no signs that an infection has reached the whole body',
      sensation: 'feeling normal',
      movement: 'movement normal',
      muscle: 'muscle normal',
      venousDoppler: 'blood flow in the veins heard',
      stretchPain: 'no pain when the muscle is stretched',
    },
    schemes: {
      acute: 'urgency by Rutherford',
      fontaine: 'severity by Fontaine',
      rutherford: 'severity by Rutherford',
      wifi: 'risk to the foot, stage',
    },
    suspects: { absent: 'a blockage', reduced: 'a narrowing or blockage' },
    byRule: (lead) => `From the pulses alone: ${lead.charAt(0).toLowerCase()}${lead.slice(1)}.`,
    noLesion:
      'The pulses that were checked point to no blockage; a pulse that is felt does not rule out disease.',
    couldNotFeel: (places, reason) => `Pulse could not be checked: ${places}. Reason: ${reason}.`,
    couldNotListen: (places, reason) => `Could not be listened to: ${places}. Reason: ${reason}.`,
    couldNotInspect: (limb, reason) => `${limb} could not be looked at. Reason: ${reason}.`,
    otherPulses: { some: 'The other pulses were not checked.', all: 'No pulse was checked.' },
    caution:
      'This text was put together from what was recorded. It is not a diagnosis; your doctor decides what comes next.',
  },
  sites: {
    title: 'Places checked',
    columns: { site: 'Place', thrill: 'Buzzing or swelling outwards', doppler: 'Flow sound', bruit: 'Noise' },
    notAPulseSite: 'no pulse here',
    notAListeningSite: 'not listened to here',
    expansile: 'swells outwards',
  },
};
