import * as z from 'zod/mini';
import { ARTERY_IDS, type ArteryId, LATERALITIES, SIDES } from '../../anatomy/index.js';
import {
  ACCESS_KINDS,
  ACCESS_SIGNS,
  AGE_BANDS,
  ANEURYSM_PLACES,
  ARM_AMPUTATIONS,
  ARM_CLAUDICATION,
  ARTERIAL_DEVICES,
  BIRTH_ABSENT,
  type ColdInjury,
  type Context,
  type DialysisAccess,
  GRAFT_INFECTION_SIGNS,
  GRAFT_PULSES,
  GRAFT_ROUTES,
  INJURY_PLACES,
  type KnownAneurysm,
  LEG_AMPUTATIONS,
  LEG_CLAUDICATION,
  MECHANISMS,
  MEDICINES,
  MOST_ENTRIES,
  MOST_REVASCULARISATIONS,
  type PlacedDevice,
  type RevascularisedArtery,
  REVASCULARISATIONS,
  SMOKING,
} from '../types/context.js';
import { object, rule, sided } from './common.js';
import { anyOf, listOf, oneOf, upTo } from './measures.js';

const revascularised = object<RevascularisedArtery>(
  {
    artery: z.enum(ARTERY_IDS as [ArteryId, ...ArteryId[]]),
    side: z.enum(LATERALITIES),
    kind: z.enum(REVASCULARISATIONS),
    graftPulse: oneOf(GRAFT_PULSES),
    route: oneOf(GRAFT_ROUTES),
    infectionSigns: anyOf(GRAFT_INFECTION_SIGNS),
  },
  rule('route-only-of-bypass', ['route', 'kind'], (graft) => !graft.route || graft.kind === 'bypass'),
);
const aneurysm = object<KnownAneurysm>({ place: z.enum(ANEURYSM_PLACES), side: oneOf(SIDES) });
const access = object<DialysisAccess>({
  side: z.enum(SIDES),
  kind: z.enum(ACCESS_KINDS),
  signs: anyOf(ACCESS_SIGNS),
});
const device = object<PlacedDevice>({
  limb: z.enum(['leg', 'arm']),
  side: z.enum(SIDES),
  kind: z.enum(ARTERIAL_DEVICES),
});
const coldInjury = z.optional(sided(object<ColdInjury>({ hours: z.optional(upTo(10_000)) })));

function some<T>(entry: z.ZodMiniType<T>) {
  return z.optional(z.array(entry).check(z.maxLength(MOST_ENTRIES)));
}

export const contextSchema: z.ZodMiniType<Context> = object<Context>({
  ageBand: oneOf(AGE_BANDS),
  diabetes: z.optional(z.boolean()),
  smoking: oneOf(SMOKING),
  mechanism: oneOf(MECHANISMS),
  injury: z.optional(sided(z.enum(INJURY_PLACES))),
  legClaudication: z.optional(sided(z.enum(LEG_CLAUDICATION))),
  armClaudication: z.optional(sided(z.enum(ARM_CLAUDICATION))),
  revascularisations: z.optional(z.array(revascularised).check(z.maxLength(MOST_REVASCULARISATIONS))),
  aneurysms: some(aneurysm),
  access: some(access),
  devices: some(device),
  coldInjury: z.optional(object<NonNullable<Context['coldInjury']>>({ leg: coldInjury, arm: coldInjury })),
  medicines: anyOf(MEDICINES),
  legAmputation: z.optional(sided(z.enum(LEG_AMPUTATIONS))),
  armAmputation: z.optional(sided(z.enum(ARM_AMPUTATIONS))),
  absentFromBirth: z.optional(sided(listOf(BIRTH_ABSENT))),
  radialHarvested: anyOf(SIDES),
});
