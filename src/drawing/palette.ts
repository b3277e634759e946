/** One colour of the visual language in its two schemes. */
export interface Tone {
  readonly light: string;
  readonly dark: string;
}

/**
 * The palette. Ink follows trouble: a normal examination is quiet, only what is wrong gains weight. Red (`danger`) means
 * danger to limb or life and nothing else. Contrast and colour difference are checked in `tests/unit/drawing`.
 */
export const PALETTE = {
  /** Page around an element. */
  ground: { light: '#F5F4F1', dark: '#12151A' },
  /** Ground of the elements. */
  paper: { light: '#FFFFFF', dark: '#1B1F25' },
  /** Ground of what stands above them: the chooser. */
  raised: { light: '#FFFFFF', dark: '#22272F' },
  /** Ground of what is set into them. */
  well: { light: '#F7F6F3', dark: '#161A1F' },
  /** Text and marks. */
  ink: { light: '#1B1F27', dark: '#ECEFF2' },
  /** Quieter text. */
  'ink-2': { light: '#545B66', dark: '#A8B0BA' },
  /** Outlines of controls, leaders. */
  edge: { light: '#7C828B', dark: '#7F8893' },
  /** Lines between parts. */
  line: { light: '#DDDCD7', dark: '#343B44' },
  /** Normal and bounding pulses. */
  pulse: { light: '#0B6468', dark: '#4DB3B0' },
  /** Reduced pulses. */
  weak: { light: '#F2B233', dark: '#F2BB48' },
  /** Outline of reduced pulses. */
  'weak-edge': { light: '#7A5000', dark: '#FFD88A' },
  /** Numerals on reduced pulses. */
  'weak-ink': { light: '#241A00', dark: '#241A00' },
  /** Absent pulses, blocks and narrowings. */
  gone: { light: '#2C1F73', dark: '#DDD8FF' },
  /** Numerals on absent pulses. */
  'gone-ink': { light: '#FFFFFF', dark: '#15103A' },
  /** Sites not examined, arteries without a pulse, what is disabled. */
  mute: { light: '#5E6570', dark: '#9AA3AE' },
  /** Red flags, and nothing else. */
  danger: { light: '#B0201A', dark: '#FF938A' },
  /** Ground of red flags. */
  'danger-soft': { light: '#FCEDEB', dark: '#3A1B1B' },
  /** Focus and the open site. */
  focus: { light: '#4A37D2', dark: '#B7ABFF' },
  /** Arteries near the skin. */
  vessel: { light: '#A85D55', dark: '#B5766F' },
  /** Deep arteries. */
  deep: { light: '#B16D66', dark: '#A86F69' },
  /** Body. */
  body: { light: '#EEEAE4', dark: '#262C33' },
  /** Outline of the body. */
  'body-edge': { light: '#C9C1B5', dark: '#434B55' },
  /** Empty part of a bar. */
  bar: { light: '#ECEBE7', dark: '#2B3139' },
} as const satisfies Record<string, Tone>;
export type Token = keyof typeof PALETTE;

const NO_INK: readonly Token[] = ['paper', 'ground', 'raised', 'well', 'body', 'gone-ink', 'danger-soft'];
const LIGHT_INK: readonly Token[] = ['weak', 'bar', 'line'];
const MID_INK: readonly Token[] = ['vessel', 'deep', 'body-edge'];

function inkOn(token: Token): string {
  if (NO_INK.includes(token)) return '#fff';
  if (LIGHT_INK.includes(token)) return '#c9c9c9';
  return MID_INK.includes(token) ? '#777' : '#000';
}

/** What each token becomes on paper, where colour may be lost. */
export const PRINTED = Object.fromEntries(
  (Object.keys(PALETTE) as Token[]).map((token) => [token, inkOn(token)]),
) as Readonly<Record<Token, string>>;

/** What each token becomes when the reader's system forces its own colours. */
export const FORCED: Readonly<Record<Token, string>> = {
  ground: 'Canvas',
  paper: 'Canvas',
  raised: 'Canvas',
  well: 'Canvas',
  ink: 'CanvasText',
  'ink-2': 'CanvasText',
  edge: 'CanvasText',
  line: 'CanvasText',
  pulse: 'CanvasText',
  weak: 'Canvas',
  'weak-edge': 'CanvasText',
  'weak-ink': 'CanvasText',
  gone: 'CanvasText',
  'gone-ink': 'Canvas',
  mute: 'CanvasText',
  danger: 'CanvasText',
  'danger-soft': 'Canvas',
  focus: 'Highlight',
  vessel: 'GrayText',
  deep: 'GrayText',
  body: 'Canvas',
  'body-edge': 'CanvasText',
  bar: 'Canvas',
};
