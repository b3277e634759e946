import { expect } from '@open-wc/testing';
import { html, render, type TemplateResult } from 'lit';
import { axeFindsNothing, seenIn } from './axed.js';
import { drawn } from './limbs.js';
import { LOOKS, put, putBack } from './looks.js';
import { readableText } from './perceive.js';
import { until } from './until.js';

type Render = (args: object, context: { readonly loaded: object }) => TemplateResult;
interface Story {
  readonly args?: object;
  readonly render?: Render;
  readonly loaders?: readonly (() => Promise<object>)[];
}
interface Stories {
  readonly default: Story;
}

/** Draws a story as Storybook would; gives its page and what takes it away. */
async function show(meta: Story, story: Story, name: string): Promise<{ page: HTMLElement; remove(): void }> {
  const loaded: object = Object.assign(
    {},
    ...(await Promise.all((story.loaders ?? []).map((load) => load()))),
  );
  const draw = (story.render ?? meta.render) as Render;
  const place = document.createElement('div');
  document.body.append(place);
  const main = html`<main lang="en">
    <h2>${name}</h2>
    ${draw({ ...meta.args, ...story.args }, { loaded })}
  </main>`;
  render(main, place);
  const page = place.firstElementChild as HTMLElement;
  await drawn(page);
  return { page, remove: () => place.remove() };
}

/** Ends what fades into another look: what is hidden fades no more, and what appears has its colours at once. */
function settle(page: HTMLElement): void {
  page.style.display = 'none';
  page.getBoundingClientRect();
  page.style.removeProperty('display');
}

/**
 * A test a story and look: that axe finds nothing. Each story is drawn once, and is what its name says by what a reader finds in it
 * (`shows`, or some text at all); the looks follow by CSS alone.
 */
export function walkStories(area: string, module: object, shows?: Readonly<Record<string, RegExp>>): void {
  const { default: meta, ...stories } = module as Stories & Record<string, Story>;
  describe(`the stories of ${area}`, () => {
    if (shows)
      it('are those listed here', () => {
        expect(Object.keys(stories).sort()).to.deep.equal(Object.keys(shows).sort());
      });

    for (const [name, story] of Object.entries(stories)) {
      describe(`${name} is drawn, and axe finds nothing in it`, () => {
        let page: HTMLElement;
        let remove: (() => void) | undefined;
        let seen: string | undefined;
        before(async () => {
          ({ page, remove } = await show(meta, story, name));
          const text = shows?.[name];
          await until(
            () => (text ? text.test(readableText(page)) : readableText(page).length > name.length + 20),
            `${text ? String(text) : 'a text'} in ${name}: ${readableText(page).slice(0, 400)}`,
          );
        });
        after(() => remove?.());
        afterEach(putBack);

        for (const look of LOOKS) {
          it(look, async () => {
            await put(look);
            settle(page);
            await axeFindsNothing(page, seen);
            seen ??= seenIn(page);
          });
        }
      });
    }
  });
}
