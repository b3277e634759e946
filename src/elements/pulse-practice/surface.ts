import { html, nothing, type TemplateResult } from 'lit';
import { pieceFromKey, type PieceKey, type PlaceKey } from '../../anatomy/index.js';
import {
  drawnFlow,
  labelsOf,
  landmarksFor,
  landmarksOf,
  type LesionMark,
  marksIn,
  placeRidges,
  type View,
} from '../../drawing/index.js';
import { emptyExamination, type Examination } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { Truth } from '../../practice/index.js';
import type { FigureViews } from '../pulse-map/figure/figure-view.js';
import { type FigureView, renderFigure } from '../pulse-map/figure/render.js';

/** Height of everything beside the figure, in px. */
const AROUND = 160;
const NOTHING = emptyExamination();

export interface SurfaceView {
  readonly view: View;
  readonly width: number;
  /** What is known; once the answer was given, all that there is. */
  readonly record: Examination;
  /** Once the answer was given. */
  readonly truth: Truth | undefined;
  readonly active: PlaceKey;
  readonly open: PlaceKey | undefined;
  readonly words: Messages;
}

/** The true lesions as they are drawn. */
function truthMarks({ patient }: Truth): LesionMark[] {
  return (patient?.lesions ?? []).flatMap((lesion): LesionMark[] => {
    const whole = pieceFromKey(lesion.piece as PieceKey);
    const pieces = whole
      ? [whole]
      : ['proximal', 'distal'].flatMap((part) => pieceFromKey(`${lesion.piece} ${part}` as PieceKey) ?? []);
    const [first] = pieces;
    if (!first) return [];
    const arm = /brachi|subclavian|axillary|radial|ulnar/.test(first.artery);
    const side = first.side === 'midline' ? 'right' : first.side;
    return [
      {
        limb: `${side} ${arm ? 'arm' : 'leg'}`,
        kind: lesion.narrowing >= 100 ? 'block' : 'narrowing',
        pieces: pieces.map((piece) => ({ piece, weight: 1 / pieces.length })),
      },
    ];
  });
}

/** All that the map shows. Before the answer nothing is drawn but what was found at the sites: every artery as if all were well. */
export function surfaceOf(figures: FigureViews, of: SurfaceView): FigureView {
  const { view, width, record, truth, active, open, words } = of;
  const drawn = figures.view(
    {
      view,
      width,
      height: undefined,
      around: AROUND,
      examination: record,
      read: NOTHING,
      earlier: undefined,
      painting: undefined,
      words,
      allWords: words,
    },
    {
      active,
      open,
      preview: undefined,
      drag: [],
      editable: !truth,
      barred: false,
      skin: { layer: () => nothing, kinds: () => new Set() },
      digits: undefined,
      landmarks: { landmarksOf, landmarksFor },
    },
  );
  if (!truth) return drawn;
  const marks = truthMarks(truth);
  return {
    ...drawn,
    flow: drawnFlow(record, marks),
    ridges: placeRidges(marksIn(view, marks), drawn.layout, labelsOf(drawn.sites, words)),
  };
}

export function renderSurface(
  view: FigureView,
  on: {
    readonly click: (event: Event) => void;
    readonly keydown: (event: KeyboardEvent) => void;
    readonly focusin: (event: FocusEvent) => void;
  },
): TemplateResult {
  return html`<div class="surface" @click=${on.click} @keydown=${on.keydown} @focusin=${on.focusin}>
    ${renderFigure(view)}
  </div>`;
}
