/** A point on a slide, as fractions of its width and height. */
export type Point = readonly [x: number, y: number];

/** A line of ink. Its id tells apart what two windows draw at the same time. */
export interface Stroke {
  readonly id: string;
  readonly points: readonly Point[];
}

/** What lies over a slide: a spotlight and where it stands, and ink. */
export interface OverState {
  readonly light: boolean;
  /** Missing: in the middle. */
  readonly at?: Point;
  readonly strokes: readonly Stroke[];
}

export const BARE: OverState = { light: false, strokes: [] };

/** What a hand did, in whichever window. */
export type OverAct =
  | { readonly kind: 'light'; readonly on: boolean }
  | { readonly kind: 'at'; readonly to: Point }
  | { readonly kind: 'begin' | 'draw'; readonly id: string; readonly to: Point }
  | { readonly kind: 'wipe' };

/** What lies over the slide after an act. A point of a line that is not there, since it was wiped meanwhile, changes nothing. */
export function overAfter(state: OverState, act: OverAct): OverState {
  const { strokes } = state;
  switch (act.kind) {
    case 'light':
      return act.on === state.light ? state : { ...state, light: act.on };
    case 'at':
      return { ...state, at: act.to };
    case 'begin':
      return { ...state, strokes: [...strokes, { id: act.id, points: [act.to] }] };
    case 'draw':
      return strokes.some(({ id }) => id === act.id)
        ? { ...state, strokes: strokes.map((one) => (one.id === act.id ? longer(one, act.to) : one)) }
        : state;
    case 'wipe':
      return strokes.length ? { ...state, strokes: [] } : state;
  }
}

const longer = ({ id, points }: Stroke, to: Point): Stroke => ({ id, points: [...points, to] });

type Fields = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Fields => typeof value === 'object' && value !== null;
const isShare = (n: unknown): boolean => typeof n === 'number' && n >= 0 && n <= 1;
const isPoint = (value: unknown): value is Point =>
  Array.isArray(value) && value.length === 2 && value.every(isShare);
const isStroke = (value: unknown): value is Stroke =>
  isObject(value) &&
  typeof value.id === 'string' &&
  Array.isArray(value.points) &&
  value.points.every(isPoint);

/** Reads what another window says its hand did; `undefined` for what is none. */
export function readOverAct(value: unknown): OverAct | undefined {
  if (!isObject(value)) return undefined;
  const { kind, on, id, to } = value;
  if (kind === 'wipe') return { kind };
  if (kind === 'light') return typeof on === 'boolean' ? { kind, on } : undefined;
  if (!isPoint(to)) return undefined;
  if (kind === 'at') return { kind, to };
  return (kind === 'begin' || kind === 'draw') && typeof id === 'string' ? { kind, id, to } : undefined;
}

/** Reads what another window says lies over its slide; `undefined` for what is none. */
export function readOver(value: unknown): OverState | undefined {
  if (!isObject(value)) return undefined;
  const { light, at, strokes } = value;
  if (typeof light !== 'boolean' || !Array.isArray(strokes) || !strokes.every(isStroke)) return undefined;
  if (at !== undefined && !isPoint(at)) return undefined;
  return { light, strokes: strokes.map(({ id, points }) => ({ id, points })), ...(at && { at }) };
}
