import type { ArteryId, Side } from '../../anatomy/index.js';
import { type Examination } from '../../examination/index.js';

/**
 * Parts of a record that not every form of it holds, read where they are there and well formed: the circulation, dialysis
 * accesses, lines, and known aneurysms by place.
 */
interface Newer {
  readonly circulation?: { readonly systolic?: unknown; readonly shock?: unknown };
  readonly context?: {
    readonly access?: unknown;
    readonly devices?: unknown;
    readonly aneurysms?: unknown;
  };
}

interface Sided {
  readonly side?: unknown;
  readonly place?: unknown;
  readonly kind?: unknown;
}

const listOf = (value: unknown): readonly Sided[] =>
  Array.isArray(value) ? ((value as readonly (Sided | null)[]).filter((one) => one !== null) as Sided[]) : [];

export function circulationOf(examination: Examination): { systolic?: number; shock: boolean } {
  const { circulation } = examination as unknown as Newer;
  const cuff = examination.pressures?.brachial;
  const measured = [cuff?.right, cuff?.left].filter((one): one is number => typeof one === 'number');
  const named = typeof circulation?.systolic === 'number' ? circulation.systolic : undefined;
  const systolic = named ?? (measured.length ? Math.max(...measured) : undefined);
  return { ...(systolic !== undefined && { systolic }), shock: circulation?.shock === true };
}

/** Whether the arm of a side carries an arteriovenous access for dialysis. */
export function hasAccess({ context }: Examination, side: Side): boolean {
  return listOf((context as Newer['context'])?.access).some((one) => one.side === side);
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
  return listOf((context as Newer['context'])?.devices).some(
    (one) => one.side === side && (one.kind === 'arterial-line' || one.kind === 'radial-catheter'),
  );
}

/** The artery that a place of an aneurysm means. */
const ARTERY: Readonly<Record<string, ArteryId>> = {
  'abdominal-aorta': 'infrarenal-aorta',
  iliac: 'common-iliac',
  femoral: 'common-femoral',
};

/** Aneurysms known before, by artery and side. */
export function knownAneurysms({ context }: Examination): { artery: ArteryId; side?: Side }[] {
  return listOf((context as Newer['context'])?.aneurysms).flatMap(({ place, side }) =>
    typeof place === 'string'
      ? [
          {
            artery: ARTERY[place] ?? (place as ArteryId),
            ...((side === 'right' || side === 'left') && { side }),
          },
        ]
      : [],
  );
}
