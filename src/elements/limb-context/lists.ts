import type { Side } from '../../anatomy/index.js';
import type { AneurysmPlace, Context, DialysisAccess, PlacedDevice } from '../../examination/index.js';

/*
 * The lists of the context as the buttons of the form show them. What the buttons do not show, such as a second access of the
 * same arm, stays in its list.
 */

/** Places of aneurysms that are no pair, and those that lie on a side. */
export const UNPAIRED = ['thoracic-aorta', 'abdominal-aorta', 'other'] as const;
export const PAIRED = ['iliac', 'femoral', 'popliteal', 'subclavian'] as const;

type Aneurysms = Context['aneurysms'];

/** The places of one side, or those without one. */
export function aneurysmsAt(list: Aneurysms, side?: Side): AneurysmPlace[] {
  return (list ?? []).filter((one) => one.side === side).map(({ place }) => place);
}

/** The list with these places of a side, or without one, in place of what it held there; none at all is not asked. */
export function withAneurysms(list: Aneurysms, places: readonly AneurysmPlace[], side?: Side): Aneurysms {
  const kept = (list ?? []).filter((one) => one.side !== side || places.includes(one.place));
  const there = aneurysmsAt(list, side);
  const added = places.filter((place) => !there.includes(place));
  const next = [...kept, ...added.map((place) => ({ place, ...(side && { side }) }))];
  return next.length ? next : undefined;
}

/** The access of an arm that is shown: the first. */
export function accessOf(list: Context['access'], side: Side): DialysisAccess | undefined {
  return (list ?? []).find((one) => one.side === side);
}

/** The list with another access for an arm, or without the one that was shown. */
export function withAccess(
  list: Context['access'],
  side: Side,
  access: DialysisAccess | undefined,
): Context['access'] {
  const before = accessOf(list, side);
  const next = before
    ? (list ?? []).flatMap((one) => (one === before ? (access ?? []) : one))
    : [...(list ?? []), ...(access ? [access] : [])];
  return next.length ? next : undefined;
}

/** What lies in an artery of a limb. */
export function devicesOf(
  list: Context['devices'],
  limb: PlacedDevice['limb'],
  side: Side,
): PlacedDevice['kind'][] {
  return (list ?? []).filter((one) => one.limb === limb && one.side === side).map(({ kind }) => kind);
}

/** The list with these lines and catheters of a limb in place of what it held there. */
export function withDevices(
  list: Context['devices'],
  limb: PlacedDevice['limb'],
  side: Side,
  kinds: readonly PlacedDevice['kind'][],
): Context['devices'] {
  const kept = (list ?? []).filter(
    (one) => one.limb !== limb || one.side !== side || kinds.includes(one.kind),
  );
  const there = devicesOf(list, limb, side);
  const added = kinds.filter((kind) => !there.includes(kind));
  const next = [...kept, ...added.map((kind): PlacedDevice => ({ limb, side, kind }))];
  return next.length ? next : undefined;
}
