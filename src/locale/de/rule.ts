import type { Grade } from '../../examination/index.js';
import type {
  FeltStatement,
  LeadStatement,
  LesionSite,
  LesionStatement,
  LimbEnd,
  MissingSite,
  ReasonStatement,
  SharedStretch,
  SilentStatement,
  Spot,
} from '../../statements/index.js';
import type { RuleWords } from '../en/rule.js';
import { render, type Renderings } from '../render.js';
import { say, termsFrom } from '../terms.js';
import { anatomy, atName, pulseName, withArticle } from './anatomy.js';
import { examination as words } from './examination.js';
import { list, paragraph, sentence } from './phrases.js';

const felt = termsFrom<Grade>({
  absent: { trade: 'nicht tastbar', plain: 'nicht zu tasten' },
  reduced: { trade: 'abgeschwächt tastbar', plain: 'schwach zu tasten' },
  normal: { trade: 'tastbar', plain: 'zu tasten' },
  bounding: { trade: 'hebend tastbar', plain: 'auffallend kräftig' },
});

const KINDS: Record<
  LesionStatement['kind'],
  { word: () => string; article: string; doubtful: string; each: string }
> = {
  block: { word: () => 'Verschluss', article: 'ein', doubtful: 'fraglicher', each: 'einer' },
  narrowing: {
    word: () => say('Stenose', 'Engstelle'),
    article: 'eine',
    doubtful: 'fragliche',
    each: 'eine',
  },
};

const ends: Record<LimbEnd, string> = { wrist: 'Handgelenkspulse', foot: 'Fußpulse' };

/** "Poplitea links", "den Fußpulsen links", as it stands after "und" following "zwischen". */
const dative: Renderings<Spot> = {
  site: ({ place }) => anatomy.place(place),
  end: ({ end, side }) => `den ${ends[end]}n ${anatomy.sides[side]}`,
};
/** "der Poplitea links", "der Fußpulse links", as it stands after "oberhalb". */
const genitive: Renderings<Spot> = {
  site: ({ place }) => withArticle(anatomy.place(place), 'genitive'),
  end: ({ end, side }) => `der ${ends[end]} ${anatomy.sides[side]}`,
};
/** "zur Poplitea links", "zu den Fußpulsen links", as it stands after "bis". */
const toward: Renderings<Spot> = {
  site: ({ place }) => `zur ${anatomy.place(place)}`,
  end: (spot) => `zu ${render<Spot>(dative, spot)}`,
};

const sharedStretches: Renderings<SharedStretch> = {
  aorta: 'in der Aorta',
  'aorta-beyond-arch': 'in der Aorta jenseits des Bogens',
  arteries: ({ arteries }) => list(anatomy.stretches(arteries).map(atName), 'oder'),
};
const inShared = (shared: SharedStretch): string => render(sharedStretches, shared);

/** Where a lesion lies, as it stands after "Verschluss" or "Stenose"; `each` agrees with that word. */
const lesionSites = (each: string): Renderings<LesionSite> => ({
  artery: ({ arteries, alone }) => {
    const names = anatomy.stretches(arteries).map((name) => withArticle(name, 'genitive'));
    return `${alone ? 'allein ' : ''}${list(names, 'oder')}`;
  },
  'above-both-sites': ({ site, shared }) =>
    `oberhalb beider ${pulseName(site, 'e')}: ${inShared(shared)}, oder je ${each} auf jeder Seite`,
  'above-both-ends': ({ end, shared }) =>
    `oberhalb der ${ends[end]} beider Seiten: ${inShared(shared)}, oder je ${each} auf jeder Seite`,
  'above-each': ({ spots, shared }) => {
    const names = list(spots.map((spot) => render(genitive, spot)));
    const otherwise = spots.length === 2 ? `je ${each} oberhalb von beiden` : `mehr als ${each}`;
    return `oberhalb ${names}: ${inShared(shared)}, oder ${otherwise}`;
  },
  above: ({ below }) => `oberhalb ${render(genitive, below)}`,
  between: ({ above, below }) => `zwischen ${anatomy.place(above)} und ${render(dative, below)}`,
});

/** "Verschluss zwischen Femoralis links und Poplitea links", with what speaks against it beyond. */
function lesion({ kind, site, doubtful, beyond }: LesionStatement): string {
  const { word, each, doubtful: adjective } = KINDS[kind];
  const because = {
    weakly: (name: string) => `, distal davon ${name} schwach tastbar`,
    'in-full': (name: string) => `, denn distal davon ist ${name} voll tastbar`,
  };
  const more = beyond ? because[beyond.felt](anatomy.place(beyond.place)) : '';
  return `${doubtful ? `${adjective} ` : ''}${word()} ${render(lesionSites(each), site)}${more}`;
}

/** "Stenose …; dazu ein Verschluss …". */
function lesions([first, ...more]: readonly LesionStatement[]): string {
  const rest = more.map((one) => `${KINDS[one.kind].article} ${lesion(one)}`);
  return sentence(`${first ? lesion(first) : ''}${rest.length ? `; dazu ${list(rest)}` : ''}`);
}

const limb = (key: keyof typeof anatomy.limbs): string => sentence(anatomy.limbs[key]);

const palpable = (): string => say('tastbar, keiner abgeschwächt', 'zu tasten, keiner schwach');
/** A normal reading is where reassurance goes wrong. The lead brings its own full stop. */
const NOT_EXCLUDED = (): string =>
  say(
    'Ein tastbarer Puls schließt eine arterielle Erkrankung nicht aus',
    'Auch wenn ein Puls zu tasten ist, kann eine Gefäßerkrankung vorliegen',
  );

const leads: Renderings<LeadStatement> = {
  'no-pulse-anywhere': () =>
    say(
      'An keiner untersuchten Stelle ist ein Puls tastbar: zuerst den Kreislauf beurteilen (Schock, Kreislaufstillstand), dann einen Verschluss lokalisieren',
      'An keiner geprüften Stelle ist ein Puls zu tasten: Zuerst geht es um den ganzen Kreislauf',
    ),
  'reduced-everywhere': () =>
    say(
      'Alle tastbaren Pulse abgeschwächt: an geringen Fluss oder Vasokonstriktion denken, bevor an viele Stenosen',
      'Jeder Puls ist schwach: Ein schwacher Kreislauf oder Kälte erklärt das eher als viele Engstellen',
    ),
  lesions: ({ lesions: all }) => lesions(all),
  'all-felt': ({ pulses }) =>
    `Alle ${pulses} Pulse ${palpable()}: kein Verschluss erkennbar. ${NOT_EXCLUDED()}`,
  'limb-felt': ({ limb: key }) => `${limb(key)}: alle Pulse ${palpable()}. ${NOT_EXCLUDED()}`,
  'limb-felt-to': ({ limb: key, to, ungraded }) =>
    `${limb(key)}: ${felt.normal} bis ${render(toward, to)}; ${ungraded} ${ungraded === 1 ? 'Stelle' : 'Stellen'} ohne Grad`,
  'limb-ungraded': ({ limb: key }) => `${limb(key)}: kein Puls bewertet`,
  'aorta-only': () =>
    say(
      'Bauchaorta tastbar, distal davon nichts bewertet',
      'Bauchschlagader zu tasten, darunter nichts geprüft',
    ),
};

/** The finding at a place as the rule reads it: "Poplitea links nicht tastbar". */
const finding = ({ place, grade }: FeltStatement): string =>
  `${anatomy.place(place)} ${grade ? felt[grade] : words.notExamined}`;

/** Why a site between the bounds says nothing. */
const silence = ({ place, reason, locked }: SilentStatement): string =>
  `${anatomy.place(place)} ${locked ? words.unknownHere : reason ? `${words.couldNotExamine} (${words.reasons[reason]})` : words.notExamined}`;

const missing = termsFrom<MissingSite>({
  'dorsalis-pedis': {
    trade: 'Manche Gesunde haben keinen Dorsalis-pedis-Puls.',
    plain: 'Bei manchen Gesunden ist auf dem Fußrücken kein Puls zu tasten.',
  },
  'posterior-tibial': {
    trade: 'Einige wenige Gesunde haben keinen Tibialis-posterior-Puls.',
    plain: 'Bei wenigen Gesunden ist am Innenknöchel kein Puls zu tasten.',
  },
});

const reasons: Renderings<ReasonStatement> = {
  felt: ({ sites }) => `${sentence(sites.map(finding).join(', '))}.`,
  'from-heart': ({ to }) =>
    `Proximal ist kein Puls tastbar: Der Abschnitt reicht vom Herzen bis ${render(toward, to)}.`,
  'in-between': ({ arteries }) => `Dazwischen: ${list(anatomy.stretches(arteries))}.`,
  wide: ({ sites }) =>
    `${sentence(list(sites.map(silence)))}; deshalb lässt sich der Abschnitt nicht weiter eingrenzen.`,
  'may-be-missing': ({ site }) => missing[site],
  'often-out-of-reach': () =>
    say(
      'Eine nicht tastbare Bauchaorta schließt weder ein Aneurysma noch einen aortoiliakalen Verschluss aus.',
      'Eine nicht zu tastende Bauchschlagader sagt für sich allein wenig.',
    ),
};

export const rule: RuleWords = {
  nothing: 'Kein Puls erfasst',
  nothingMore: 'Solange kein Puls erfasst ist, wird über keine Arterie etwas gesagt.',
  get heading() {
    return say('Pulsregel', 'Was die Pulse allein sagen');
  },
  checkAgain: 'Erneut prüfen',
  lead: (statement) => render(leads, statement),
  lesion,
  reason: (statements) => paragraph(statements.map((one) => render(reasons, one))),
  contradiction: ({ weaker, stronger }) =>
    `${sentence(anatomy.place(stronger))} ist kräftiger tastbar als ${anatomy.place(weaker)} darüber: ${say('Einer der beiden Pulse ist möglicherweise falsch beurteilt, oder Kollateralen füllen den distalen wieder auf. Beide erneut palpieren.', 'Vielleicht ist einer falsch beurteilt, oder Umgehungsgefäße füllen den unteren. Beide noch einmal tasten.')}`,
  finding,
  silence,
};
