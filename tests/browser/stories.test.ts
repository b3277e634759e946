import { expect, fixture } from '@open-wc/testing';
import { html, type TemplateResult } from 'lit';
import type { PulseMap } from 'pulse-map';
import meta, * as stories from '../../stories/pulse-map.stories.js';
import { emulate } from '../tools/real-input.js';
import { walkStories } from './tools/stories.js';

/** What a reader finds in each story, so that none shows something else than its name says. */
const SHOWS: Record<Exclude<keyof typeof stories, 'default'>, RegExp> = {
  Empty: /No pulse recorded/,
  Normal: /All 23 pulses palpable, none reduced: no occlusive lesion suggested/,
  OneBlock: /Occlusion between left femoral and left popliteal/,
  SeveralBlocks:
    /Stenosis between the abdominal aorta and right femoral, and an occlusion between right femoral and right popliteal/,
  AortoIliac: /Occlusion above both femoral pulses: at the aortic bifurcation/,
  Arm: /Stenosis above left subclavian/,
  CouldNotExamine: /Left popliteal not assessable \(dressing\)/,
  Contradiction: /Doubtful occlusion between left femoral and left popliteal/,
  Expansile: /Expansile: abdominal aorta.+All 23 pulses palpable/,
  MarksOnTheSkin: /Left great toe +gangrene +dry/,
  Table: /Occlusion between left femoral and left popliteal/,
  ComparedWithEarlier: /Occlusion between left femoral and left popliteal/,
  ReadOnly: /Occlusion between left femoral and left popliteal/,
  Disabled: /Occlusion between left femoral and left popliteal/,
  Locked: /recorded in a way this version does not know/,
  Unreadable: /made by a version that cannot be shown here/,
  Dark: /Occlusion between left femoral and left popliteal/,
  LectureHall: /Occlusion between left femoral and left popliteal/,
  Plates: /Left knee, from behind/,
  Small: /Occlusion between left femoral and left popliteal/,
  InAForm: /No pulse recorded/,
};

type Name = keyof typeof SHOWS;

async function show(name: Name): Promise<{ page: HTMLElement; map: PulseMap }> {
  const story = stories[name];
  const render = story.render ?? meta.render;
  const template = render?.({ ...meta.args, ...story.args } as never, {} as never) as TemplateResult;
  const page = await fixture<HTMLElement>(
    html`<main>
      <h2>${name}</h2>
      ${template}
    </main>`,
  );
  const map = page.querySelector('pulse-map') as PulseMap;
  await map.updateComplete;
  return { page, map };
}

afterEach(() => emulate({}));

walkStories('the pulse map', stories, SHOWS);

describe('the stories of the pulse map', () => {
  it('Dark stays dark on a light page', async () => {
    await emulate({ colorScheme: 'light' });
    const { map } = await show('Dark');
    expect(getComputedStyle(map).color).to.equal('rgb(236, 239, 242)');
  });

  it('ReadOnly submits, Disabled does not', async () => {
    for (const [name, submits] of [
      ['ReadOnly', true],
      ['Disabled', false],
    ] as const) {
      const { map } = await show(name);
      const form = document.createElement('form');
      map.replaceWith(form);
      form.append(map);
      expect(new FormData(form).has('pulses')).to.equal(submits);
      form.remove();
    }
  });

  it('Unreadable shows nothing and keeps the text', async () => {
    const { map } = await show('Unreadable');
    expect(map.recordState).to.equal('sealed');
    expect(map.value).to.equal(stories.Unreadable.args?.value);
  });

  it('InAForm shows what it submitted', async () => {
    const { page, map } = await show('InAForm');
    const form = page.querySelector('form') as HTMLFormElement;
    form.requestSubmit();
    expect(map.validity.valueMissing).to.equal(true);
    map.value = String(stories.OneBlock.args?.value);
    form.requestSubmit();
    expect(page.querySelector('output')?.textContent).to.equal(map.value);
  });
});
