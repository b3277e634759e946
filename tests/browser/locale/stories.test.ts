import { expect, fixture } from '@open-wc/testing';
import { until } from '../tools/until.js';
import { html, type TemplateResult } from 'lit';
import meta, * as stories from '../../../stories/languages.stories.js';
import { drawn } from '../tools/limbs.js';
import { readableText } from '../tools/perceive.js';

/** What a reader finds in each story. */
const SHOWS: Record<Exclude<keyof typeof stories, 'default'>, RegExp> = {
  English: /Occlusion between left femoral and left popliteal/,
  German: /Verschluss zwischen Femoralis links und Poplitea links/,
  GermanTable: /Kopf und Arme/,
  GermanExamination: /Akute Extremitätenischämie wahrscheinlich/,
  RightToLeft: /Occlusion between left femoral and left popliteal/,
  RightToLeftTable: /Trunk and legs/,
};

describe('the stories of languages', () => {
  it('are those listed here', () => {
    const names = Object.keys(stories).filter((name) => name !== 'default');
    expect(names.sort()).to.deep.equal(Object.keys(SHOWS).sort());
  });

  for (const name of Object.keys(SHOWS) as (keyof typeof SHOWS)[]) {
    it(`${name} shows what it is named for, and axe finds nothing in it`, async () => {
      const story = stories[name];
      const render = (story.render ?? meta.render) as (args: object) => TemplateResult;
      const page = await fixture<HTMLElement>(
        html`<main>
          <h2>${name}</h2>
          ${render({ ...meta.args, ...story.args })}
        </main>`,
      );
      await drawn(page);
      await until(() => SHOWS[name].test(readableText(page)), `${String(SHOWS[name])} in ${name}`);
      await expect(page).to.be.accessible();
    });
  }
});
