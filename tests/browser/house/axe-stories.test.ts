import { expect, fixture, html } from '@open-wc/testing';
import type { TemplateResult } from 'lit';
import * as languages from '../../../stories/languages.stories.js';
import * as changes from '../../../stories/limb-changes.stories.js';
import * as letter from '../../../stories/limb-letter.stories.js';
import * as note from '../../../stories/limb-note.stories.js';
import * as observations from '../../../stories/limb-observations.stories.js';
import * as report from '../../../stories/limb-report.stories.js';
import * as unconfirmed from '../../../stories/limb-unconfirmed.stories.js';
import * as visits from '../../../stories/limb-visits.stories.js';
import * as editor from '../../../stories/pulse-lesson-editor.stories.js';
import * as lesson from '../../../stories/pulse-lesson.stories.js';
import * as map from '../../../stories/pulse-map.stories.js';
import * as practice from '../../../stories/pulse-practice.stories.js';
import * as reading from '../../../stories/pulse-reading.stories.js';
import * as simulated from '../../../stories/simulated-patient.stories.js';
import { drawn } from '../tools/limbs.js';
import { LOOKS, put, putBack } from '../tools/looks.js';
import { readableText } from '../tools/perceive.js';
import { until } from '../tools/until.js';

/** Those of the parts of an examination are walked by `limb-parts/stories`. */
const ALL = {
  languages,
  changes,
  letter,
  note,
  observations,
  report,
  unconfirmed,
  visits,
  editor,
  lesson,
  map,
  practice,
  reading,
  simulated,
};

type Render = (args: object, context: { readonly loaded: object }) => TemplateResult;
interface Story {
  readonly args?: object;
  readonly render?: Render;
  readonly loaders?: readonly (() => Promise<object>)[];
}
interface Stories {
  readonly default: Story;
}

afterEach(putBack);

for (const [area, module] of Object.entries(ALL)) {
  const { default: meta, ...stories } = module as unknown as Stories & Record<string, Story>;
  describe(`the stories of ${area}`, () => {
    for (const [name, story] of Object.entries(stories)) {
      for (const look of LOOKS) {
        it(`${name}: axe finds nothing, ${look}`, async () => {
          await put(look);
          const loaded: object = Object.assign(
            {},
            ...(await Promise.all((story.loaders ?? []).map((load) => load()))),
          );
          const render = (story.render ?? meta.render) as Render;
          const page = await fixture<HTMLElement>(
            html`<main lang="en">
              <h2>${name}</h2>
              ${render({ ...meta.args, ...story.args }, { loaded })}
            </main>`,
          );
          await drawn(page);
          // Without an earlier record there are no changes, and nothing is drawn.
          if (`${area} ${name}` !== 'changes None')
            await until(() => readableText(page).length > name.length + 20, `${name} is drawn`);
          await expect(page).to.be.accessible();
        });
      }
    }
  });
}
