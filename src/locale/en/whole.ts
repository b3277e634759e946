import type { Examination, PressureSite } from '../../examination/index.js';
import { PRESSURE_SITES } from '../../examination/index.js';
import { type Place, PLACES } from '../../anatomy/index.js';
import { bruitAt, pulseAt } from '../../examination/index.js';
import { anatomy } from './anatomy.js';
import { bedside } from './bedside.js';
import { context } from './context.js';
import { history } from './history.js';
import { inspection } from './inspection.js';
import { map } from './map.js';
import { sentence } from './phrases.js';
import { pressures } from './pressures.js';
import { staging } from './staging.js';

/** One part of the summary: its heading and a line for each thing recorded. */
export interface SummaryPart {
  readonly id: PartId;
  readonly heading: string;
  readonly lines: readonly string[];
}

const parts = {
  history: 'History',
  inspection: 'Inspection and touch',
  pulses: 'Pulses and bruits',
  bedside: 'Bedside tests',
  pressures: 'Pressures',
  staging: 'Stages',
  summary: 'Summary',
};
export type PartId = keyof typeof parts;

const limbs = (['leg', 'arm'] as const).flatMap((kind) =>
  (['right', 'left'] as const).map((side) => ({ kind, side })),
);

const line = (limb: { kind: 'leg' | 'arm'; side: 'right' | 'left' }, said: readonly string[]): string[] =>
  said.length ? [`${sentence(anatomy.limbs[`${limb.side} ${limb.kind}`])}: ${said.join('; ')}.`] : [];

function pulses(examination: Examination): string[] {
  return PLACES.flatMap((place: Place) => {
    const said = map.findings(pulseAt(examination, place), bruitAt(examination, place), examination.scale);
    return said ? [`${sentence(anatomy.place(place))}: ${said}.`] : [];
  });
}

/** Everything recorded, part by part in the order of the bedside; parts with nothing in them are left out. */
function summary(examination: Examination): SummaryPart[] {
  const { history: told, inspection: seen, bedside: tests, pressures: measured, staging: set } = examination;
  const all: Record<Exclude<PartId, 'summary'>, string[]> = {
    history: [
      ...(examination.onset ? [`Onset ${examination.onset}.`] : []),
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

const count = (recorded: number): string => (recorded === 1 ? '1 entry' : `${recorded} entries`);

export const whole = {
  name: 'Limb examination',
  parts,
  toolbar: 'Examination tools',
  undo: 'Undo',
  redo: 'Redo',
  contents: 'Parts of the examination',
  /** A part and how far it is, as its button is called. */
  part: (id: PartId, recorded: number) => `${parts[id]}, ${recorded ? count(recorded) : 'nothing yet'}`,
  count,
  open: (id: PartId) => `Open ${parts[id].toLowerCase()}`,
  keys: 'Ctrl and Down or Up go to the next or previous part; Ctrl Z undoes.',
  legs: 'Legs',
  arms: 'Arms',
  limb: 'Limb',
  right: 'Right',
  left: 'Left',
  /** Letters that stand for the sides where there is least room, as on the figure. */
  letters: anatomy.sideLetters,
  notStated: 'Not stated',
  nothing: 'Nothing recorded yet.',
  /** What stands between a number and its decimals. */
  point: '.',
  /** A number as one writes it, with `digits` to so many decimals. */
  number: (value: number, digits?: number) => (digits === undefined ? String(value) : value.toFixed(digits)),
  summary,
};
export type WholeWords = typeof whole;
