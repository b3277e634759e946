import * as z from 'zod/mini';
import { isMidlineSite, LISTENING_SITE_IDS, PULSE_SITE_IDS, type SiteId } from '../../anatomy/index.js';
import {
  ARM_DELAYS,
  BRUIT_FIELDS,
  type BruitFinding,
  type Bruits,
  type Delays,
  type FindingFields,
  LEG_DELAYS,
  PULSE_FIELDS,
  type PulseFinding,
  type Pulses,
} from '../types/pulses.js';
import { type Fields, midline, object, rule, sided, textSchema } from './common.js';
import { oneOf, yes } from './measures.js';

/** The fields of a finding, from the same lists that its edits are checked by. */
function ofFinding<T extends object>(fields: FindingFields<T>): Fields<T> {
  const schemas = Object.entries<readonly [string, ...string[]] | 'yes' | 'text'>(fields as never).map(
    ([name, words]) => [
      name,
      words === 'text' ? z.optional(textSchema) : words === 'yes' ? yes : oneOf(words),
    ],
  );
  return Object.fromEntries(schemas) as Fields<T>;
}

export const pulseFindingSchema: z.ZodMiniType<PulseFinding> = object<PulseFinding>(
  ofFinding<PulseFinding>(PULSE_FIELDS),
  rule('grade-or-reason', ['couldNotExamine', 'grade'], (f) => !(f.grade && f.couldNotExamine)),
  rule('thrill-only-felt', ['thrill', 'couldNotExamine'], (f) => !(f.couldNotExamine && f.thrill)),
  rule('expansile-only-felt', ['expansile', 'couldNotExamine'], (f) => !(f.couldNotExamine && f.expansile)),
  rule('increased-only-bounding', ['increased', 'grade'], (f) => !f.increased || f.grade === 'bounding'),
);

export const bruitFindingSchema: z.ZodMiniType<BruitFinding> = object<BruitFinding>(
  ofFinding<BruitFinding>(BRUIT_FIELDS),
  rule('bruit-or-reason', ['couldNotExamine', 'bruit'], (f) => !(f.bruit && f.couldNotExamine)),
);

/** A field for every site of a list, with the sides on which the site exists. */
function atSites<T extends object, F>(sites: readonly SiteId[], finding: z.ZodMiniType<F>): z.ZodMiniType<T> {
  const [both, one] = [z.optional(sided(finding)), z.optional(midline(finding))];
  return object<T>(
    Object.fromEntries(sites.map((site) => [site, isMidlineSite(site) ? one : both])) as never,
  );
}

export const pulsesSchema: z.ZodMiniType<Pulses> = atSites<Pulses, PulseFinding>(
  PULSE_SITE_IDS,
  pulseFindingSchema,
);
export const bruitsSchema: z.ZodMiniType<Bruits> = atSites<Bruits, BruitFinding>(
  LISTENING_SITE_IDS,
  bruitFindingSchema,
);

export const delaysSchema: z.ZodMiniType<Delays> = object<Delays>({
  radioRadial: oneOf(ARM_DELAYS),
  radioFemoral: z.optional(sided(z.enum(LEG_DELAYS))),
});
