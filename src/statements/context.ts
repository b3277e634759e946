import { type Side, SIDES, type Vessel } from '../anatomy/index.js';
import type {
  ArmAmputation,
  BirthAbsent,
  Context,
  InjuryPlace,
  LegAmputation,
  LegClaudication,
  Revascularisation,
} from '../examination/index.js';
import { type FieldStatement, fieldStatements, stated } from './stated.js';

type Sided<S> = S & { readonly side: Side };

/** Something known before a pulse is felt. */
export type ContextStatement =
  | FieldStatement<Context, 'ageBand' | 'smoking' | 'mechanism'>
  | { readonly code: 'diabetes' | 'no-diabetes' }
  | Sided<{ readonly code: 'leg-claudication'; readonly muscle: LegClaudication }>
  | Sided<{ readonly code: 'arm-tires' | 'arm-does-not-tire' | 'radial-harvested' }>
  | Sided<{ readonly code: 'injury'; readonly place: InjuryPlace }>
  | Sided<{ readonly code: 'leg-amputated'; readonly at: LegAmputation }>
  | Sided<{ readonly code: 'arm-amputated'; readonly at: ArmAmputation }>
  | Sided<{ readonly code: 'never-there'; readonly sites: readonly BirthAbsent[] }>
  | { readonly code: 'repair'; readonly kind: Revascularisation; readonly vessel: Vessel };

function sided(known: Context, side: Side): ContextStatement[] {
  const never = known.absentFromBirth?.[side] ?? [];
  return [
    ...stated(known.legClaudication?.[side], (muscle) => ({
      code: 'leg-claudication' as const,
      side,
      muscle,
    })),
    ...stated(known.armClaudication?.[side], (arm) => ({
      code: arm === 'none' ? ('arm-does-not-tire' as const) : ('arm-tires' as const),
      side,
    })),
    ...stated(known.injury?.[side], (place) => ({ code: 'injury' as const, side, place })),
    ...stated(known.legAmputation?.[side], (at) => ({ code: 'leg-amputated' as const, side, at })),
    ...stated(known.armAmputation?.[side], (at) => ({ code: 'arm-amputated' as const, side, at })),
    ...(never.length ? [{ code: 'never-there' as const, side, sites: never }] : []),
    ...(known.radialHarvested?.includes(side) ? [{ code: 'radial-harvested' as const, side }] : []),
  ];
}

/** Everything known before a pulse is felt; what was not stated is left out. */
export function contextStatements(known: Context): ContextStatement[] {
  return [
    ...fieldStatements(known, ['ageBand']),
    ...stated(known.diabetes, (yes): ContextStatement => ({ code: yes ? 'diabetes' : 'no-diabetes' })),
    ...fieldStatements(known, ['smoking', 'mechanism']),
    ...SIDES.flatMap((side) => sided(known, side)),
    ...(known.revascularisations ?? []).map(({ kind, artery, side }) => ({
      code: 'repair' as const,
      kind,
      vessel: { artery, side },
    })),
  ];
}
