import * as z from 'zod/mini';
import { ARTERY_IDS, type ArteryId, LATERALITIES, SIDES } from '../../anatomy/index.js';
import {
  AGE_BANDS,
  ARM_AMPUTATIONS,
  ARM_CLAUDICATION,
  BIRTH_ABSENT,
  type Context,
  INJURY_PLACES,
  LEG_AMPUTATIONS,
  LEG_CLAUDICATION,
  MECHANISMS,
  MOST_REVASCULARISATIONS,
  type RevascularisedArtery,
  REVASCULARISATIONS,
  SMOKING,
} from '../types/context.js';
import { object, sided } from './common.js';
import { anyOf, listOf, oneOf } from './measures.js';

const revascularised = object<RevascularisedArtery>({
  artery: z.enum(ARTERY_IDS as [ArteryId, ...ArteryId[]]),
  side: z.enum(LATERALITIES),
  kind: z.enum(REVASCULARISATIONS),
});

export const contextSchema: z.ZodMiniType<Context> = object<Context>({
  ageBand: oneOf(AGE_BANDS),
  diabetes: z.optional(z.boolean()),
  smoking: oneOf(SMOKING),
  mechanism: oneOf(MECHANISMS),
  injury: z.optional(sided(z.enum(INJURY_PLACES))),
  legClaudication: z.optional(sided(z.enum(LEG_CLAUDICATION))),
  armClaudication: z.optional(sided(z.enum(ARM_CLAUDICATION))),
  revascularisations: z.optional(z.array(revascularised).check(z.maxLength(MOST_REVASCULARISATIONS))),
  legAmputation: z.optional(sided(z.enum(LEG_AMPUTATIONS))),
  armAmputation: z.optional(sided(z.enum(ARM_AMPUTATIONS))),
  absentFromBirth: z.optional(sided(listOf(BIRTH_ABSENT))),
  radialHarvested: anyOf(SIDES),
});
