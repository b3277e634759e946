import { limbKey, namedStretches, type PieceKey, type SiteId } from '../../anatomy/index.js';
import type {
  ActId,
  Assumption,
  Cause,
  FindingId,
  Muscle,
  NotExcluded,
  SettlingQuestion,
  State,
  Whereabouts,
} from '../../localisation/index.js';
import type {
  BeginsStatement,
  FirmStatement,
  FurtherStatement,
  ImpossibleStatement,
  Nature,
  NextStatement,
  OccludedStatement,
  StoryStatement,
  VoicesStatement,
} from '../../statements/index.js';
import type { LocalisationWords } from '../en/localisation.js';
import { render, renderKind, type Renderings } from '../render.js';
import { anatomy, atLimb, pulseName } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, paragraph, percent, sentence } from './phrases.js';
import { skinLevels } from './skin-levels.js';

const causes: Record<Cause, string> = {
  none: 'keine Arterienerkrankung',
  focal: 'umschriebene Erkrankung (eine oder wenige Läsionen)',
  diffuse: 'diffuse Erkrankung (Mehretagenbefall)',
  distal: 'Erkrankung der kleinen peripheren Arterien',
  vasculitis: 'Großgefäßvaskulitis',
  embolic: 'Embolie',
  injury: 'Verletzung',
  compression: 'Kompression von außen oder Entrapment',
  coarctation: 'Aortenisthmusstenose',
  dissection: 'Aortendissektion',
  aneurysm: 'Aneurysma',
  'low-flow': 'geringer Fluss oder Vasokonstriktion',
};

const states: Record<State, string> = { patent: 'offen', narrowed: 'verengt', blocked: 'verschlossen' };

const muscles: Record<Muscle, string> = {
  none: 'keiner',
  buttock: 'Gesäß',
  thigh: 'Oberschenkel',
  'calf-upper': 'obere Wade',
  'calf-lower': 'untere Wade',
  foot: 'Fuß',
  arm: 'Arm',
};

/** Several pieces as one names them, as alternatives. */
const pieces = (keys: readonly PieceKey[]): string => list(anatomy.stretches(namedStretches(keys)), 'oder');

const DELAY = { right: 'rechts später', left: 'links später', both: 'beidseits', none: 'keine' };

const between = {
  'radio-radial': 'Verzögerung zwischen den Radialispulsen',
  'radio-femoral': 'Verzögerung von Radialis zu Femoralis',
};

const temperatures = { warm: 'warm', cool: 'kühl', cold: 'kalt' };

const onSide = (site: SiteId, side: 'right' | 'left' | 'midline'): string =>
  `${pulseName(site)}${side === 'midline' ? '' : ` ${anatomy.sides[side]}`}`;

const findings: Renderings<FindingId, string, 'kind'> = {
  pulse: ({ place, grade }) => `${onSide(place.site, place.side)} ${examination.grades[grade]}`,
  doppler: ({ place, signal }) => `${anatomy.place(place)}, Doppler: ${examination.dopplers[signal]}`,
  thrill: ({ place }) => `${anatomy.place(place)}: Schwirren`,
  bruit: ({ place, bruit }) => `${anatomy.place(place)}: ${examination.bruits[bruit]}`,
  index: ({ place, value }) => `${anatomy.place(place)}, Druckindex ${decimal(value, 2)}`,
  'ankle-index': ({ side, value }) => `ABI ${anatomy.sides[side]} ${decimal(value, 2)}`,
  'digit-index': ({ limb, value }) =>
    `${limb.kind === 'leg' ? 'Zehenindex' : 'Fingerindex'} ${anatomy.sides[limb.side]} ${decimal(value, 2)}`,
  incompressible: ({ place }) => `${anatomy.place(place)} nicht komprimierbar`,
  exercise: ({ side, falls }) =>
    `${falls ? 'Knöcheldruck fällt' : 'Kein Abfall des Knöcheldrucks'} nach Belastung, ${anatomy.sides[side]}`,
  skin: ({ limb, temperature, level }) =>
    `${sentence(anatomy.limbs[limbKey(limb)])} ${temperatures[temperature]}${level ? ` ab Höhe ${skinLevels[level]}` : ''}`,
  wound: ({ limb }) => `Ulkus oder Gangrän, ${anatomy.limbs[limbKey(limb)]}`,
  numbness: ({ limb }) => `Gefühlsverlust über die Spitzen hinaus, ${anatomy.limbs[limbKey(limb)]}`,
  'hand-arch': ({ side, artery, fills }) =>
    `Hohlhandbogentest ${anatomy.sides[side]}: Handfläche ${fills ? 'füllt sich' : 'bleibt weiß'} nach Freigabe, ${anatomy.arteries[artery]}`,
  pain: ({ limb, muscle }) =>
    muscle === 'none'
      ? `Kein Belastungsschmerz ${atLimb[limbKey(limb)]}`
      : `Belastungsschmerz: ${anatomy.limbs[limbKey(limb)]}, ${muscles[muscle]}`,
  delay: ({ of, side }) => `${between[of]}: ${DELAY[side]}`,
};
const finding = (id: FindingId): string => renderKind(findings, id);

const acts: Renderings<ActId, { name: string; why: string }, 'kind'> = {
  feel: ({ place }) => ({ name: onSide(place.site, place.side), why: anatomy.technique[place.site] }),
  listen: ({ place }) => ({
    name: `${anatomy.place(place)}: auskultieren`,
    why: 'Ein Strömungsgeräusch dort würde die Stenose lokalisieren.',
  }),
  'ankle-pressure': ({ side }) => ({
    name: `Knöcheldruck ${anatomy.sides[side]}`,
    why: 'Sagt, wie stark der Abfall ist.',
  }),
  doppler: ({ place }) => ({
    name: `${anatomy.place(place)}: Doppler`,
    why: 'Sagt, ob und wie dort Blut fließt.',
  }),
  'toe-pressure': ({ side }) => ({
    name: `Zehendruck ${anatomy.sides[side]}`,
    why: 'Sagt etwas über den Fuß, wo der Knöchel es nicht tut oder die Arterien starr sind.',
  }),
  delay: ({ of }) => ({ name: between[of], why: 'Ein späterer Puls spricht für die Arterie dazwischen.' }),
  'pain-level': ({ limb }) => ({
    name: `Ort des Belastungsschmerzes: ${anatomy.limbs[limbKey(limb)]}`,
    why: 'Der höchste schmerzende Muskel weist auf die Arterie darüber.',
  }),
  onset: {
    name: 'Wie es begann',
    why: 'Plötzlich oder allmählich entscheidet zwischen Embolie und alter Erkrankung.',
  },
  'arm-pressures': {
    name: 'Druck an beiden Armen',
    why: 'Ein Unterschied spricht für eine Läsion von Subclavia oder Truncus brachiocephalicus auf der Seite des niedrigeren Drucks.',
  },
};

/** What an answer hangs on, as it stands after "davon ab,". */
const assumptions: Renderings<Assumption, string, 'kind'> = {
  cause: ({ cause }) => `wie häufig die Ursache „${causes[cause]}“ ist`,
  palpation: ({ site }) => `wie zuverlässig der ${pulseName(site)} getastet wird`,
  bruit: 'wie oft eine Stenose zu hören ist',
  doppler: 'was ein Dopplersignal aussagt',
  index: 'was ein Druckindex aussagt',
  pain: 'was der Ort der Schmerzen aussagt',
  delay: 'was eine Pulsverzögerung aussagt',
  seen: 'was Haut, Wunden und Gefühl aussagen',
};

const grades = {
  firm: 'Belastbar: So eingestufte Antworten trafen in veröffentlichten Fällen mindestens neunmal von zehn zu.',
  'fairly-firm':
    'Recht belastbar: So eingestufte Antworten trafen in veröffentlichten Fällen sieben- bis neunmal von zehn zu.',
  'not-firm':
    'Nicht belastbar: So eingestufte Antworten trafen in veröffentlichten Fällen seltener als siebenmal von zehn zu.',
};

function firm({ code, hangsOn, held, tried, limb, ungraded }: FirmStatement): string {
  const on = list(hangsOn.map((one) => renderKind(assumptions, one)));
  const left = ungraded === 1 ? 'fehlt noch eine Stelle' : `fehlen noch ${ungraded} Stellen`;
  return paragraph([
    grades[code],
    `Bleibt in ${held} von ${tried} Abwandlungen aller Annahmen zugleich die erste Antwort.`,
    on && `Es hängt davon ab, ${on}.`,
    ungraded ? `${sentence(atLimb[limb])} ${left}.` : '',
  ]);
}

/** "Poplitea supragenual links verschlossen". */
const lesion = ({ piece, state }: { piece: PieceKey; state: State }): string =>
  `${anatomy.piece(piece)} ${states[state]}`;

const stories: Renderings<StoryStatement> = {
  'all-open': ({ cause }) =>
    `Wahrscheinlichste Gesamterklärung: alle Arterien durchgängig; ${causes[cause]}.`,
  lesions: ({ cause, lesions }) =>
    `Wahrscheinlichste Gesamterklärung: ${list(lesions.map(lesion))}; wahrscheinliche Ursache: ${causes[cause]}.`,
};

const occluded: Renderings<OccludedStatement> = {
  entry: ({ pieces: keys, pulse }) =>
    sentence(`${pieces(keys)}${pulse === 'reduced' ? ', stenosiert oder über Kollateralen aufgefüllt' : ''}`),
  open: 'Keine Hauptarterie verschlossen',
  elsewhere: 'Andere Stelle',
};

const wheres: Record<FurtherStatement['where'], string> = { above: 'proximal davon', beyond: 'distal davon' };

const notExcluded: Record<NotExcluded, string> = {
  'small-arteries': 'Erkrankung der kleinsten Arterien',
  emboli: 'Embolien',
  injury: 'Arterienschaden durch die Verletzung',
  exertion: 'Stenose, die sich nur unter Belastung zeigt',
};

const questions: Record<SettlingQuestion, { name: string; why: string }> = {
  circulation: {
    name: 'Blutdruck und Körpertemperatur',
    why: 'Niedriger Druck oder Auskühlung nimmt mehreren Gliedmaßen den Puls, ohne dass eine Arterie erkrankt ist.',
  },
  swelling: {
    name: 'Ist das Bein geschwollen und blau?',
    why: 'Eine durch Gerinnsel verlegte Vene kann den Puls eines geschwollenen blauen Beins nehmen.',
  },
  access: {
    name: 'Hat dieser Arm einen Dialysezugang?',
    why: 'Ein Zugang leitet dem Handgelenk Blut ab, ohne dass eine Arterie erkrankt ist.',
  },
  'from-birth': {
    name: 'War dieser Puls jemals tastbar?',
    why: 'Vielen Menschen fehlt ein Fußpuls von Geburt an, oder er ist beidseits schwer zu tasten.',
  },
};

const natures: Record<Nature, string> = {
  embolus: 'Embolie',
  thrombosis: 'Thrombose in situ',
  'chronic-disease': 'chronische Arterienerkrankung',
  injury: 'Verletzung',
  dissection: 'Dissektion',
  aneurysm: 'Aneurysma',
  vasculitis: 'Vaskulitis',
  compression: 'Kompression von außen oder Entrapment',
  coarctation: 'Aortenisthmusstenose',
  'low-flow': 'geringer Fluss oder Vasokonstriktion',
  none: 'keine Arterienerkrankung',
};

const nexts: Renderings<NextStatement, { name: string; why: string }> = {
  settle: ({ question }) => questions[question],
  act: ({ act }) => renderKind(acts, act),
  enough: {
    name: 'Am Krankenbett ist nichts mehr zu finden, das viel daran ändert',
    why: 'Bildgebung nach örtlichem Vorgehen.',
  },
};

const begins: Renderings<BeginsStatement> = {
  answer: ({ pieces: keys }) => sentence(pieces(keys)),
  nothing: 'Keine okklusive Läsion erkennbar',
  elsewhere: 'Andere Stelle',
};

const DISAGREE = 'Pulsregel und Wahrscheinlichkeitsmodell widersprechen sich.';

const voices: Renderings<VoicesStatement, { claim: string; why: string }> = {
  agree: { claim: '', why: 'Pulsregel und Wahrscheinlichkeitsmodell stimmen überein.' },
  disagree: ({ pieces: keys }) => ({
    claim: DISAGREE,
    why: `Das Wahrscheinlichkeitsmodell spricht für ${pieces(keys)}; die widersprüchlichen Befunde prüfen.`,
  }),
  'rule-alone': {
    claim: DISAGREE,
    why: 'Das Wahrscheinlichkeitsmodell spricht hier gegen eine okklusive Läsion: Ein Puls könnte falsch beurteilt sein. Erneut palpieren.',
  },
  'network-alone': ({ pieces: keys }) => ({
    claim: `Nach der Pulsregel ist keine okklusive Läsion erkennbar; das Wahrscheinlichkeitsmodell spricht für ${pieces(keys)}.`,
    why: '',
  }),
};

const IMPOSSIBLE = 'Diese Befunde passen nicht zueinander.';

const impossible: Renderings<ImpossibleStatement> = {
  'any-of': ({ findings: ids }) =>
    `${IMPOSSIBLE} Ohne einen von diesen passten sie: ${list(ids.map(finding))}.`,
  impossible: IMPOSSIBLE,
};

/** "irgendwo zwischen A. femoralis links und A. poplitea links". */
function betweenSites({ above, below }: Pick<Whereabouts, 'above' | 'below'>): string {
  const ends = list(below.map((place) => anatomy.place(place)));
  if (!ends) return above ? `irgendwo hinter ${anatomy.place(above)}` : 'irgendwo auf dem Weg';
  return `irgendwo zwischen ${above ? anatomy.place(above) : 'dem Herzen'} und ${ends}`;
}

/** Words of the belief network's answers. */
export const localisation: LocalisationWords = {
  causes,
  states,
  occludedHeading: 'Ort des Verschlusses, nach Wahrscheinlichkeit',
  occluded: (statement) => render(occluded, statement),
  between: betweenSites,
  headline: (where) =>
    `${where.pulse === 'absent' ? 'Verschluss' : 'Stenose oder Verschluss'} ${betweenSites(where)}, ${percent(where.probability)}`,
  stretch: (where) => sentence(betweenSites(where)),
  byArtery: 'Nach Arterie',
  natureHeading: 'Wahrscheinliche Ursache',
  beginsHeading: 'Proximalste Läsion, nach Wahrscheinlichkeit',
  begins: (statement) => render(begins, statement),
  nothing: begins.nothing as string,
  voices: (statement) => render(voices, statement),
  furtherHeading: 'Weitere Läsionen',
  further: ({ pieces: keys, state, where }) => sentence(`${pieces(keys)} ${states[state]}, ${wheres[where]}`),
  notExcluded: (what) =>
    `Durch Pulse nicht ausgeschlossen: ${list(
      what.map((one) => notExcluded[one]),
      'oder',
    )}.`,
  conflict: ({ finding: id, with: other }) =>
    `${finding(id)} passt kaum zu: ${finding(other)}. Beides noch einmal prüfen.`,
  nature: ({ nature, probability }) => `${sentence(natures[nature])}: ${percent(probability)}.`,
  evidenceHeading: 'Was für und gegen die führende Lokalisation spricht',
  ways: { for: 'dafür', against: 'dagegen' },
  weight: ({ way, odds }) =>
    way === 'for'
      ? `dafür, Chancen mal ${decimal(odds, 1)}`
      : `dagegen, Chancen geteilt durch ${decimal(odds, 1)}`,
  finding,
  nextHeading: 'Nächster Schritt mit dem größten Erkenntnisgewinn',
  next: (statement) => render(nexts, statement),
  start: 'Beginnen mit',
  act: (id) => renderKind(acts, id),
  openNow: 'Zur Stelle',
  howFirm: 'Belastbarkeit',
  firm,
  numbers: 'Alle Wahrscheinlichkeiten',
  levels: 'Nach Etagen',
  story: (statement) => render(stories, statement),
  impossible: (statement) => render(impossible, statement),
  where: (place) => sentence(anatomy.place(place)),
  causesHeading: 'Wahrscheinliche Ursache',
};
