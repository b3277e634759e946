import type { Laterality, SiteId } from '../../anatomy/index.js';
import type { PulseRegion } from '../../letter/index.js';
import { letterFrom } from '../letter.js';
import type { Alike, LetterTable, Strength } from '../letter-table.js';
import { inRegisters } from '../terms.js';
import { anatomy, pulseName } from './anatomy.js';
import { bedside } from './bedside.js';
import { context } from './context.js';
import { flags } from './flags.js';
import { history } from './history.js';
import { de } from './index.js';
import { inspection } from './inspection.js';
import { genitiveOf, limbOrBoth, plainLetter } from './letter-plain.js';
import { list, sentence, speech } from './phrases.js';
import { pressures } from './pressures.js';
import { staging } from './staging.js';
import { whole } from './whole.js';

const SIDES: Readonly<Record<Laterality | 'both', string>> = {
  right: ' rechts',
  left: ' links',
  midline: '',
  both: ' beidseits',
};

/** "Femoralis und Poplitea links". */
const named = (side: Laterality | 'both', sites: readonly SiteId[]): string =>
  `${list(sites.map((site) => anatomy.sites[site]))}${SIDES[side]}`;

const strengths: Readonly<Record<Strength, string>> = {
  absent: 'nicht tastbar',
  reduced: 'abgeschwächt tastbar',
  normal: 'normal tastbar',
  increased: 'kräftig tastbar',
  bounding: 'hebend tastbar',
};

const group = ({ strength, sites }: Alike): string =>
  `${list(sites.map((site) => pulseName(site)))} ${strengths[strength]}`;

const regionName = (region: PulseRegion): string =>
  region === 'trunk' ? '' : `${sentence(anatomy.limbs[region])}: `;

const trade: LetterTable = {
  lengths: { line: 'Eine Zeile', short: 'Kurzfassung', letter: 'Arztbrief', handover: 'Übergabe' },
  headings: {
    situation: 'Aktuelle Situation',
    background: 'Hintergrund',
    assessment: 'Beurteilung',
    recommendation: 'Empfehlung',
  },
  greeting: 'Sehr geehrte Kollegin, sehr geehrter Kollege,',
  says: {
    status: {
      'entered-in-error': 'Diese Untersuchung wurde irrtümlich erfasst und darf nicht verwendet werden.',
      preliminary: 'Vorläufig: Diese Untersuchung ist nicht abgeschlossen.',
    },
    flag: (when, heading) => `Warnzeichen (${when}): ${heading}.`,
    moreFlags: (count) => (count === 1 ? 'Ein weiteres Warnzeichen.' : `${count} weitere Warnzeichen.`),
    because: (what) => `Ausgelöst durch: ${what}.`,
    noFlag: 'Die erfassten Befunde lösen kein Warnzeichen aus; weiteres Vorgehen nach örtlicher Regelung.',
    on: (date) => ` am ${date}`,
    opening: (subject, on) => `${subject} wurde${on} untersucht.`,
    openingUnnamed: (on) => `Untersucht${on}.`,
    onset: {
      acute: 'Der Beginn war akut.',
      chronic: 'Die Beschwerden bestehen seit Längerem.',
      unknown: 'Der Beginn ist nicht bekannt.',
    },
    claudicates: {
      none: 'keine Claudicatio',
      felt: (muscle) => `Ort: ${muscle}`,
      in: (muscle) => `Claudicatio, Ort: ${muscle}`,
      arm: 'ermüdet bei Gebrauch',
      'no-arm': 'ermüdet bei Gebrauch nicht',
    },
    noComplaint: (limbs) => `Beschwerdefrei: ${list(limbs.map(limbOrBoth))}.`,
    places: named,
    pulsesAt: (side, sites) => `${list(sites.map((site) => pulseName(site)))}${SIDES[side]}`,
    aortaNormal: 'Bauchaortenpuls normal tastbar.',
    wholeLimb: genitiveOf,
    allPulses: (limbs, aorta) =>
      `Alle Pulse ${limbs}${aorta ? ' sowie der Bauchaortenpuls' : ''} normal tastbar.`,
    normalPlaces: (pulses) => `${sentence(pulses)} normal tastbar.`,
    pulses: (region, groups) => sentence(`${regionName(region)}${groups.map(group).join('; ')}.`),
    normalPulse: {
      only: 'Der eine beurteilte Puls ist normal tastbar.',
      other: 'Der eine übrige beurteilte Puls ist normal tastbar.',
    },
    both: 'Beide',
    all: (count) => `Alle ${count}`,
    normalPulses: {
      only: (all) => `${all} beurteilten Pulse sind normal tastbar.`,
      other: (all) => `${all} übrigen beurteilten Pulse sind normal tastbar.`,
    },
    expansile: (places) => `Expansive Pulsation: ${places}.`,
    thrill: (places) => `Tastbares Schwirren: ${places}.`,
    doppler: (signal, places) => `Taschendoppler, ${places}: ${signal}.`,
    bruit: {
      none: (places) => `Kein Strömungsgeräusch: ${places}.`,
      systolic: (places) => `Systolisches Strömungsgeräusch: ${places}.`,
      continuous: (places) => `Kontinuierliches Strömungsgeräusch: ${places}.`,
    },
    radioRadial: {
      none: 'Keine radioradiale Pulsverzögerung.',
      'right-later': 'Radioradiale Pulsverzögerung: Radialispuls rechts später.',
      'left-later': 'Radioradiale Pulsverzögerung: Radialispuls links später.',
    },
    radioFemoral: {
      none: (side) => `Keine radiofemorale Pulsverzögerung${SIDES[side]}.`,
      delayed: (side) => `Radiofemorale Pulsverzögerung${SIDES[side]}.`,
    },
    note: (place, note) => `${place}, Notiz: „${note}“.`,
    inspection: (limb, phrases) => `${limb}, Inspektion: ${phrases.join('; ')}.`,
    negatives: {
      ulcer: 'kein Ulkus',
      gangrene: 'keine Gangrän',
      infection: 'keine Infektionszeichen',
      systemic: 'keine systemischen Entzündungszeichen',
      sensation: 'Sensibilität normal',
      movement: 'Motorik normal',
      muscle: 'Muskulatur normal',
      venousDoppler: 'venöses Dopplersignal hörbar',
      stretchPain: 'kein passiver Dehnungsschmerz',
    },
    marks: (drawn) => `Auf der Haut eingezeichnet: ${drawn.join('; ')}.`,
    pressures: (unit, figures) => `Systolische Drücke in ${unit}: ${figures.join('; ')}.`,
    pressuresAfter: (unit, figures) => `Systolische Drücke nach Belastung in ${unit}: ${figures.join('; ')}.`,
    notMeasured: (sites) => `Nicht gemessen: ${sites.join(', ')}.`,
    schemes: {
      acute: 'akute Rutherford-Klasse',
      fontaine: 'Fontaine-Stadium',
      rutherford: 'Rutherford-Kategorie',
      wifi: 'Stadium für Wunde, Ischämie und Fußinfektion (WIfI)',
    },
    ownStage: 'ärztlich festgelegt',
    ownStageBecause: (why) => `ärztlich festgelegt: „${why}“`,
    between: {
      from: (above, below) => `irgendwo zwischen ${above} und ${below}`,
      fromHeart: (below) => `irgendwo zwischen Herz und ${below}`,
      beyond: (above) => `irgendwo distal von ${above}`,
      somewhere: 'irgendwo auf dem Weg',
    },
    suspects: { absent: 'einen Verschluss', reduced: 'eine Stenose oder einen Verschluss' },
    conclusion: (what, where, howSure) => `Die Befunde sprechen für ${what} ${where} (${howSure}).`,
    probability: (percent) => `Wahrscheinlichkeit ${percent}`,
    firm: {
      firm: 'Verlässlichkeit hoch',
      'fairly-firm': 'Verlässlichkeit mäßig',
      'not-firm': 'Verlässlichkeit gering',
    },
    suggests: (what, where, percent) => `Spricht für ${what} ${where} (${percent}).`,
    nature: (nature, percent) => `Wahrscheinlichste Ursache: ${nature} (${percent}).`,
    noLesion:
      'Die untersuchten Pulse sprechen gegen eine okklusive Läsion; ein tastbarer Puls schließt eine Arterienerkrankung nicht aus.',
    otherReason: 'anderer Grund',
    couldNotFeel: (places, reason) => `Palpatorisch nicht beurteilbar (${reason}): ${places}.`,
    couldNotListen: (places, reason) => `Auskultation nicht möglich (${reason}): ${places}.`,
    couldNotInspect: (limb, reason) => `${limb} nicht inspizierbar (${reason}).`,
    unreadPlaces: (places) => `In einer Form festgehalten, die diese Version nicht kennt: ${places}.`,
    otherPulses: { some: 'Die übrigen Pulse wurden nicht untersucht.', all: 'Kein Puls wurde untersucht.' },
    byRule: (lead) => `Nach der Pulsregel: ${lead}.`,
    smoker: { never: 'nie geraucht', past: 'früher geraucht', current: 'raucht' },
    nothingAbnormal: 'Unter den erfassten Befunden nichts Auffälliges.',
    caution:
      'Zusammengestellt aus den erfassten Befunden; keine Diagnose. Es entscheiden die örtlichen Regelungen und die behandelnden Ärzte.',
    signed: (examiner) => `Untersucht von ${examiner}.`,
  },
  element: {
    length: 'Länge des Textes',
    text: 'Text, frei zu ändern',
    copy: 'Text kopieren',
    copied: 'Kopiert.',
    notCopied: 'Der Browser hat das Kopieren verweigert. Der Text ist markiert: mit den Tasten kopieren.',
    copyTable: 'Tabelle der Stellen kopieren',
    tableCopied: 'Tabelle kopiert.',
    renew: 'Zurück zum erzeugten Text',
    renewed: 'Hier steht wieder der erzeugte Text.',
    changed: 'Der Befund hat sich geändert, seit Sie geschrieben haben. Ihr Text ist unverändert.',
    missing: 'Fehlt in diesem Text:',
    add: 'Einfügen',
    added: 'An seinem Platz eingefügt.',
    outdated: 'Steht in diesem Text und gilt nicht mehr:',
    takeOut: 'Streichen',
    takenOut: 'Gestrichen.',
    takeNew: 'Neuen Text nehmen',
    keep: 'Meinen behalten',
    kept: 'Ihr Text bleibt.',
    how: 'Schreibmarke in einen Satz setzen oder auf ihn zeigen: Dann steht hier, aus welchen Befunden er stammt.',
    from: 'Dieser Satz stammt aus:',
    fromNone: 'Dieser Satz beruht auf keinem einzelnen Befund.',
    ownWords: 'Ihre eigenen Worte.',
  },
  sites: {
    title: 'Untersuchte Stellen',
    scale: (scale) => `Pulsstärke auf der Skala ${scale}.`,
    columns: {
      site: 'Stelle',
      side: 'Seite',
      pulse: 'Puls',
      thrill: 'Schwirren oder expansiv',
      doppler: 'Dopplersignal',
      bruit: 'Geräusch',
      delay: 'Verzögerung',
      note: 'Notiz',
    },
    notAPulseSite: 'keine Taststelle',
    notAListeningSite: 'hier keine Auskultation',
    expansile: 'expansiv',
    noDelay: 'keine',
    later: 'später',
  },
};

export const letter = letterFrom(
  inRegisters(trade, plainLetter),
  de,
  { bedside, context, flags, history, inspection, pressures, staging, whole },
  speech,
);
