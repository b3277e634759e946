import type { Laterality, SiteId } from '../../anatomy/index.js';
import { letterFrom } from '../letter.js';
import type { Alike, LetterTable } from '../letter-table.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { context } from './context.js';
import { flags } from './flags.js';
import { history } from './history.js';
import { en } from './index.js';
import { inspection } from './inspection.js';
import { gradeWord, inRegion, plainLetter } from './letter-plain.js';
import { list, sentence, speech } from './phrases.js';
import { pressures } from './pressures.js';
import { staging } from './staging.js';
import { whole } from './whole.js';

/** How a pulse is named before "pulse". */
const pulseOf = (site: SiteId): string =>
  site === 'abdominal-aorta' ? 'abdominal aortic' : anatomy.sites[site];

/** Sites that no "artery" follows. */
const BY_ITSELF: readonly SiteId[] = ['abdominal-aorta', 'adductor-canal'];

/** "the left femoral and popliteal arteries", "the abdominal aorta". */
function arteries(side: Laterality | 'both', sites: readonly SiteId[]): string {
  const named = sites.filter((site) => !BY_ITSELF.includes(site)).map((site) => anatomy.sites[site]);
  const noun = named.length > 1 || side === 'both' ? 'arteries' : 'artery';
  const of = side === 'midline' ? 'the ' : side === 'both' ? 'both ' : `the ${side} `;
  return list([
    ...(named.length ? [`${of}${list(named)} ${noun}`] : []),
    ...sites
      .filter((site) => BY_ITSELF.includes(site))
      .map((site) => `${of}${anatomy.sites[site]}${side === 'both' ? 's' : ''}`),
  ]);
}

const group = ({ strength, sites }: Alike): string =>
  `the ${list(sites.map(pulseOf))} ${sites.length > 1 ? 'pulses are' : 'pulse is'} ${gradeWord(strength)}`;

const trade: LetterTable = {
  lengths: { line: 'One line', short: 'Summary', letter: 'Letter', handover: 'Handover' },
  headings: {
    situation: 'Situation',
    background: 'Background',
    assessment: 'Assessment',
    recommendation: 'Recommendation',
  },
  greeting: 'Dear colleague,',
  says: {
    status: {
      'entered-in-error': 'This examination was entered in error and must not be used.',
      preliminary: 'Preliminary: this examination is not finished.',
    },
    flag: (when, heading) => `Red flag (${when}): ${heading}.`,
    moreFlags: (count) => (count === 1 ? 'One more red flag.' : `${count} more red flags.`),
    because: (what) => `Raised by: ${what}.`,
    noFlag: 'No red flag is raised by what was recorded; further steps by local pathway.',
    on: (date) => ` on ${date}`,
    opening: (subject, on) => `${subject} was examined${on}.`,
    openingUnnamed: (on) => `Examined${on}.`,
    onset: {
      acute: 'The onset was acute.',
      chronic: 'The complaint is long-standing.',
      unknown: 'The onset is not known.',
    },
    claudicates: {
      none: 'no claudication',
      felt: (muscle) => `felt in the ${muscle}`,
      in: (muscle) => `claudication in the ${muscle}`,
      arm: 'tires on use',
      'no-arm': 'does not tire on use',
    },
    noComplaint: (limbs) => `No symptoms in ${list(limbs.map(inRegion.either))}.`,
    places: arteries,
    pulsesAt: (side, sites) => {
      const names = list(sites.map(pulseOf));
      if (side === 'both') return `the ${names} pulses on both sides`;
      return `the ${side === 'midline' ? '' : `${side} `}${names} ${sites.length > 1 ? 'pulses' : 'pulse'}`;
    },
    aortaNormal: 'The abdominal aortic pulse is normal.',
    wholeLimb: inRegion.whole,
    allPulses: (limbs, aorta) =>
      `All pulses of ${limbs}${aorta ? ', and the abdominal aortic pulse,' : ''} are normal.`,
    normalPlaces: (pulses, count) => `${sentence(pulses)} ${count > 1 ? 'are' : 'is'} normal.`,
    pulses: (region, groups) =>
      sentence(`${region === 'trunk' ? '' : `${inRegion.in(region)}, `}${groups.map(group).join('; ')}.`),
    normalPulse: { only: 'The one pulse graded is normal.', other: 'The one other pulse graded is normal.' },
    both: 'Both',
    all: (count) => `All ${count}`,
    normalPulses: {
      only: (all) => `${all} pulses graded are normal.`,
      other: (all) => `${all} other pulses graded are normal.`,
    },
    expansile: (places) => `Expansile pulsation of ${places}.`,
    thrill: (places) => `A thrill is felt over ${places}.`,
    doppler: (signal, places) => `Hand-held Doppler over ${places}: ${signal}.`,
    bruit: {
      none: (places) => `No bruit over ${places.replaceAll(/both ([^,]*?) arteries/g, 'either $1 artery')}.`,
      systolic: (places) => `A systolic bruit is heard over ${places}.`,
      continuous: (places) => `A continuous bruit is heard over ${places}.`,
    },
    radioRadial: {
      none: 'No radio-radial delay.',
      'right-later': 'Radio-radial delay: the right radial pulse is later.',
      'left-later': 'Radio-radial delay: the left radial pulse is later.',
    },
    radioFemoral: {
      none: (side) => `No radio-femoral delay on the ${side}.`,
      delayed: (side) => `Radio-femoral delay on the ${side}.`,
    },
    note: (place, note) => `${place}, note: “${note}”.`,
    inspection: (limb, phrases) => `${limb} on inspection: ${phrases.join('; ')}.`,
    negatives: {
      ulcer: 'no ulcer',
      gangrene: 'no gangrene',
      infection: 'no signs of infection',
      systemic: 'no systemic inflammatory signs',
      sensation: 'sensation normal',
      movement: 'power normal',
      muscle: 'muscle normal',
      venousDoppler: 'venous Doppler signal audible',
      stretchPain: 'no pain on passive stretch',
    },
    marks: (drawn) => `Drawn on the skin: ${drawn.join('; ').toLowerCase()}.`,
    pressures: (unit, figures) => `Systolic pressures in ${unit}: ${figures.join('; ').toLowerCase()}.`,
    pressuresAfter: (unit, figures) =>
      `Systolic pressures after exercise in ${unit}: ${figures.join('; ').toLowerCase()}.`,
    notMeasured: (sites) => `Not measured: ${sites.join(', ')}.`,
    schemes: {
      acute: 'acute Rutherford class',
      fontaine: 'Fontaine stage',
      rutherford: 'Rutherford category',
      wifi: 'stage of wound, ischaemia and foot infection (WIfI)',
    },
    ownStage: 'set by the clinician',
    ownStageBecause: (why) => `set by the clinician: “${why}”`,
    between: {
      from: (above, below) => `somewhere between ${above} and ${below}`,
      fromHeart: (below) => `somewhere between the heart and ${below}`,
      beyond: (above) => `somewhere beyond ${above}`,
      somewhere: 'somewhere on the way',
    },
    suspects: { absent: 'an occlusion', reduced: 'a stenosis or occlusion' },
    conclusion: (what, where, howSure) => `The findings suggest ${what} ${where} (${howSure}).`,
    probability: (percent) => `probability ${percent}`,
    firm: { firm: 'reliability high', 'fairly-firm': 'reliability moderate', 'not-firm': 'reliability low' },
    suggests: (what, where, percent) => `Suggests ${what} ${where} (${percent}).`,
    nature: (nature, percent) => `The likeliest cause is ${nature} (${percent}).`,
    noLesion:
      'The pulses examined suggest no occlusive lesion; a palpable pulse does not exclude arterial disease.',
    otherReason: 'other reason',
    couldNotFeel: (places, reason) => `Not assessable by palpation (${reason}): ${places}.`,
    couldNotListen: (places, reason) => `Auscultation not possible (${reason}): ${places}.`,
    couldNotInspect: (limb, reason) => `${limb} could not be inspected (${reason}).`,
    unreadPlaces: (places) => `Recorded in a way this version does not know: ${places}.`,
    otherPulses: { some: 'The other pulses were not examined.', all: 'No pulse was examined.' },
    byRule: (lead) => `By the pulse rule: ${lead.charAt(0).toLowerCase()}${lead.slice(1)}.`,
    smoker: { never: 'never smoked', past: 'former smoker', current: 'current smoker' },
    nothingAbnormal: 'Nothing abnormal in what was recorded.',
    caution:
      'Composed from the recorded findings; not a diagnosis. Local pathways and the treating clinician decide.',
    signed: (examiner) => `Examined by ${examiner}.`,
  },
  element: {
    length: 'Length of the text',
    text: 'Text, to be changed as you like',
    copy: 'Copy text',
    copied: 'Copied.',
    notCopied: 'The browser refused to copy. The text is selected: copy it by keys.',
    copyTable: 'Copy table of sites',
    tableCopied: 'Table copied.',
    renew: 'Back to the composed text',
    renewed: 'The composed text stands here again.',
    changed: 'The record has changed since you wrote. Your text is as you left it.',
    missing: 'Not in this text:',
    add: 'Add',
    added: 'Added where it belongs.',
    outdated: 'In this text, and no longer so:',
    takeOut: 'Take out',
    takenOut: 'Taken out.',
    takeNew: 'Take the new text',
    keep: 'Keep mine',
    kept: 'Your text stays.',
    how: 'Put the caret or the pointer on a sentence to see which findings it comes from.',
    from: 'This sentence comes from:',
    fromNone: 'This sentence rests on no single finding.',
    ownWords: 'Your own words.',
  },
  sites: {
    title: 'Sites examined',
    scale: (scale) => `Pulse strength on the scale ${scale}.`,
    columns: {
      site: 'Site',
      side: 'Side',
      pulse: 'Pulse',
      thrill: 'Thrill or expansile',
      doppler: 'Doppler',
      bruit: 'Bruit',
      delay: 'Delay',
      note: 'Note',
    },
    notAPulseSite: 'no pulse site',
    notAListeningSite: 'not auscultated here',
    expansile: 'expansile',
    noDelay: 'none',
    later: 'later',
  },
};

export const letter = letterFrom(
  inRegisters(trade, plainLetter),
  en,
  { bedside, context, flags, history, inspection, pressures, staging, whole },
  speech,
);
