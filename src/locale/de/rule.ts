import { ruleFrom, type RuleTable } from '../rule.js';
import { inRegisters } from '../terms.js';
import { anatomy, atName, pulseName, withArticle } from './anatomy.js';
import { examination } from './examination.js';
import { either, list, speech } from './phrases.js';
import { plainRule } from './rule-plain.js';
import { dative, ends, genitive, toward } from './spots.js';

/** As it stands after "je" and "mehr als". */
const ONE = { block: 'einer', narrowing: 'eine' };

const table: RuleTable = {
  nothing: 'Kein Puls erfasst',
  nothingMore: 'Solange kein Puls erfasst ist, wird über keine Arterie etwas gesagt.',
  heading: 'Pulsregel',
  checkAgain: 'Erneut prüfen',
  felt: {
    absent: 'nicht tastbar',
    reduced: 'abgeschwächt tastbar',
    normal: 'tastbar',
    bounding: 'hebend tastbar',
  },
  kinds: { block: 'Verschluss', narrowing: 'Stenose' },
  doubtful: { block: 'fraglicher', narrowing: 'fragliche' },
  article: (kind) => (kind === 'block' ? 'ein' : 'eine'),
  inArtery: (names) => either(names.map((name) => withArticle(name, 'genitive'))),
  alone: (artery) => `allein ${artery}`,
  aboveBothSites: (site) => `oberhalb beider ${pulseName(site, 'e')}`,
  aboveBothEnds: (end) => `oberhalb der ${ends[end]} beider Seiten`,
  above: (all) => `oberhalb ${list(all.map(genitive))}`,
  between: (above, below) => `zwischen ${anatomy.place(above)} und ${dative(below)}`,
  aorta: 'in der Aorta',
  aortaBeyondArch: 'in der Aorta jenseits des Bogens',
  atArteries: (names) => either(names.map(atName)),
  oneEachSide: (kind) => `oder je ${ONE[kind]} auf jeder Seite`,
  oneAboveEach: (kind) => `oder je ${ONE[kind]} oberhalb von beiden`,
  moreThanOne: (kind) => `oder mehr als ${ONE[kind]}`,
  beyond: {
    weakly: (place) => `, distal davon ${anatomy.place(place)} schwach tastbar`,
    'in-full': (place) => `, denn distal davon ist ${anatomy.place(place)} voll tastbar`,
  },
  further: (lesions) => `; dazu ${list(lesions)}`,
  noPulseAnywhere:
    'An keiner untersuchten Stelle ist ein Puls tastbar: zuerst den Kreislauf beurteilen (Schock, Kreislaufstillstand), dann einen Verschluss lokalisieren',
  reducedEverywhere:
    'Alle tastbaren Pulse abgeschwächt: an geringen Fluss oder Vasokonstriktion denken, bevor an viele Stenosen',
  allFelt: (pulses) => `Alle ${pulses} Pulse tastbar, keiner abgeschwächt: kein Verschluss erkennbar`,
  limbFelt: (limb) => `${limb}: alle Pulse tastbar, keiner abgeschwächt`,
  limbFeltTo: (limb, to, ungraded) =>
    `${limb}: tastbar bis ${toward(to)}; ${ungraded} ${ungraded === 1 ? 'Stelle' : 'Stellen'} ohne Grad`,
  limbUngraded: (limb) => `${limb}: kein Puls bewertet`,
  aortaOnly: 'Bauchaorta tastbar, distal davon nichts bewertet',
  notExcluded: 'Ein tastbarer Puls schließt eine arterielle Erkrankung nicht aus',
  fromHeart: (to) => `Proximal ist kein Puls tastbar: Der Abschnitt reicht vom Herzen bis ${toward(to)}.`,
  inBetween: (arteries) => `Dazwischen: ${arteries}.`,
  wide: (sites) => `${sites}; deshalb lässt sich der Abschnitt nicht weiter eingrenzen.`,
  missing: {
    'dorsalis-pedis': 'Manche Gesunde haben keinen Dorsalis-pedis-Puls.',
    'posterior-tibial': 'Einige wenige Gesunde haben keinen Tibialis-posterior-Puls.',
  },
  outOfReach:
    'Eine nicht tastbare Bauchaorta schließt weder ein Aneurysma noch einen aortoiliakalen Verschluss aus.',
  contradiction: (stronger, weaker) =>
    `${anatomy.place(stronger)} ist kräftiger tastbar als ${anatomy.place(weaker)} darüber: Einer der beiden Pulse ist möglicherweise falsch beurteilt, oder Kollateralen füllen den distalen wieder auf. Beide erneut palpieren.`,
};

export const rule = ruleFrom(inRegisters(table, plainRule), { anatomy, examination, speech });
