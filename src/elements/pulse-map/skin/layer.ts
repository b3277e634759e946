import { nothing, svg, type SVGTemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import {
  AXIS,
  clipOf,
  isMarkBehind,
  isMarkOfArm,
  isPlateView,
  type Layout,
  markName,
  markSample,
  type MarkShape,
  placedMark,
  showsMark,
} from '../../../drawing/index.js';
import { type Mark, MARK_FORMS, type MarkKind } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import type { NarrowCrop } from '../crops.js';

/** How the marks on the figure are drawn. */
export interface SkinView {
  readonly marks: readonly Mark[];
  /** Whether the skin is being drawn on, which makes the marks buttons. */
  readonly on: boolean;
  readonly selected: string | undefined;
  /** Marks touched by the eraser. */
  readonly erasing: ReadonlySet<string>;
  readonly words: Messages;
}

function parts(id: string, kind: MarkKind, { d, teeth, hatch }: MarkShape): SVGTemplateResult {
  if (MARK_FORMS[kind] !== 'area')
    return svg`<path class="halo" d=${d}></path><path class="edge" d=${d}></path><path class="teeth" d=${teeth ?? d}></path>`;
  // Texture is clipped by the outline; ids are private to the shadow tree.
  return svg`<clipPath id=${id}><path d=${d}></path></clipPath><path class="halo" d=${d}></path><path class="fill" d=${d}></path>
    <path class="texture" clip-path="url(#${id})" d=${hatch ?? d}></path><path class="edge" d=${d}></path>`;
}

const SHAPES = new WeakMap<Mark, { readonly key: string; readonly shape: MarkShape }>();

function shapeOf(mark: Mark, layout: Layout): MarkShape {
  const { view, scale, offsetX, offsetY } = layout;
  const key = `${view} ${scale} ${offsetX} ${offsetY}`;
  const known = SHAPES.get(mark);
  if (known?.key === key) return known.shape;
  const shape = placedMark(mark, layout);
  SHAPES.set(mark, { key, shape });
  return shape;
}

/** Where arms and legs are shown in turn, marks of the trunk below this height of the figure are shown with the legs. */
const LEGS_FROM = 500;

/** The narrow crop that shows a mark. */
export function cropOf(mark: Mark): NarrowCrop {
  if (!isMarkOfArm(mark) && !mark.points.every(([, y]) => y < LEGS_FROM)) return 'legs';
  return (mark.points[0]?.[0] ?? 0) > AXIS ? 'left-arm' : 'right-arm';
}

/** Within what the marks stay, in units of the view: the box of a plate, the limb that stands alone. */
function clipOfSkin({ view, plate }: Layout): string | undefined {
  if (!isPlateView(view)) return clipOf(view);
  return plate && `M0 0H${plate.size[0]}V${plate.size[1]}H0Z`;
}

/** The marks on the figure. They are buttons only while drawing; the list always has them. */
export function skinLayer(
  view: SkinView,
  layout: Layout,
  keydown: (event: KeyboardEvent) => void,
): SVGTemplateResult {
  const { on, words } = view;
  // The figure may be in the document twice, in another size for print.
  const where = `${layout.view}-${layout.width}-${layout.height}`;
  const box = `skins-${where}`;
  const clip = clipOfSkin(layout);
  return svg`${clip ? svg`<clipPath id=${box}><path transform="translate(${layout.offsetX} ${layout.offsetY}) scale(${layout.scale})" d=${clip}></path></clipPath>` : nothing}<g class="skins" clip-path=${clip ? `url(#${box})` : nothing} aria-hidden=${on ? nothing : 'true'} @keydown=${keydown}>${repeat(
    view.marks.filter((mark) => showsMark(layout.view, mark)),
    ({ id }) => id,
    (mark, i) => {
      const behind = isMarkBehind(layout.view, mark) ? ' behind' : '';
      const state = view.erasing.has(mark.id) ? 'erasing' : mark.id === view.selected ? 'selected' : '';
      const name = markName(mark, words);
      return svg`<g class="skin s-${mark.kind}${behind} ${state}" part="mark" data-mark=${mark.id} role=${on ? 'button' : nothing}
          tabindex=${on ? 0 : nothing} aria-label=${on ? name : nothing} aria-pressed=${on ? mark.id === view.selected : nothing}>
        ${on ? nothing : svg`<title>${name}</title>`}${parts(`${where}-${i}`, mark.kind, shapeOf(mark, layout))}
      </g>`;
    },
  )}</g>${on ? svg`<path class="ink"></path>` : nothing}`;
}

/**
 * The look of a kind, for buttons and the list; words stand beside it.
 * @param id of its own within the element
 */
export function skinIcon(kind: MarkKind, id: string): SVGTemplateResult {
  return svg`<svg class="skin s-${kind}" width="30" height="24" viewBox="0 0 30 24" aria-hidden="true">${parts(id, kind, markSample(kind))}</svg>`;
}
