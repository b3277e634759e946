import { describe, expect, it } from 'vitest';
import {
  contains,
  type Place,
  placeKey,
  type PlaceKey,
  VESSELS,
  vesselKey,
} from '../../../src/anatomy/index.js';
import {
  AXIS,
  type BodyView,
  courseOf,
  doorsOf,
  FINDING_STEP,
  FINDS,
  arteryPaths,
  groundParts,
  drawnFlow,
  isPlateView,
  labelsOf,
  landmarksFor,
  LANDMARKS,
  landmarksOf,
  type Layout,
  layOut,
  NAME_LINE,
  PLATE_VIEWS,
  type Point,
  pointsFrom,
  sampleAt,
  showsArms,
  sitesIn,
  silhouetteOf,
  VIEWS,
} from '../../../src/drawing/index.js';
import { boxOfLine } from '../../../src/drawing/box.js';
import { emptyExamination, restNormal } from '../../../src/examination/index.js';
import { en } from '../../../src/locale/index.js';
import { de as german } from '../../../src/locale/de/index.js';
import { contours } from '../../tools/path.js';

/** Bodies and landmarks are drawn in tenths of a unit. */
const TENTH = 0.1;

const BODY = VIEWS.filter((view): view is BodyView => !isPlateView(view));

/** Turns between neighbours of a line, in degrees. */
function turns(points: readonly Point[]): number[] {
  return points.slice(2).map(([cx, cy], i) => {
    const [[ax, ay], [bx, by]] = [points[i], points[i + 1]] as [Point, Point];
    const [ux, uy, vx, vy] = [bx - ax, by - ay, cx - bx, cy - by];
    return (Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)) * 180) / Math.PI;
  });
}

describe('the body', () => {
  const knot = (id: keyof typeof LANDMARKS, i = 0): Point => pointsFrom(LANDMARKS[id].points)[i] as Point;
  const [contour] = contours(silhouetteOf(true).body, TENTH) as [Point[]];
  const crown = Math.min(...contour.map(([, y]) => y));
  const apart = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay);
  /** Height of the figure as a person's stature: from the crown to the sole at the heel. */
  const stature = 1377 - crown;

  /*
   * Lengths as shares of stature: Drillis R, Contini R. Body segment parameters. Technical Report 1166.03, New York University
   * 1966, as printed in Winter DA, Biomechanics and Motor Control of Human Movement, figure 4.1 (from memory): crown to chin
   * 0.130, half the breadth of the shoulders 0.129, crown to hip 0.470, hip to knee 0.245, knee to ankle 0.246 (so 0.285 above
   * the floor less 0.039), forearm 0.146.
   */
  it.each([
    ['crown to chin', knot('jaw', 4)[1] - crown, 0.13, 0.08],
    ['half the breadth of the shoulders', knot('clavicle', 7)[0] - AXIS, 0.129, 0.08],
    ['crown to hip', knot('symphysis')[1] - 58 - crown, 0.47, 0.05],
    ['hip to knee', knot('patella', 2)[1] + 22 - (knot('symphysis')[1] - 58), 0.245, 0.2],
    ['knee to ankle', knot('medialMalleolus', 4)[1] - knot('patella', 2)[1] - 22, 0.246, 0.08],
    ['forearm', apart(knot('elbowCrease', 1), knot('wristCrease', 1)), 0.146, 0.15],
  ] as const)('keeps the length of a body: %s', (_, length, share, tolerance) => {
    expect(length / stature / share).toBeGreaterThan(1 - tolerance);
    expect(length / stature / share).toBeLessThan(1 + tolerance);
  });

  it('bends every artery smoothly', () => {
    for (const vessel of VESSELS) {
      const course = courseOf(vessel);
      const count = Math.ceil(course.length / 2);
      const points = Array.from({ length: count + 1 }, (_, i): Point => {
        const { x, y } = sampleAt(course, i / count);
        return [x, y];
      });
      expect(Math.max(0, ...turns(points)), vesselKey(vessel)).toBeLessThan(35);
    }
  });

  it('draws every artery within the skin, from end to end', () => {
    for (const vessel of VESSELS)
      for (let i = 0; i <= 20; i++) {
        const { x, y } = sampleAt(courseOf(vessel), i / 20);
        expect(contains(contour, [x, y]), `${vesselKey(vessel)} at ${i / 20}`).toBe(true);
      }
  });
});

describe('landmarks', () => {
  // Words of the techniques, each with the landmark that draws it.
  const NAMED = {
    umbilicus: 'umbilicus',
    'inguinal ligament': 'inguinalLigament',
    'anterior superior iliac spine': 'iliacSpine',
    'pubic symphysis': 'symphysis',
    'medial malleolus': 'medialMalleolus',
    clavicle: 'clavicle',
    sternocleidomastoid: 'sternomastoid',
    'extensor hallucis longus': 'extensorTendon',
    'Antecubital fossa': 'elbowCrease',
    tragus: 'ear',
  } as const;

  it.each(Object.entries(NAMED))('draws the %s where a technique names it', (word, landmark) => {
    const sites = Object.entries(en.anatomy.technique).filter(([, said]) => said.includes(word));
    expect(sites.length).toBeGreaterThan(0);
    for (const [site] of sites) expect(FINDS[site as Place['site']], site).toContain(landmark);
  });

  it('stand out on the side of the open site only', () => {
    const xs = (d: string): number[] =>
      contours(d, TENTH)
        .flat()
        .map(([x]) => x);
    for (const site of Object.keys(FINDS) as Place['site'][]) {
      expect(Math.max(...xs(landmarksFor(site, 'right'))), site).toBeLessThan(AXIS + 20);
      expect(Math.min(...xs(landmarksFor(site, 'left'))), site).toBeGreaterThan(AXIS - 20);
    }
  });

  it('are drawn with the body, and without the arms where these are left out', () => {
    const flow = drawnFlow(emptyExamination(), []);
    const far = (arms: boolean): number =>
      Math.max(
        ...groundParts(arteryPaths(flow, arms), arms, landmarksOf(arms))
          .filter(({ d }) => d)
          .flatMap(({ d }) =>
            contours(d, TENTH)
              .flat()
              .map(([x]) => x),
          ),
      );
    expect(far(true)).toBeGreaterThan(1050);
    expect(far(false)).toBeLessThan(920);
  });
});

describe('leaders', () => {
  const WIDTHS = [766, 818, 1051, 1531];
  const cases = BODY.flatMap((view) =>
    WIDTHS.flatMap((width) => [en, german].map((words) => [view, width, words] as const)),
  );

  it.each(BODY)('of %s cross no other site, and no skin again once they have left it', (body) => {
    const faults: string[] = [];
    for (const [view, width, words] of cases.filter(([one]) => one === body)) {
      const layout = layOut(view, width, 872, (place) => ({
        name: words.map.siteShort(place.site),
        code: words.anatomy.codes[place.site],
      }));
      const skin = contours(silhouetteOf(showsArms(view)).body, TENTH)[0]?.map(([x, y]): Point => [
        x * layout.scale + layout.offsetX,
        y * layout.scale + layout.offsetY,
      ]) as Point[];
      for (const { key, place, leader } of layout.labels) {
        const points = leader.slice(1).flatMap(([bx, by], i): Point[] => {
          const [ax, ay] = leader[i] as Point;
          return Array.from({ length: 25 }, (_, k) => [ax + ((bx - ax) * k) / 24, ay + ((by - ay) * k) / 24]);
        });
        const inside = points.map((at) => contains(skin, at));
        const leaves = inside.indexOf(false);
        if (leaves >= 0 && inside.slice(leaves).includes(true))
          faults.push(`${key} of ${view} at ${width}: skin`);
        for (const site of layout.sites)
          if (site.place !== place && points.some(([x, y]) => Math.hypot(site.x - x, site.y - y) < 11))
            faults.push(`${key} of ${view} at ${width}: ${placeKey(site.place)}`);
      }
    }
    expect([...new Set(faults)]).toEqual([]);
  });
});

describe('names', () => {
  it.each(BODY.filter((view) => view.includes('leg')))(
    'of %s lie over no skin, foot and toes included, from a phone on',
    (view) => {
      const faults: string[] = [];
      for (const width of [278, 318, 358, 372, 412, 520, 638, 766, 818, 1051, 1531])
        for (const words of [en, german]) {
          const layout = layOut(view, width, 872, (place) => ({
            name: words.map.siteShort(place.site),
            code: words.anatomy.codes[place.site],
          }));
          const skin = contours(silhouetteOf(false).body, TENTH)[0]?.map(([x, y]): Point => [
            x * layout.scale + layout.offsetX,
            y * layout.scale + layout.offsetY,
          ]) as Point[];
          for (const label of layout.labels) {
            // The name and the line of what was found below it.
            const { left, right, top } = boxOfLine(label, label.width, NAME_LINE);
            for (const y of [top, label.y, label.y + FINDING_STEP, label.y + FINDING_STEP * 1.5])
              for (let x = left; x <= right; x += 4)
                if (contains(skin, [x, y])) faults.push(`${label.key} at ${width} px`);
          }
        }
      expect([...new Set(faults)]).toEqual([]);
    },
  );
});

/** What stands at a site of what was found. */
const saidAt = (layout: Layout, key: PlaceKey): string =>
  (layout.findings.get(key)?.lines ?? []).map(({ text }) => text).join(' ');

describe('doorsOf', () => {
  it.each([
    [766, 872],
    [818, 872],
    [1051, 872],
    [1250, 780],
    [1531, 872],
  ])('stands beside the limbs at %i by %i px, over no site, name or skin', (width, height) => {
    for (const words of [en, german]) {
      const labelOf = (place: Place) => ({
        name: words.map.siteShort(place.site),
        code: words.anatomy.codes[place.site],
      });
      const layout = layOut('whole', width, height, labelOf);
      const doors = doorsOf(layout, labelOf, (name) => words.map.plates.short[name]);
      expect(doors.map(({ view }) => view)).toEqual([...PLATE_VIEWS]);
      const skin = contours(silhouetteOf(true).body, TENTH)[0]?.map(([x, y]): Point => [
        x * layout.scale + layout.offsetX,
        y * layout.scale + layout.offsetY,
      ]) as Point[];
      for (const { view, x, y } of doors) {
        expect(contains(skin, [x, y]), view).toBe(false);
        for (const site of layout.sites) expect(Math.hypot(site.x - x, site.y - y)).toBeGreaterThan(44);
        const right = view.startsWith('right');
        if (view !== 'legs-behind') expect(x < width / 2, view).toBe(right);
      }
    }
  });

  it.each([
    [766, 872],
    [818, 872],
    [1051, 872],
    [1262, 790],
    [1531, 872],
  ])('leaves room at %i by %i px for what was found before, in full', (width, height) => {
    for (const words of [en, german]) {
      const [now, before] = [emptyExamination('0-3'), restNormal(emptyExamination('0-3'))];
      const labelOf = labelsOf(sitesIn('whole', now, before, undefined, undefined, words), words);
      const layout = layOut('whole', width, height, labelOf);
      for (const [key, { full }] of layout.findings) expect(full, key).toBe(true);
      for (const side of ['left', 'right'] as const)
        expect(saidAt(layout, `${side} ulnar`)).toBe(labelOf({ site: 'ulnar', side }).finding ?? 'nothing');
    }
  });

  it('stands nowhere where there is no room for names', () => {
    const labelOf = (place: Place) => ({ name: `${place.site} of a very long name`, code: 'XX' });
    expect(doorsOf(layOut('whole', 700, 872, labelOf), labelOf, () => 'Hand')).toEqual([]);
    expect(doorsOf(layOut('legs', 900, 872, labelOf), labelOf, () => 'Hand')).toEqual([]);
  });
});
