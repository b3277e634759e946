import { html, nothing, type TemplateResult } from 'lit';
import type { PlaceKey } from '../../anatomy/index.js';
import {
  arteryPaths,
  drawnFlow,
  landmarksFor,
  landmarksOf,
  marksIn,
  placeRidges,
  type View,
} from '../../drawing/index.js';
import { emptyExamination, type Examination } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import { type Truth, truthMarks } from '../../practice/index.js';
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
    arteries: arteryPaths,
    ridges: placeRidges(marksIn(view, marks), drawn.layout),
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
