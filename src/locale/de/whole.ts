import {
  bruitAt,
  type Examination,
  PRESSURE_SITES,
  type PressureSite,
  pulseAt,
} from '../../examination/index.js';
import { PLACES } from '../../anatomy/index.js';
import type { PartId, SummaryPart, WholeWords } from '../en/whole.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { examination as words } from './examination.js';
import { context } from './context.js';
import { history } from './history.js';
import { inspection } from './inspection.js';
import { map } from './map.js';
import { decimal, sentence } from './phrases.js';
import { pressures } from './pressures.js';
import { staging } from './staging.js';

const parts: Record<PartId, string> = {
  history: 'Anamnese',
  inspection: 'Inspektion und Palpation',
  pulses: 'Pulse und Geräusche',
  bedside: 'Klinische Tests',
  pressures: 'Drücke',
  staging: 'Stadien',
  summary: 'Zusammenfassung',
};

const limbs = (['leg', 'arm'] as const).flatMap((kind) =>
  (['right', 'left'] as const).map((side) => ({ kind, side })),
);

const line = (limb: { kind: 'leg' | 'arm'; side: 'right' | 'left' }, said: readonly string[]): string[] =>
  said.length ? [`${sentence(anatomy.limbs[`${limb.side} ${limb.kind}`])}: ${said.join('; ')}.`] : [];

function pulses(examination: Examination): string[] {
  return PLACES.flatMap((place) => {
    const said = map.findings(pulseAt(examination, place), bruitAt(examination, place), examination.scale);
    return said ? [`${sentence(anatomy.place(place))}: ${said}.`] : [];
  });
}

/** Everything recorded, part by part in the order of the bedside; parts with nothing in them are left out. */
function summary(examination: Examination): SummaryPart[] {
  const { history: told, inspection: seen, bedside: tests, pressures: measured, staging: set } = examination;
  const all: Record<Exclude<PartId, 'summary'>, string[]> = {
    history: [
      ...(examination.onset ? [`Beginn ${words.onsets[examination.onset]}.`] : []),
      ...limbs.flatMap((limb) => line(limb, history.limb(told?.[limb.kind]?.[limb.side] ?? {}))),
      ...history.whole(told ?? {}).map((said) => `${sentence(said)}.`),
      ...context.said(examination.context ?? {}).map((said) => `${sentence(said)}.`),
    ],
    inspection: limbs.flatMap((limb) => line(limb, inspection.limb(seen?.[limb.kind]?.[limb.side] ?? {}))),
    pulses: pulses(examination),
    bedside: bedside.said(tests ?? {}),
    pressures: pressures
      .said(measured ?? {}, PRESSURE_SITES as readonly PressureSite[])
      .map((said) => `${sentence(said)}.`),
    staging: staging.said(set ?? {}).map((said) => `${sentence(said)}.`),
  };
  return (Object.keys(all) as (keyof typeof all)[])
    .filter((id) => all[id].length)
    .map((id) => ({ id, heading: parts[id], lines: all[id] }));
}

const count = (recorded: number): string => (recorded === 1 ? '1 Eintrag' : `${recorded} Einträge`);

export const whole: WholeWords = {
  name: 'Untersuchung der Extremitäten',
  parts,
  toolbar: 'Werkzeuge der Untersuchung',
  undo: 'Rückgängig',
  redo: 'Wiederherstellen',
  contents: 'Teile der Untersuchung',
  part: (id, recorded) => `${parts[id]}, ${recorded ? count(recorded) : 'noch nichts'}`,
  count,
  open: (id) => `${parts[id]} öffnen`,
  keys: 'Strg mit Ab oder Auf geht zum nächsten oder vorigen Teil; Strg Z nimmt zurück.',
  legs: 'Beine',
  arms: 'Arme',
  limb: 'Extremität',
  right: 'Rechts',
  left: 'Links',
  letters: anatomy.sideLetters,
  notStated: 'Nicht angegeben',
  nothing: 'Noch nichts erfasst.',
  point: ',',
  number: decimal,
  summary,
};
