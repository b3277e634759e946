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
import { anatomy, atName, pulseName, withArticle } from './anatomy.js';
import { examination as words } from './examination.js';
import { list, paragraph, sentence } from './phrases.js';

const felt: Record<Grade, string> = {
  absent: 'nicht tastbar',
  reduced: 'abgeschwächt tastbar',
  normal: 'tastbar',
  bounding: 'hebend tastbar',
};

const KINDS: Record<
  LesionStatement['kind'],
  { word: string; article: string; doubtful: string; each: string }
> = {
  block: { word: 'Verschluss', article: 'ein', doubtful: 'fraglicher', each: 'einer' },
  narrowing: { word: 'Stenose', article: 'eine', doubtful: 'fragliche', each: 'eine' },
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
    `oberhalb beider ${pulseName(site)}e: ${inShared(shared)}, oder je ${each} auf jeder Seite`,
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
    weakly: (name: string) => `, jenseits davon ${name} schwach tastbar`,
    'in-full': (name: string) => `, denn jenseits davon ist ${name} voll tastbar`,
  };
  const more = beyond ? because[beyond.felt](anatomy.place(beyond.place)) : '';
  return `${doubtful ? `${adjective} ` : ''}${word} ${render(lesionSites(each), site)}${more}`;
}

/** "Stenose …; dazu ein Verschluss …". */
function lesions([first, ...more]: readonly LesionStatement[]): string {
  const rest = more.map((one) => `${KINDS[one.kind].article} ${lesion(one)}`);
  return sentence(`${first ? lesion(first) : ''}${rest.length ? `; dazu ${list(rest)}` : ''}`);
}

const limb = (key: keyof typeof anatomy.limbs): string => sentence(anatomy.limbs[key]);

const leads: Renderings<LeadStatement> = {
  'no-pulse-anywhere':
    'Nirgends, wo getastet wurde, ist ein Puls vorhanden: erst den Kreislauf versorgen, dann einen Verschluss suchen',
  'reduced-everywhere':
    'Jeder getastete Puls ist abgeschwächt: geringer Fluss oder Kälte erklärt das eher als viele Stenosen',
  lesions: ({ lesions: all }) => lesions(all),
  'all-felt': ({ pulses }) => `Alle ${pulses} Pulse tastbar, keiner abgeschwächt: kein Verschluss erkennbar`,
  'limb-felt': ({ limb: key }) => `${limb(key)}: alle Pulse tastbar, keiner abgeschwächt`,
  'limb-felt-to': ({ limb: key, to, ungraded }) =>
    `${limb(key)}: tastbar bis ${render(toward, to)}; ${ungraded} ${ungraded === 1 ? 'Stelle' : 'Stellen'} ohne Grad`,
  'limb-ungraded': ({ limb: key }) => `${limb(key)}: kein Puls bewertet`,
  'aorta-only': 'Bauchaorta tastbar, jenseits davon nichts bewertet',
};

/** The finding at a place as the rule reads it: "Poplitea links nicht tastbar". */
const finding = ({ place, grade }: FeltStatement): string =>
  `${anatomy.place(place)} ${grade ? felt[grade] : words.notExamined}`;

/** Why a site between the bounds says nothing. */
const silence = ({ place, reason, locked }: SilentStatement): string =>
  `${anatomy.place(place)} ${locked ? words.unknownHere : reason ? `${words.couldNotExamine} (${words.reasons[reason]})` : words.notExamined}`;

const missing: Record<MissingSite, string> = {
  'dorsalis-pedis': 'Manche Gesunde haben keinen Dorsalis-pedis-Puls.',
  'posterior-tibial': 'Einige wenige Gesunde haben keinen Tibialis-posterior-Puls.',
};

const reasons: Renderings<ReasonStatement> = {
  felt: ({ sites }) => `${sentence(sites.map(finding).join(', '))}.`,
  'from-heart': ({ to }) =>
    `Näher am Herzen ist kein Puls getastet: Die Strecke reicht vom Herzen bis ${render(toward, to)}.`,
  'in-between': ({ arteries }) => `Dazwischen: ${list(anatomy.stretches(arteries))}.`,
  wide: ({ sites }) => `${sentence(list(sites.map(silence)))}; deshalb ist die Strecke weiter als nötig.`,
  'may-be-missing': ({ site }) => missing[site],
  'often-out-of-reach':
    'Eine nicht tastbare Bauchaorta sagt für sich genommen wenig: Sie liegt oft zu tief für die Hand.',
};

export const rule: RuleWords = {
  nothing: 'Noch nichts untersucht',
  nothingMore: 'Es ist kein Puls erfasst, daher keine Aussage über eine Arterie.',
  heading: 'Regel am Krankenbett',
  checkAgain: 'Noch einmal prüfen',
  lead: (statement) => render(leads, statement),
  lesion,
  reason: (statements) => paragraph(statements.map((one) => render(reasons, one))),
  contradiction: ({ weaker, stronger }) =>
    `${sentence(anatomy.place(stronger))} ist kräftiger tastbar als ${anatomy.place(weaker)} darüber: Entweder wurde eine der beiden falsch getastet, oder Kollateralen füllen die untere. Beide noch einmal tasten.`,
  finding,
  silence,
};
