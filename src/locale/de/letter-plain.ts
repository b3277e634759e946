import type { LimbKind, SiteId } from '../../anatomy/index.js';
import type { Alike, LetterTable, Strength, WholeLimb } from '../letter-table.js';
import type { Otherwise } from '../terms.js';
import { anatomy, atLimb } from './anatomy.js';
import { examination } from './examination.js';
import { list, sentence } from './phrases.js';

const GENITIVE: Readonly<Record<LimbKind, Readonly<Record<WholeLimb['side'], string>>>> = {
  leg: { right: 'des rechten Beins', left: 'des linken Beins', both: 'beider Beine' },
  arm: { right: 'des rechten Arms', left: 'des linken Arms', both: 'beider Arme' },
  head: {
    right: 'an Hals und Kopf rechts',
    left: 'an Hals und Kopf links',
    both: 'an Hals und Kopf beidseits',
  },
};
const BOTH: Readonly<Record<LimbKind, string>> = {
  leg: 'beide Beine',
  arm: 'beide Arme',
  head: 'Hals und Kopf',
};
/** "linkes Bein", "beide Arme". */
export const limbOrBoth = ({ kind, side }: WholeLimb): string =>
  side === 'both' ? BOTH[kind] : anatomy.limbs[`${side} ${kind}`];

/** "des linken Beins", as it stands after "alle Pulse". */
export const genitiveOf = ({ kind, side }: WholeLimb): string => GENITIVE[kind][side];

const spots = (sites: readonly SiteId[]): string =>
  list(sites.map((site) => `an der ${anatomy.sites[site]}`));

const gradeOf = (strength: Strength): string =>
  strength === 'increased' ? examination.increased : examination.grades[strength];

const group = ({ strength, sites }: Alike): string =>
  sites.length > 1
    ? `die Pulse ${spots(sites)} sind ${gradeOf(strength)}`
    : `der Puls ${spots(sites)} ist ${gradeOf(strength)}`;

/** Summaries and letters for a reader who is no clinician. */
export const plainLetter: Otherwise<LetterTable> = {
  lengths: { letter: 'Brief' },
  says: {
    inspection: (limb, phrases) => `${limb}, was zu sehen war: ${phrases.join('; ')}.`,
    because: (what) => `Was gefunden wurde: ${what}.`,
    noFlag:
      'Nichts von dem, was erfasst wurde, ist ein Warnzeichen; Ihre Ärzte entscheiden, wie es weitergeht.',
    onset: {
      acute: 'Es begann plötzlich.',
      chronic: 'Es besteht schon lange.',
      unknown: 'Wann es begann, ist nicht bekannt.',
    },
    claudicates: {
      none: 'kein Schmerz beim Gehen',
      in: (muscle) => `Schmerz beim Gehen, Ort: ${muscle}`,
      arm: 'ermüdet, wenn er gebraucht wird',
      'no-arm': 'ermüdet nicht, wenn er gebraucht wird',
    },
    noComplaint: (limbs) => `Keine Beschwerden: ${list(limbs.map(limbOrBoth))}.`,
    pressures: (unit, figures) => `Drücke in ${unit}: ${figures.join('; ')}.`,
    pressuresAfter: (unit, figures) => `Drücke nach dem Gehen in ${unit}: ${figures.join('; ')}.`,
    pulsesAt: (side, sites) =>
      `${sites.length > 1 || side === 'both' ? 'den Pulsen' : 'dem Puls'} ${spots(sites)}${{ right: ' rechts', left: ' links', both: ' beidseits', midline: '' }[side]}`,
    aortaNormal: 'Der Puls an der Bauchschlagader ist normal.',
    allPulses: (limbs, aorta) =>
      `Alle Pulse ${limbs}${aorta ? ' sowie der Puls an der Bauchschlagader' : ''} sind normal.`,
    normalPlaces: (pulses, count) =>
      `${sentence(pulses.replaceAll('den Pulsen', 'die Pulse').replaceAll('dem Puls', 'der Puls'))} ${count > 1 ? 'sind' : 'ist'} normal.`,
    pulses: (region, groups) =>
      sentence(`${region === 'trunk' ? '' : `${atLimb[region]}: `}${groups.map(group).join('; ')}.`),
    normalPulse: {
      only: 'Der eine geprüfte Puls ist normal.',
      other: 'Der eine übrige geprüfte Puls ist normal.',
    },
    normalPulses: {
      only: (all) => `${all} geprüften Pulse sind normal.`,
      other: (all) => `${all} übrigen geprüften Pulse sind normal.`,
    },
    expansile: (places) => `Der Puls drückt nach außen: ${places}.`,
    thrill: (places) => `Ein Schwirren ist zu tasten: ${places}.`,
    doppler: (signal, places) => `Strömungsgeräusch mit dem Gerät, ${places}: ${signal}.`,
    bruit: {
      none: (places) => `Kein Rauschen: ${places}.`,
      systolic: (places) => `Rauschen bei jedem Herzschlag: ${places}.`,
      continuous: (places) => `Dauerndes Rauschen: ${places}.`,
    },
    radioRadial: {
      none: 'Die Pulse beider Handgelenke kommen gleichzeitig.',
      'right-later': 'Der Puls am rechten Handgelenk kommt später.',
      'left-later': 'Der Puls am linken Handgelenk kommt später.',
    },
    radioFemoral: {
      none: (side) =>
        `Der Puls an der Leiste kommt${{ right: ' rechts', left: ' links' }[side]} zugleich mit dem am Handgelenk.`,
      delayed: (side) =>
        `Der Puls an der Leiste kommt${{ right: ' rechts', left: ' links' }[side]} später als der am Handgelenk.`,
    },
    negatives: {
      ulcer: 'keine offene Stelle',
      gangrene: 'kein abgestorbenes Gewebe',
      infection: 'keine Zeichen einer Infektion',
      systemic: 'keine Zeichen, dass eine Infektion den ganzen Körper erreicht hat',
      sensation: 'Gefühl normal',
      movement: 'Bewegung normal',
      muscle: 'Muskeln normal',
      venousDoppler: 'Blutfluss in den Venen hörbar',
      stretchPain: 'kein Schmerz beim Dehnen der Muskeln',
    },
    schemes: {
      acute: 'Dringlichkeit nach Rutherford',
      fontaine: 'Schwere nach Fontaine',
      rutherford: 'Schwere nach Rutherford',
      wifi: 'Risiko für den Fuß, Stufe',
    },
    suspects: { reduced: 'eine Engstelle oder einen Verschluss' },
    byRule: (lead) => `Nach den Pulsen allein: ${lead}.`,
    noLesion:
      'Die geprüften Pulse sprechen gegen einen Verschluss; auch wenn ein Puls zu tasten ist, kann eine Gefäßerkrankung vorliegen.',
    couldNotFeel: (places, reason) => `Puls nicht zu prüfen: ${places}. Grund: ${reason}.`,
    couldNotListen: (places, reason) => `Abhören nicht möglich: ${places}. Grund: ${reason}.`,
    couldNotInspect: (limb, reason) => `${limb} konnte nicht angesehen werden. Grund: ${reason}.`,
    otherPulses: { some: 'Die übrigen Pulse wurden nicht geprüft.', all: 'Kein Puls wurde geprüft.' },
    caution:
      'Dieser Text ist aus dem zusammengestellt, was erfasst wurde. Er ist keine Diagnose; Ihre Ärzte entscheiden, wie es weitergeht.',
  },
  sites: {
    title: 'Geprüfte Stellen',
    columns: {
      thrill: 'Schwirren oder nach außen drückend',
      doppler: 'Strömungsgeräusch',
      bruit: 'Rauschen',
    },
    notAPulseSite: 'hier kein Puls',
    notAListeningSite: 'hier wird nicht abgehört',
    expansile: 'drückt nach außen',
  },
};
