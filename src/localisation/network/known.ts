import type { ArteryId, Side } from '../../anatomy/index.js';
import type { AneurysmPlace, Examination } from '../../examination/index.js';

/* What a record knows beforehand that bears on the network: the circulation, accesses for dialysis, lines, and aneurysms. */

export function circulationOf({ circulation, pressures }: Examination): {
  systolic?: number;
  shock: boolean;
} {
  const { right, left } = pressures?.brachial ?? {};
  const measured = [right, left].filter((one) => typeof one === 'number');
  const systolic = circulation?.systolic ?? (measured.length ? Math.max(...measured) : undefined);
  return { ...(systolic !== undefined && { systolic }), shock: circulation?.shock === true };
}

/** Whether the arm of a side carries an arteriovenous access for dialysis. */
export function hasAccess({ context }: Examination, side: Side): boolean {
  return context?.access?.some((one) => one.side === side) ?? false;
}

/** Whether something besides the arm itself draws on the subclavian of a side: a dialysis access, or a graft to the groin. */
export function drawsOnArm(examination: Examination, side: Side): boolean {
  const grafts = examination.context?.revascularisations ?? [];
  return (
    hasAccess(examination, side) ||
    grafts.some((graft) => graft.route === 'axillo-femoral' && graft.side === side)
  );
}

/** Whether a line lies in the radial artery of a side, or lay there lately. */
export function hasRadialLine({ context }: Examination, side: Side): boolean {
  return (
    context?.devices?.some(
      (one) => one.side === side && (one.kind === 'arterial-line' || one.kind === 'radial-catheter'),
    ) ?? false
  );
}

/** The artery that a place of an aneurysm means. */
const ARTERY: Readonly<Record<AneurysmPlace, ArteryId | undefined>> = {
  'thoracic-aorta': 'thoracic-aorta',
  'abdominal-aorta': 'infrarenal-aorta',
  iliac: 'common-iliac',
  femoral: 'common-femoral',
  popliteal: 'popliteal',
  subclavian: 'subclavian',
  other: undefined,
};

interface Aneurysm {
  /** Missing where the record names no artery. */
  readonly artery: ArteryId | undefined;
  readonly side: Side | undefined;
}

/** Aneurysms known before. */
export function knownAneurysms({ context }: Examination): Aneurysm[] {
  return (context?.aneurysms ?? []).map(({ place, side }) => ({ artery: ARTERY[place], side }));
}
