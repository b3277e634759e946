import * as z from 'zod/mini';
import { reasonSchema, rule, sided, textSchema } from './common.js';
import { anyOf, oneOf, upTo, yes } from './measures.js';
import { GRADES } from './pulses.js';

/** Longest time a bedside test is timed, in seconds. */
export const LONGEST_SECONDS = 3600;
const seconds = z.optional(upTo(LONGEST_SECONDS));

/** What every test result holds besides its own measurements. */
const every = {
  /** Why it was not done. */
  notDone: z.optional(reasonSchema),
  /** The limit the reading was judged by, in the unit of the test; without one the library's default applies. */
  limit: z.optional(upTo(LONGEST_SECONDS)),
  note: z.optional(textSchema),
};

/** Symptoms a position of the arm can bring on. */
export const OUTLET_SYMPTOMS = ['heaviness', 'tingling', 'pain', 'fatigue'] as const;
export type OutletSymptom = (typeof OUTLET_SYMPTOMS)[number];

/** The pulse before and in a position of the arm, and what was felt there. An empty list: asked, and nothing felt. */
const position = {
  before: oneOf(GRADES),
  during: oneOf(GRADES),
  symptoms: anyOf(OUTLET_SYMPTOMS),
  /** How long the position was held, in seconds. */
  seconds,
};
const positionSchema = z.strictObject(position);
export type OutletPosition = z.infer<typeof positionSchema>;

/** The three ways of the scalene manoeuvre: head to the side tested, head away from it, and with the arm drawn down. */
export const SCALENE_WAYS = ['toward', 'away', 'traction'] as const;
export type ScaleneWay = (typeof SCALENE_WAYS)[number];

export const BARBEAU_CLASSES = ['A', 'B', 'C', 'D'] as const;
export type BarbeauClass = (typeof BARBEAU_CLASSES)[number];

/** Time to the return of colour after an artery was let go; `returned: false` when the palm stayed white so long. */
const release = z.optional(z.strictObject({ seconds, returned: z.optional(z.boolean()) }));

export const STOP_REASONS = ['pain', 'tingling', 'fatigue', 'other'] as const;
export type StopReason = (typeof STOP_REASONS)[number];

const elevation = z.strictObject({
  ...every,
  /** Whether the sole turned pale. */
  pallor: z.optional(z.boolean()),
  /** Where it turned pale, or how high the leg was raised without turning pale; degrees above the couch. */
  angle: z.optional(upTo(90)),
  /** Time until pallor, or time held without pallor. */
  seconds,
});
/** `seconds` until the colour came back, or watched without (`returned: false`). */
const colourReturn = z.strictObject({ ...every, seconds, returned: z.optional(z.boolean()) });
const dependentRubor = z.strictObject({ ...every, rubor: z.optional(z.boolean()), seconds });
const venousFilling = z.strictObject({
  ...every,
  seconds,
  filled: z.optional(z.boolean()),
  /** Varicose or otherwise incompetent veins fill from above and shorten the time. */
  incompetentVeins: yes,
});
const handArch = z.strictObject({
  ...every,
  method: oneOf(['modified', 'original']),
  /** After the radial artery was let go with the ulnar still pressed, and the other way about. */
  radial: release,
  ulnar: release,
  /** Plethysmography while the radial artery is pressed, and while the ulnar is. */
  barbeau: oneOf(BARBEAU_CLASSES),
  barbeauReverse: oneOf(BARBEAU_CLASSES),
});
const coldProvocation = z
  .strictObject({
    ...every,
    /** Seconds after which each colour appeared; `noChange` when none did. */
    white: seconds,
    blue: seconds,
    red: seconds,
    noChange: yes,
    /** Minutes until the finger was warm again. */
    rewarm: z.optional(upTo(120)),
    /** Temperature of the water in °C and seconds of immersion. */
    water: z.optional(upTo(40)),
    immersed: seconds,
  })
  .check(
    rule(
      (c) => !c.noChange || (c.white === undefined && c.blue === undefined && c.red === undefined),
      'noChange',
      'colours or no change, not both',
    ),
  );
const scalene = z.strictObject({
  ...every,
  toward: z.optional(positionSchema),
  away: z.optional(positionSchema),
  traction: z.optional(positionSchema),
});
const onePosition = z.strictObject({ ...every, ...position });
const armStress = z.strictObject({
  ...every,
  before: position.before,
  during: position.during,
  /** How long the arm stayed up. */
  seconds,
  stopped: oneOf(STOP_REASONS),
  /** Seconds after which each was first felt. */
  felt: z.optional(
    z.strictObject({ heaviness: seconds, tingling: seconds, pain: seconds, fatigue: seconds }),
  ),
  /** Asked, and nothing felt. */
  nothingFelt: yes,
});

/** The timed and positional tests, leg before arm, each side on its own. */
export const bedsideSchema = z.strictObject({
  elevation: z.optional(sided(elevation)),
  'colour-return': z.optional(sided(colourReturn)),
  'dependent-rubor': z.optional(sided(dependentRubor)),
  'venous-filling': z.optional(sided(venousFilling)),
  'hand-arch': z.optional(sided(handArch)),
  'cold-provocation': z.optional(sided(coldProvocation)),
  scalene: z.optional(sided(scalene)),
  hyperabduction: z.optional(sided(onePosition)),
  costoclavicular: z.optional(sided(onePosition)),
  'arm-stress': z.optional(sided(armStress)),
});
export type Bedside = z.infer<typeof bedsideSchema>;
export type BedsideTestId = keyof Bedside;
export type BedsideResult<Id extends BedsideTestId> = NonNullable<NonNullable<Bedside[Id]>['right']>;
/** What every result has. */
export type AnyBedsideResult = { [Id in BedsideTestId]: BedsideResult<Id> }[BedsideTestId];
