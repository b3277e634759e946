import { AXIS, type Laterality, type Place, PLACES, type Side, siteDefinition } from '../anatomy/index.js';
import type { LesionMark } from './flow.js';
import { isPlateView, plateOf, PLATE_VIEWS, type PlateView, SITES_ON } from './plates/plate.js';
import { positionOf } from './healthy.js';

/** Views of the whole figure, or of a part of it, as against plates. */
export const BODY_VIEWS = [
  'whole',
  'arms',
  'legs',
  'right-arm',
  'left-arm',
  'right-leg',
  'left-leg',
] as const;
export type BodyView = (typeof BODY_VIEWS)[number];

/** What part of the figure is shown. */
export const VIEWS = [...BODY_VIEWS, ...PLATE_VIEWS] as const;
export type View = (typeof VIEWS)[number];

/** A rectangle of the figure, in figure units. */
export interface Crop {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const WHOLE: Crop = { x: 44, y: 20, width: 1112, height: 1462 };

/** Crops of the patient's left (and of both); the right ones are their mirror images. */
const LEFT_CROPS = {
  whole: WHOLE,
  arms: { x: 44, y: 20, width: 1112, height: 770 },
  legs: { x: 302, y: 500, width: 596, height: 980 },
  arm: { x: 560, y: 20, width: 596, height: 770 },
  leg: { x: 560, y: 500, width: 338, height: 980 },
} as const satisfies Record<string, Crop>;

export function cropOf(view: BodyView): Crop {
  const [side, part] = view.includes('-')
    ? (view.split('-') as [Laterality, keyof typeof LEFT_CROPS])
    : [undefined, view];
  const crop: Crop = LEFT_CROPS[part as keyof typeof LEFT_CROPS];
  return side === 'right' ? { ...crop, x: 2 * AXIS - crop.x - crop.width } : crop;
}

/** Height at which the legs part, how much higher the groin is left, and how far the trunk is shown beyond the axis, in figure units. */
const CROTCH = 742;
const GROIN = 40;
const BEYOND = 40;

/** Of a view of one side, what of the figure is shown, as a path in figure units: the other limb is left out. */
export function clipOf(view: BodyView): string | undefined {
  const [side] = (['right', 'left'] as const).filter((one) => view.startsWith(`${one}-`));
  if (!side) return undefined;
  const outward = side === 'left' ? 1 : -1;
  const [near, far] = [AXIS - outward * BEYOND, AXIS + outward * WHOLE.width];
  const below = showsArms(view) ? near : AXIS;
  return `M${near} 0V${CROTCH - GROIN}L${below} ${CROTCH}V${WHOLE.y + WHOLE.height}H${far}V0Z`;
}

/** Whether a point of the figure, in figure units, lies in what a view shows of it. */
export function showsPoint(view: BodyView, [px, py]: readonly [x: number, y: number]): boolean {
  const { x, y, width, height } = cropOf(view);
  if (px < x || px > x + width || py < y || py > y + height) return false;
  const outward = view.startsWith('left-') ? 1 : view.startsWith('right-') ? -1 : 0;
  const beyond = showsArms(view) || py < CROTCH ? BEYOND : 0;
  return outward === 0 || outward * (px - AXIS) >= -beyond;
}

/** Whether the arms are drawn in a view; views of the legs leave them out, since the hands would lie over the thighs. */
export function showsArms(view: View): boolean {
  return view === 'whole' || view.includes('arm');
}

/** The part of the figure that holds what a plate shows: shown until the plate has been fetched. */
export function aroundPlate(view: PlateView): BodyView {
  const { name, side } = plateOf(view);
  if (side === 'midline') return 'legs';
  return name === 'hand' ? `${side as Side}-arm` : `${side as Side}-leg`;
}

/**
 * The places shown in a view. Views of the arms leave out trunk and legs, views of the legs begin at the aorta; the sole has
 * none.
 */
export function placesIn(view: View): readonly Place[] {
  if (view === 'whole') return PLACES;
  if (isPlateView(view)) {
    const { name, side } = plateOf(view);
    return PLACES.filter(
      (place) => SITES_ON[name].includes(place.site) && (side === 'midline' || place.side === side),
    );
  }
  const crop = cropOf(view);
  const arms = showsArms(view);
  const side = view.startsWith('right') ? 'right' : view.startsWith('left') ? 'left' : undefined;
  return PLACES.filter((place) => {
    const { region } = siteDefinition(place.site);
    const ofArms = region === 'head' || region === 'arm';
    if (ofArms !== arms) return false;
    if (side && place.side !== side && place.side !== 'midline') return false;
    const { x, y } = positionOf(place);
    return x > crop.x && x < crop.x + crop.width && y > crop.y && y < crop.y + crop.height;
  });
}

/** The marks on arteries that a view shows: views of the arms leave out those of the legs, and the other way round. */
export function marksIn(view: View, marks: readonly LesionMark[]): LesionMark[] {
  if (view === 'whole' || isPlateView(view)) return [...marks];
  const ofArms = view.includes('arm');
  const other = view.startsWith('left') ? 'right' : view.startsWith('right') ? 'left' : undefined;
  return marks.filter(
    ({ limb }) => limb.endsWith('leg') !== ofArms && !(other !== undefined && limb.startsWith(other)),
  );
}
