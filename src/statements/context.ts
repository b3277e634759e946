import { type LimbKey, type Side, SIDES, type Vessel } from '../anatomy/index.js';
import type {
  ArmAmputation,
  AccessSign,
  BirthAbsent,
  Context,
  DialysisAccess,
  GraftInfectionSign,
  InjuryPlace,
  KnownAneurysm,
  LegAmputation,
  LegClaudication,
  Medicine,
  PlacedDevice,
  RevascularisedArtery,
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
  | ({ readonly code: 'repair'; readonly vessel: Vessel } & Pick<RevascularisedArtery, 'kind' | 'route'>)
  | { readonly code: 'graft-pulse'; readonly pulse: NonNullable<RevascularisedArtery['graftPulse']> }
  | { readonly code: 'graft-infection'; readonly signs: readonly GraftInfectionSign[] }
  | ({ readonly code: 'aneurysm' } & KnownAneurysm)
  | ({ readonly code: 'access' } & Pick<DialysisAccess, 'side' | 'kind'>)
  | { readonly code: 'access-signs'; readonly side: Side; readonly signs: readonly AccessSign[] }
  | { readonly code: 'device'; readonly limb: LimbKey; readonly kind: PlacedDevice['kind'] }
  | { readonly code: 'cold-injury'; readonly limb: LimbKey; readonly hours?: number }
  | { readonly code: 'medicines'; readonly medicines: readonly Medicine[] }
  /** Asked or looked for, and none. */
  | { readonly code: 'no-repairs' | 'no-aneurysm' | 'no-access' | 'no-device' | 'no-medicines' };

/** What a list holds; of an empty one that there is none. */
function listed<V>(
  list: readonly V[] | undefined,
  none: 'no-repairs' | 'no-aneurysm' | 'no-access' | 'no-device',
  say: (one: V) => readonly ContextStatement[],
): ContextStatement[] {
  if (!list) return [];
  return list.length ? list.flatMap(say) : [{ code: none }];
}

function graft({ kind, route, artery, side, graftPulse, infectionSigns }: RevascularisedArtery) {
  return [
    { code: 'repair' as const, kind, ...(route && { route }), vessel: { artery, side } },
    ...stated(graftPulse, (pulse) => ({ code: 'graft-pulse' as const, pulse })),
    ...stated(infectionSigns, (signs) => ({ code: 'graft-infection' as const, signs })),
  ];
}

function coldInjuries({ coldInjury }: Context): ContextStatement[] {
  return (['leg', 'arm'] as const).flatMap((kind) =>
    SIDES.flatMap((side) =>
      stated(coldInjury?.[kind]?.[side], ({ hours }): ContextStatement => ({
        code: 'cold-injury',
        limb: `${side} ${kind}`,
        ...(hours !== undefined && { hours }),
      })),
    ),
  );
}

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
    ...listed(known.revascularisations, 'no-repairs', graft),
    ...listed(known.aneurysms, 'no-aneurysm', ({ place, side }) => [
      { code: 'aneurysm', place, ...(side && { side }) },
    ]),
    ...listed(known.access, 'no-access', ({ side, kind, signs }) => [
      { code: 'access', side, kind },
      ...stated(signs, (all): ContextStatement => ({ code: 'access-signs', side, signs: all })),
    ]),
    ...listed(known.devices, 'no-device', ({ limb, side, kind }) => [
      { code: 'device', limb: `${side} ${limb}`, kind },
    ]),
    ...coldInjuries(known),
    ...stated(known.medicines, (medicines): ContextStatement =>
      medicines.length ? { code: 'medicines', medicines } : { code: 'no-medicines' },
    ),
  ];
}
