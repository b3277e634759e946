import * as bedside from '../../../stories/bedside-test.stories.js';
import * as whole from '../../../stories/limb-examination.stories.js';
import * as context from '../../../stories/limb-context.stories.js';
import * as flags from '../../../stories/limb-flags.stories.js';
import * as history from '../../../stories/limb-history.stories.js';
import * as inspection from '../../../stories/limb-inspection.stories.js';
import * as pressures from '../../../stories/limb-pressures.stories.js';
import * as staging from '../../../stories/limb-staging.stories.js';
import * as stopwatch from '../../../stories/limb-stopwatch.stories.js';
import { walkStories } from '../tools/stories.js';

/** What a reader finds in each story, so that none shows something else than its name says. */
const SHOWS: readonly (readonly [string, object, Readonly<Record<string, RegExp>>])[] = [
  [
    'history',
    history,
    {
      Empty: /Onset/,
      AcuteLeg: /Hours since/,
      Chronic: /Pain-free walking distance/,
      ReadOnly: /Pain-free walking distance/,
    },
  ],
  [
    'clinical background',
    context,
    {
      Empty: /None recorded/,
      MuchKnown: /Stent in left common iliac/,
      Injury: /Trauma or surgery/,
      ReadOnly: /Trauma or surgery/,
    },
  ],
  [
    'inspection',
    inspection,
    {
      Empty: /Colour/,
      AcuteLeg: /Level of change/,
      Ulcer: /Redness reaches/,
      Disabled: /Redness reaches/,
      Locked: /recorded in a way this version does not know/,
      Sealed: /made by a version that cannot be shown here/,
    },
  ],
  [
    'pressures',
    pressures,
    {
      Empty: /Ankle-brachial pressure index/,
      TwoLegs: /incompressible/,
      OneArmMissing: /Right brachial pressure not recorded/,
      InKilopascal: /14\.6|kPa/,
      Segments: /suggests disease at the femoro-popliteal level/,
      Locked: /recorded in a way this version does not know/,
      Methods: /Threatened limb by: PARC 2015\./,
    },
  ],
  [
    'stages',
    staging,
    {
      Empty: /Not graded: not enough recorded/,
      AcuteClass: /IIb immediately threatened/,
      Overruled: /Yours: 6 .* Derived: 5/,
      Compression: /Not known: not enough recorded to compress.*Within the limits for full compression/,
    },
  ],
  [
    'red flags',
    flags,
    {
      None: /^None$/,
      Threatened: /limb may be threatened \(Rutherford IIb\): left leg/,
      Chronic: /Limb-threatening diabetic foot problem: right leg/,
      Several: /Aortic aneurysm with an acutely ischaemic leg.*1 of 5/,
      Opened: /Vascular registrar/,
      Question: /Left leg: when did it begin/,
    },
  ],
  ['stopwatch', stopwatch, { CountsUp: /0:00/, CountsDown: /3:00/, Plain: /Start/ }],
  [
    'bedside test',
    bedside,
    {
      Empty: /Leg elevation Buerger/,
      LegRaise: /Pale at 25° after 34 s/,
      ColourReturn: /Pink after 32 s: prolonged, limit 15 s/,
      Redness: /Dependent rubor/,
      VenousFillingNotDone: /Not done: oedema/,
      HandArch: /palm stays white, so the ulnar artery or the arch may be blocked/,
      Cold: /White, blue and red in turn/,
      Scalene: /11 to 13\.5% lose or change the pulse/,
      Hyperabduction: /with tingling: positive.*57/,
      Costoclavicular: /Pulse kept, no symptoms: negative/,
      ArmStress: /Stopped at 102 s of 180 for tingling: positive/,
      ReadOnly: /Pale at 25°/,
    },
  ],
  [
    'whole examination',
    whole,
    {
      Empty: /History/,
      Threatened: /limb may be threatened \(Rutherford IIb\): left leg/,
      Chronic: /History 9 entries|History/,
      ReadOnly: /History/,
      Sealed: /made by a version that cannot be shown here/,
      Locked: /holds 5 entries of a later version/,
      InAForm: /Submit/,
    },
  ],
];

for (const story of SHOWS) walkStories(...story);
