import { expect, fixture } from '@open-wc/testing';
import { until } from '../tools/until.js';
import { html, type TemplateResult } from 'lit';
import * as bedside from '../../../stories/bedside-test.stories.js';
import * as whole from '../../../stories/limb-examination.stories.js';
import * as context from '../../../stories/limb-context.stories.js';
import * as flags from '../../../stories/limb-flags.stories.js';
import * as history from '../../../stories/limb-history.stories.js';
import * as inspection from '../../../stories/limb-inspection.stories.js';
import * as pressures from '../../../stories/limb-pressures.stories.js';
import * as staging from '../../../stories/limb-staging.stories.js';
import * as stopwatch from '../../../stories/limb-stopwatch.stories.js';
import { drawn } from '../tools/limbs.js';
import { LOOKS, put, putBack } from '../tools/looks.js';
import { readableText } from '../tools/perceive.js';

interface Story {
  readonly args?: object;
  readonly render?: unknown;
}
interface Stories {
  readonly default: { readonly args?: object; readonly render?: unknown };
  readonly [name: string]: Story;
}

/** What a reader finds in each story, so that none shows something else than its name says. */
const SHOWS: readonly (readonly [string, Stories, Readonly<Record<string, RegExp>>])[] = [
  [
    'history',
    history as never,
    {
      Empty: /Onset/,
      AcuteLeg: /Hours since/,
      Chronic: /Pain-free walking distance/,
      ReadOnly: /Pain-free walking distance/,
    },
  ],
  [
    'clinical background',
    context as never,
    {
      Empty: /None recorded/,
      MuchKnown: /Stent in left common iliac/,
      Injury: /Trauma or surgery/,
      ReadOnly: /Trauma or surgery/,
    },
  ],
  [
    'inspection',
    inspection as never,
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
    pressures as never,
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
    staging as never,
    {
      Empty: /Not graded: not enough recorded/,
      AcuteClass: /IIb immediately threatened/,
      Overruled: /Yours: 6 .* Derived: 5/,
      Compression: /Not known: not enough recorded to compress.*Within the limits for full compression/,
    },
  ],
  [
    'red flags',
    flags as never,
    {
      None: /^None$/,
      Threatened: /limb may be threatened \(Rutherford IIb\): left leg/,
      Chronic: /Limb-threatening diabetic foot problem: right leg/,
      Several: /Aortic aneurysm with an acutely ischaemic leg.*1 of 5/,
      Opened: /Vascular registrar/,
      Question: /Left leg: when did it begin/,
    },
  ],
  ['stopwatch', stopwatch as never, { CountsUp: /0:00/, CountsDown: /3:00/, Plain: /Start/ }],
  [
    'bedside test',
    bedside as never,
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
    whole as never,
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

async function show(stories: Stories, name: string): Promise<HTMLElement> {
  const meta = stories.default;
  const story = stories[name] as Story;
  const render = (story.render ?? meta.render) as (args: object, context: object) => TemplateResult;
  const page = await fixture<HTMLElement>(
    html`<main lang="en">
      <h2>${name}</h2>
      ${render({ ...meta.args, ...story.args }, {})}
    </main>`,
  );
  await drawn(page);
  return page;
}

afterEach(putBack);

for (const [area, stories, shows] of SHOWS) {
  describe(`the stories of ${area}`, () => {
    it('are those listed here', () => {
      const names = Object.keys(stories).filter((name) => name !== 'default');
      expect(names.sort()).to.deep.equal(Object.keys(shows).sort());
    });

    for (const [name, text] of Object.entries(shows)) {
      for (const look of LOOKS) {
        it(`${name} shows what it is named for, and axe finds nothing in it, ${look}`, async () => {
          await put(look);
          const page = await show(stories, name);
          await until(
            () => text.test(readableText(page)),
            `${String(text)} in ${name}: ${readableText(page).slice(0, 400)}`,
          );
          await expect(page).to.be.accessible();
        });
      }
    }
  });
}
