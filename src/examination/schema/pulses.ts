import * as z from 'zod/mini';
import {
  isMidlineSite,
  LISTENING_SITE_IDS,
  type MidlineSiteId,
  PULSE_SITE_IDS,
  type SiteId,
} from '../../anatomy/index.js';
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

type OfSite<S extends SiteId, T extends z.ZodMiniType> = S extends MidlineSiteId
  ? ReturnType<typeof midline<T>>
  : ReturnType<typeof sided<T>>;

/** A field for every site of a list, with the sides on which the site exists. */
function ofSites<S extends SiteId, T extends z.ZodMiniType>(sites: readonly S[], finding: T) {
  const [both, one] = [z.optional(sided(finding)), z.optional(midline(finding))];
  const fields = sites.map((site) => [site, isMidlineSite(site) ? one : both]);
  return z.strictObject(Object.fromEntries(fields) as { [K in S]: z.ZodMiniOptional<OfSite<K, T>> });
}

export const pulsesSchema = ofSites(PULSE_SITE_IDS, pulseFindingSchema);
export const bruitsSchema = ofSites(LISTENING_SITE_IDS, bruitFindingSchema);

/** Which of the two radial pulses comes later, and whether the femoral comes later than the radial of its side. */
export const ARM_DELAYS = ['none', 'right-later', 'left-later'] as const;
export const LEG_DELAYS = ['none', 'delayed'] as const;
export const delaysSchema = z.strictObject({
  radioRadial: z.optional(z.enum(ARM_DELAYS)),
  radioFemoral: z.optional(sided(z.enum(LEG_DELAYS))),
});
export type Delays = z.infer<typeof delaysSchema>;
