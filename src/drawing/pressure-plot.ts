import { scalePoint } from 'd3-scale';
import { line } from 'd3-shape';
import { SIDES, type Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import {
  denominatorOf,
  LEG_STATIONS,
  legProfile,
  type LegStation,
  type PressureSettings,
} from '../pressures/index.js';
import { lettersApart } from './letters-apart.js';

/** A station of the plot from the arm outward. */
export type PlotStation = 'arm' | LegStation;

export interface PlotPoint {
  readonly station: PlotStation;
  readonly mmHg: number;
  readonly x: number;
  readonly y: number;
}

/** One leg's pressures as a line. */
export interface PlotLine {
  readonly side: Side;
  readonly points: readonly PlotPoint[];
  readonly path: string;
  /** Where the line's letter stands; kept apart from the other line's. */
  readonly letter: { readonly x: number; readonly y: number };
}

/** The plot of pressure down each leg, in its own coordinates. */
export interface PressurePlot {
  readonly width: number;
  readonly height: number;
  readonly stations: readonly { readonly station: PlotStation; readonly x: number }[];
  readonly levels: readonly { readonly mmHg: number; readonly y: number }[];
  readonly lines: readonly PlotLine[];
}

const WIDTH = 366;
const HEIGHT = 224;
const LEFT = 46;
const RIGHT = 316;
const TOP = 24;
const BOTTOM = 186;
const STEP = 50;
/** Least distance between the two letters at the ends of the lines. */
const LETTER_GAP = 18;

const ALWAYS: readonly PlotStation[] = ['arm', 'ankle', 'toe'];

function valuesOf(
  pressures: Pressures,
  side: Side,
  settings: PressureSettings,
): { station: PlotStation; mmHg: number }[] {
  const arm = denominatorOf(pressures.brachial, settings.arm).denominator;
  return [
    // Both legs are measured against the same arm.
    ...(arm ? [{ station: 'arm' as const, mmHg: arm.mmHg }] : []),
    ...legProfile(pressures, side, settings),
  ];
}

/** Lays out the pressures of both legs from arm to toe. A side with fewer than two values has no line. */
export function pressurePlot(pressures: Pressures, settings: PressureSettings): PressurePlot {
  const values = SIDES.map((side) => ({ side, values: valuesOf(pressures, side, settings) }));
  const measured = new Set(values.flatMap((v) => v.values.map(({ station }) => station)));
  const order: PlotStation[] = ['arm', ...LEG_STATIONS];
  const stations = order.filter((station) => measured.has(station) || ALWAYS.includes(station));
  const top = Math.max(150, ...values.flatMap((v) => v.values.map(({ mmHg }) => mmHg)));
  const highest = Math.ceil(top / STEP) * STEP;
  const along = scalePoint(stations, [LEFT, RIGHT]);
  const x = (station: PlotStation): number => along(station) ?? LEFT;
  // A linear scale of d3 weighs 11 kB for this line.
  const y = (mmHg: number): number => BOTTOM - ((BOTTOM - TOP) * mmHg) / highest;
  const path = line<PlotPoint>(
    (p) => p.x,
    (p) => p.y,
  ).digits(2);
  const lines = values
    .filter((v) => v.values.length > 1)
    .map(({ side, values: own }): PlotLine => {
      const points = own.map(({ station, mmHg }) => ({ station, mmHg, x: x(station), y: y(mmHg) }));
      const end = points.at(-1) as PlotPoint;
      return { side, points, path: path(points) ?? '', letter: { x: end.x + 16, y: end.y + 5 } };
    });
  return {
    width: WIDTH,
    height: HEIGHT,
    stations: stations.map((station) => ({ station, x: x(station) })),
    levels: Array.from({ length: highest / STEP + 1 }, (_, i) => ({ mmHg: i * STEP, y: y(i * STEP) })),
    lines: lettersApart(lines, LETTER_GAP),
  };
}
