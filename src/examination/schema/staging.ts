import * as z from 'zod/mini';
import {
  ACUTE_CLASSES,
  type ArmOverrules,
  FONTAINE_STAGES,
  type LegOverrules,
  type Overrule,
  RUTHERFORD_CATEGORIES,
  type Staging,
  WIFI_GRADES,
  WIFI_STAGES,
} from '../types/staging.js';
import { object, sided, textSchema } from './common.js';

function overruled<T>(stage: z.ZodMiniType<T>): z.ZodMiniOptional<z.ZodMiniType<Overrule<T>>> {
  return z.optional(
    z.looseObject({ stage, derived: z.optional(stage), why: z.optional(textSchema) }) as never,
  );
}

const acute = overruled(z.enum(ACUTE_CLASSES));
const grade = overruled(z.literal([...WIFI_GRADES]));

const leg = object<LegOverrules>({
  fontaine: overruled(z.enum(FONTAINE_STAGES)),
  rutherford: overruled(z.literal([...RUTHERFORD_CATEGORIES])),
  acute,
  wound: grade,
  ischaemia: grade,
  infection: grade,
  wifi: overruled(z.literal([...WIFI_STAGES])),
});

export const stagingSchema: z.ZodMiniType<Staging> = object<Staging>({
  leg: z.optional(sided(leg)),
  arm: z.optional(sided(object<ArmOverrules>({ acute }))),
});
