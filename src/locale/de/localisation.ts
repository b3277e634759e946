import { limbKey, namedStretches, type PieceKey, type SiteId } from '../../anatomy/index.js';
import type { ActId, Assumption, Cause, FindingId, Muscle, State } from '../../localisation/index.js';
import type {
  BeginsStatement,
  DownstreamStatement,
  FirmStatement,
  ImpossibleStatement,
  StoryStatement,
  VoicesStatement,
} from '../../statements/index.js';
import type { LocalisationWords } from '../en/localisation.js';
import { render, renderKind, type Renderings } from '../render.js';
import { anatomy, atLimb, pulseName, withArticle } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, paragraph, sentence } from './phrases.js';

const causes: Record<Cause, string> = {
  none: 'keine Arterienerkrankung',
  focal: 'eine oder wenige Engstellen',
  diffuse: 'Erkrankung vieler Arterien',
  distal: 'Erkrankung der kleinen peripheren Arterien',
  vasculitis: 'Entzündung der großen Arterien',
  embolic: 'eingeschwemmtes Gerinnsel',
  injury: 'Verletzung',
  compression: 'Druck von außen',
  coarctation: 'Aortenisthmusstenose',
  dissection: 'Aortendissektion',
  'low-flow': 'geringer Fluss oder Kälte',
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

const onSide = (site: SiteId, side: 'right' | 'left' | 'midline'): string =>
  `${pulseName(site)}${side === 'midline' ? '' : ` ${anatomy.sides[side]}`}`;

const findings: Renderings<FindingId, string, 'kind'> = {
  pulse: ({ place, grade }) => `${onSide(place.site, place.side)} ${examination.grades[grade]}`,
  doppler: ({ place, signal }) => `${anatomy.place(place)}, Doppler: ${examination.dopplers[signal]}`,
  thrill: ({ place }) => `${anatomy.place(place)}: Schwirren`,
  bruit: ({ place, bruit }) => `${anatomy.place(place)}: ${examination.bruits[bruit]}`,
  index: ({ place, value }) => `${anatomy.place(place)}, Druckindex ${decimal(value, 2)}`,
  'ankle-index': ({ side, value }) => `Knöchelindex ${anatomy.sides[side]} ${decimal(value, 2)}`,
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
    why: 'Ein Strömungsgeräusch dort würde zeigen, wo es eng ist.',
  }),
  'ankle-pressure': ({ side }) => ({
    name: `Knöcheldruck ${anatomy.sides[side]}`,
    why: 'Sagt, wie stark der Abfall ist.',
  }),
  'arm-pressures': {
    name: 'Druck an beiden Armen',
    why: 'Ein Unterschied spricht für die Einstrombahn des Arms mit dem tieferen Druck.',
  },
};

/** What an answer hangs on, as it stands after "davon ab,". */
const assumptions: Renderings<Assumption, string, 'kind'> = {
  cause: ({ cause }) => `wie häufig die Ursache „${causes[cause]}“ ist`,
  artery: ({ artery }) => `wie oft ${withArticle(anatomy.arteries[artery], 'nominative')} erkrankt ist`,
  palpation: ({ site }) => `wie zuverlässig der ${pulseName(site)} getastet wird`,
  passage: ({ through }) => `wie viel Puls eine ${states[through]}e Arterie durchlässt`,
  bruit: 'wie oft eine Engstelle zu hören ist',
  doppler: 'was ein Dopplersignal aussagt',
  index: 'was ein Druckindex aussagt',
  pain: 'was der Ort der Schmerzen aussagt',
  delay: 'was eine Pulsverzögerung aussagt',
};

const grades = { 'fairly-firm': 'Recht belastbar.', 'not-firm': 'Nicht belastbar.' };

function infirm({ code, hangsOn, limb, ungraded }: Exclude<FirmStatement, { code: 'firm' }>): string {
  const on = list(hangsOn.map((one) => renderKind(assumptions, one)));
  const left = ungraded === 1 ? 'fehlt noch eine Stelle' : `fehlen noch ${ungraded} Stellen`;
  return paragraph([
    grades[code],
    on && `Es hängt davon ab, ${on}.`,
    ungraded ? `${sentence(atLimb[limb])} ${left}.` : '',
  ]);
}

const firm: Renderings<FirmStatement> = {
  firm: 'Belastbar. Auch wenn man eine Annahme halbiert oder verdoppelt, bleibt diese Antwort die erste.',
  'fairly-firm': infirm,
  'not-firm': infirm,
};

/** "Poplitea supragenual links verschlossen". */
const lesion = ({ piece, state }: Pick<DownstreamStatement, 'piece' | 'state'>): string =>
  `${anatomy.piece(piece)} ${states[state]}`;

const stories: Renderings<StoryStatement> = {
  'all-open': ({ cause }) => `Die wahrscheinlichste Erklärung: alle Arterien offen; ${causes[cause]}.`,
  lesions: ({ cause, lesions }) =>
    `Die wahrscheinlichste Erklärung: ${list(lesions.map(lesion))}; dahinter: ${causes[cause]}.`,
};

const begins: Renderings<BeginsStatement> = {
  answer: ({ pieces: keys }) => sentence(pieces(keys)),
  nothing: 'Kein Verschluss erkennbar',
  elsewhere: 'Anderswo',
};

const DISAGREE = 'Regel und Wahrscheinlichkeiten widersprechen sich.';

const voices: Renderings<VoicesStatement, { claim: string; why: string }> = {
  agree: { claim: '', why: 'Regel und Wahrscheinlichkeiten stimmen überein.' },
  disagree: ({ pieces: keys }) => ({
    claim: DISAGREE,
    why: `Nach Wahrscheinlichkeit ist es ${pieces(keys)}; die Befunde prüfen, die einander widersprechen.`,
  }),
  'rule-alone': {
    claim: DISAGREE,
    why: 'Nach Wahrscheinlichkeit ist hier eher nichts verschlossen: Ein Puls könnte falsch beurteilt sein. Noch einmal tasten.',
  },
  'network-alone': ({ pieces: keys }) => ({
    claim: `Nach der Regel ist kein Verschluss erkennbar; nach Wahrscheinlichkeit ist es ${pieces(keys)}.`,
    why: '',
  }),
};

const IMPOSSIBLE = 'Kein Zustand der Arterien erklärt diese Befunde zusammen.';

const impossible: Renderings<ImpossibleStatement> = {
  'any-of': ({ findings: ids }) =>
    `${IMPOSSIBLE} Ohne einen von diesen passten sie: ${list(ids.map(finding))}.`,
  impossible: IMPOSSIBLE,
};

/** Words of the belief network's answers. */
export const localisation: LocalisationWords = {
  causes,
  states,
  beginsHeading: 'Wo die Störung beginnt, nach Wahrscheinlichkeit',
  begins: (statement) => render(begins, statement),
  nothing: begins.nothing as string,
  voices: (statement) => render(voices, statement),
  downstreamHeading: 'Und weiter unten',
  downstream: (statement) => sentence(lesion(statement)),
  evidenceHeading: 'Was für die erste Antwort spricht',
  ways: { for: 'dafür', against: 'dagegen' },
  weight: ({ way, odds }) =>
    way === 'for'
      ? `dafür, Chancen mal ${decimal(odds, 1)}`
      : `dagegen, Chancen geteilt durch ${decimal(odds, 1)}`,
  finding,
  next: 'Als Nächstes, weil es am meisten zeigt',
  start: 'Beginnen mit',
  act: (id) => renderKind(acts, id),
  openNow: 'Öffnen',
  howFirm: 'Wie belastbar',
  firm: (statement) => render(firm, statement),
  numbers: 'Zahlen',
  levels: 'Nach Etagen',
  story: (statement) => render(stories, statement),
  impossible: (statement) => render(impossible, statement),
  where: (place) => sentence(anatomy.place(place)),
  causesHeading: 'Was dahinter steckt, nach Wahrscheinlichkeit',
};
