import type { Place } from '../../anatomy/index.js';
import type { ShownMessages } from '../../locale/shown.js';
import { type Box, meet } from '../box.js';
import { FINDING_STEP } from '../finding-lines.js';
import { GLYPH_SIZE } from '../glyphs.js';
import { type LabelText, type Layout, textWidth } from '../layout.js';
import { NAME_LINE } from '../labels.js';
import { DOOR, doorAt } from './door-places.js';
import { PLATE_VIEWS, type PlateName, plateOf, type PlateView } from './plate.js';

/** Where the button of a plate stands, in px: the middle of it. */
export interface Door {
  readonly view: PlateView;
  readonly x: number;
  readonly y: number;
}

/** Lines of a finding for which room is kept below a name. */
const LINES = 2;
const REACH = GLYPH_SIZE.map - 2;

/**
 * Where buttons that open plates stand beside the limbs of the whole figure; nothing where they would cover a site or a name, or
 * stick out: they stand below the figure then.
 */
export function doorsOf(
  layout: Layout,
  labelOf: (place: Place) => Pick<LabelText, 'name'>,
  shortOf: (name: PlateName) => string,
): readonly Door[] {
  if (layout.view !== 'whole' || layout.naming === 'codes') return [];
  const { width, height } = layout;
  const doors = PLATE_VIEWS.map((view): Door => {
    const [x, y] = doorAt(view, layout);
    return { view, x, y };
  });
  const boxes = doors.map(({ view, x, y }): Box => {
    const half = (textWidth(shortOf(plateOf(view).name)) + DOOR.beside) / 2;
    return { left: x - half, right: x + half, top: y - DOOR.height / 2, bottom: y + DOOR.height / 2 };
  });
  const taken: Box[] = [
    ...layout.sites.map(({ x, y }) => ({
      left: x - REACH,
      right: x + REACH,
      top: y - REACH,
      bottom: y + REACH,
    })),
    ...layout.labels.map(({ place, x, y, anchor }) => {
      const wide = textWidth(labelOf(place).name);
      const [left, right] = anchor === 'start' ? [x, x + wide] : [x - wide, x];
      return { left, right, top: y - NAME_LINE / 2, bottom: y + NAME_LINE / 2 + LINES * FINDING_STEP };
    }),
  ];
  const fits = boxes.every(
    (box, i) =>
      box.left >= 0 &&
      box.right <= width &&
      box.bottom <= height &&
      !taken.some((other) => meet(box, other)) &&
      !boxes.some((other, k) => k > i && meet(box, other)),
  );
  return fits ? doors : [];
}

/** By the names of the sites, which belong to one view, size and language. */
const BESIDE = new WeakMap<Layout['labels'], readonly Door[]>();

/** The same in words of a language; worked out once for all figures of a size, whatever was found. */
export function doorsBeside(layout: Layout, { map }: ShownMessages): readonly Door[] {
  let doors = BESIDE.get(layout.labels);
  if (!doors) {
    doors = doorsOf(
      layout,
      ({ site }) => ({ name: map.siteShort(site) }),
      (name) => map.plates.short[name],
    );
    BESIDE.set(layout.labels, doors);
  }
  return doors;
}
