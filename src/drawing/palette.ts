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
  ground: { light: '#F5F4F1', dark: '#12151A' },
  paper: { light: '#FFFFFF', dark: '#1B1F25' },
  raised: { light: '#FFFFFF', dark: '#22272F' },
  well: { light: '#F7F6F3', dark: '#161A1F' },
  ink: { light: '#1B1F27', dark: '#ECEFF2' },
  'ink-2': { light: '#545B66', dark: '#A8B0BA' },
  edge: { light: '#7C828B', dark: '#7F8893' },
  line: { light: '#DDDCD7', dark: '#343B44' },
  pulse: { light: '#0B6468', dark: '#4DB3B0' },
  weak: { light: '#F2B233', dark: '#F2BB48' },
  'weak-edge': { light: '#7A5000', dark: '#FFD88A' },
  'weak-ink': { light: '#241A00', dark: '#241A00' },
  gone: { light: '#2C1F73', dark: '#DDD8FF' },
  'gone-ink': { light: '#FFFFFF', dark: '#15103A' },
  mute: { light: '#5E6570', dark: '#9AA3AE' },
  danger: { light: '#B0201A', dark: '#FF938A' },
  'danger-soft': { light: '#FCEDEB', dark: '#3A1B1B' },
  focus: { light: '#4A37D2', dark: '#B7ABFF' },
  vessel: { light: '#A85D55', dark: '#B5766F' },
  deep: { light: '#B8736B', dark: '#9F6660' },
  body: { light: '#EEEAE4', dark: '#262C33' },
  'body-edge': { light: '#C9C1B5', dark: '#434B55' },
  bar: { light: '#ECEBE7', dark: '#2B3139' },
} as const satisfies Record<string, Tone>;
export type Token = keyof typeof PALETTE;

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
