import * as z from 'zod/mini';
import type { ListeningSiteId, PulseSiteId } from '../../anatomy/index.js';
import { midline, reasonSchema, rule, sided, textSchema } from './common.js';

/** How strong a pulse is, weakest first. Words, since a bare number means different things on different scales. */
export const GRADES = ['absent', 'reduced', 'normal', 'bounding'] as const;
export type Grade = (typeof GRADES)[number];

/** What a hand-held Doppler lets one hear. */
export const DOPPLER_SIGNALS = ['triphasic', 'biphasic', 'monophasic', 'absent'] as const;
export type DopplerSignal = (typeof DOPPLER_SIGNALS)[number];

/** What is heard over an artery with the stethoscope. */
export const BRUITS = ['none', 'systolic', 'continuous'] as const;
export type Bruit = (typeof BRUITS)[number];

/** What was found at one pulse site. Nothing recorded is "not examined", never "normal". */
export const pulseFindingSchema = z
  .strictObject({
    grade: z.optional(z.enum(GRADES)),
    /** Stronger than normal but short of bounding; told apart on the 0-4 scale only. */
    increased: z.optional(z.literal(true)),
    couldNotExamine: z.optional(reasonSchema),
    expansile: z.optional(z.literal(true)),
    thrill: z.optional(z.literal(true)),
    doppler: z.optional(z.enum(DOPPLER_SIGNALS)),
    note: z.optional(textSchema),
  })
  .check(
    rule((f) => !(f.grade && f.couldNotExamine), 'couldNotExamine', 'a grade or a reason, not both'),
    rule((f) => !(f.couldNotExamine && f.thrill), 'thrill', 'no thrill where the site could not be examined'),
    rule(
      (f) => !(f.couldNotExamine && f.expansile),
      'expansile',
      'no expansile pulse where the site could not be examined',
    ),
    rule((f) => !f.increased || f.grade === 'bounding', 'increased', 'only together with grade "bounding"'),
  );
export type PulseFinding = z.infer<typeof pulseFindingSchema>;

/** What was heard at one listening site. */
export const bruitFindingSchema = z
  .strictObject({
    bruit: z.optional(z.enum(BRUITS)),
    couldNotExamine: z.optional(reasonSchema),
    note: z.optional(textSchema),
  })
  .check(rule((f) => !(f.bruit && f.couldNotExamine), 'couldNotExamine', 'a bruit or a reason, not both'));
export type BruitFinding = z.infer<typeof bruitFindingSchema>;

const pulseSides = z.optional(sided(pulseFindingSchema));
const bruitSides = z.optional(sided(bruitFindingSchema));

export const pulsesSchema = z.strictObject({
  'superficial-temporal': pulseSides,
  carotid: pulseSides,
  subclavian: pulseSides,
  axillary: pulseSides,
  brachial: pulseSides,
  radial: pulseSides,
  ulnar: pulseSides,
  'abdominal-aorta': z.optional(midline(pulseFindingSchema)),
  femoral: pulseSides,
  popliteal: pulseSides,
  'posterior-tibial': pulseSides,
  'dorsalis-pedis': pulseSides,
} satisfies Record<PulseSiteId, unknown>);

export const bruitsSchema = z.strictObject({
  carotid: bruitSides,
  subclavian: bruitSides,
  axillary: bruitSides,
  'abdominal-aorta': z.optional(midline(bruitFindingSchema)),
  renal: bruitSides,
  iliac: bruitSides,
  femoral: bruitSides,
  'adductor-canal': bruitSides,
  popliteal: bruitSides,
} satisfies Record<ListeningSiteId, unknown>);

/** Which of the two radial pulses comes later, and whether the femoral comes later than the radial of its side. */
export const ARM_DELAYS = ['none', 'right-later', 'left-later'] as const;
export const LEG_DELAYS = ['none', 'delayed'] as const;
export const delaysSchema = z.strictObject({
  radioRadial: z.optional(z.enum(ARM_DELAYS)),
  radioFemoral: z.optional(sided(z.enum(LEG_DELAYS))),
});
export type Delays = z.infer<typeof delaysSchema>;
