import { limbKey, type LimbKey, type PieceKey, type SiteId } from '../../anatomy/index.js';
import type { ActId, Assumption, Cause, FindingId, Muscle, State } from '../../localisation/index.js';
import type { LocalisationWords } from '../en/localisation.js';
import { anatomy, atLimb, pulseName, withArticle } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, sentence } from './phrases.js';
import { pieces as named } from './rule.js';

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
function pieces(keys: readonly PieceKey[]): string {
  return list(named(keys), 'oder');
}

const DELAY = { right: 'rechts später', left: 'links später', both: 'beidseits', none: 'keine' };

const onSide = (site: SiteId, side: 'right' | 'left' | 'midline'): string =>
  `${pulseName(site)}${side === 'midline' ? '' : ` ${anatomy.sides[side]}`}`;

function finding(id: FindingId): string {
  switch (id.kind) {
    case 'pulse':
      return `${onSide(id.place.site, id.place.side)} ${examination.grades[id.grade]}`;
    case 'doppler':
      return `${anatomy.place(id.place)}, Doppler: ${examination.dopplers[id.signal]}`;
    case 'thrill':
      return `${anatomy.place(id.place)}: Schwirren`;
    case 'bruit':
      return `${anatomy.place(id.place)}: ${examination.bruits[id.bruit]}`;
    case 'index':
      return `${anatomy.place(id.place)}, Druckindex ${decimal(id.value, 2)}`;
    case 'ankle-index':
      return `Knöchelindex ${anatomy.sides[id.side]} ${decimal(id.value, 2)}`;
    case 'pain':
      return id.muscle === 'none'
        ? `Kein Belastungsschmerz ${atLimb[limbKey(id.limb)]}`
        : `Belastungsschmerz: ${anatomy.limbs[limbKey(id.limb)]}, ${muscles[id.muscle]}`;
    case 'delay':
      return id.of === 'radio-radial'
        ? `Verzögerung zwischen den Radialispulsen: ${DELAY[id.side]}`
        : `Verzögerung von Radialis zu Femoralis: ${DELAY[id.side]}`;
  }
}

/** What to do next, and why. */
function act(id: ActId): { name: string; why: string } {
  switch (id.kind) {
    case 'feel':
      return { name: onSide(id.place.site, id.place.side), why: anatomy.technique[id.place.site] };
    case 'listen':
      return {
        name: `${anatomy.place(id.place)}: auskultieren`,
        why: 'Ein Strömungsgeräusch dort würde zeigen, wo es eng ist.',
      };
    case 'ankle-pressure':
      return { name: `Knöcheldruck ${anatomy.sides[id.side]}`, why: 'Sagt, wie stark der Abfall ist.' };
    case 'arm-pressures':
      return {
        name: 'Druck an beiden Armen',
        why: 'Ein Unterschied spricht für die Einstrombahn des Arms mit dem tieferen Druck.',
      };
  }
}

/** What an answer hangs on, as it stands after "davon,". */
function assumption(one: Assumption): string {
  switch (one.kind) {
    case 'cause':
      return `wie häufig die Ursache „${causes[one.cause]}“ ist`;
    case 'artery':
      return `wie oft ${withArticle(anatomy.arteries[one.artery], 'nominative')} erkrankt ist`;
    case 'palpation':
      return `wie zuverlässig der ${pulseName(one.site)} getastet wird`;
    case 'passage':
      return `wie viel Puls eine ${states[one.through]}e Arterie durchlässt`;
    case 'bruit':
      return 'wie oft eine Engstelle zu hören ist';
    case 'doppler':
      return 'was ein Dopplersignal aussagt';
    case 'index':
      return 'was ein Druckindex aussagt';
    case 'pain':
      return 'was der Ort der Schmerzen aussagt';
    case 'delay':
      return 'was eine Pulsverzögerung aussagt';
  }
}

function firm(
  grade: 'firm' | 'fairly-firm' | 'not-firm',
  overturned: readonly { assumption: Assumption }[],
  unstated: number,
  limb: LimbKey,
): string {
  if (grade === 'firm') {
    return 'Belastbar. Auch wenn man eine Annahme halbiert oder verdoppelt, bleibt diese Antwort die erste.';
  }
  const names = [...new Set(overturned.map((one) => assumption(one.assumption)))];
  const why = names.length ? ` Es hängt davon ab, ${list(names.slice(0, 2))}.` : '';
  const left = unstated
    ? ` ${sentence(atLimb[limb])} ${unstated === 1 ? 'fehlt noch eine Stelle' : `fehlen noch ${unstated} Stellen`}.`
    : '';
  return `${grade === 'fairly-firm' ? 'Recht belastbar.' : 'Nicht belastbar.'}${why}${left}`;
}

function story(
  cause: Cause,
  lesions: readonly { piece: PieceKey; state: Exclude<State, 'patent'> }[],
): string {
  if (!lesions.length) return `Die wahrscheinlichste Erklärung: alle Arterien offen; ${causes[cause]}.`;
  const parts = lesions.map(({ piece, state }) => `${anatomy.piece(piece)} ${states[state]}`);
  return `Die wahrscheinlichste Erklärung: ${list(parts)}; dahinter: ${causes[cause]}.`;
}

/** Words of the belief network's answers. */
export const localisation: LocalisationWords = {
  causes,
  states,
  answer: (answer) => sentence(pieces(answer.pieces)),
  pieces,
  begins: 'Wo die Störung beginnt, nach Wahrscheinlichkeit',
  nothing: 'Kein Verschluss erkennbar',
  elsewhere: 'Anderswo',
  agree: 'Regel und Wahrscheinlichkeiten stimmen überein.',
  disagree: 'Regel und Wahrscheinlichkeiten widersprechen sich.',
  disagreeWhy: (answer) =>
    `Nach Wahrscheinlichkeit ist es ${answer}; die Befunde prüfen, die einander widersprechen.`,
  disagreeNone:
    'Nach Wahrscheinlichkeit ist hier eher nichts verschlossen: Ein Puls könnte falsch beurteilt sein. Noch einmal tasten.',
  ruleSilent: (answer) =>
    `Nach der Regel ist kein Verschluss erkennbar; nach Wahrscheinlichkeit ist es ${answer}.`,
  downstream: 'Und weiter unten',
  downstreamState: (piece, state) => sentence(`${anatomy.piece(piece)} ${states[state]}`),
  evidence: 'Was für die erste Antwort spricht',
  for: 'dafür',
  against: 'dagegen',
  weight: (weight) =>
    `${weight > 0 ? 'dafür' : 'dagegen'}, Chancen ${weight > 0 ? 'mal' : 'geteilt durch'} ${decimal(Math.exp(Math.abs(weight)), 1)}`,
  finding,
  next: 'Als Nächstes, weil es am meisten zeigt',
  start: 'Beginnen mit',
  act,
  openNow: 'Öffnen',
  howFirm: 'Wie belastbar',
  firm,
  numbers: 'Zahlen',
  levels: 'Nach Etagen',
  story,
  impossible: 'Kein Zustand der Arterien erklärt diese Befunde zusammen.',
  impossibleWhy: (ids) => (ids.length ? `Ohne einen von diesen passten sie: ${list(ids.map(finding))}.` : ''),
  where: (place) => sentence(anatomy.place(place)),
  causesHeading: 'Was dahinter steckt, nach Wahrscheinlichkeit',
};
