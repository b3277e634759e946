import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import 'pulse-map/locale/de';
import type { LimbChanges } from 'pulse-map/elements/limb-changes';
import { emptyExamination, type Examination, setPulse } from 'pulse-map/core';
import { consoleOf } from '../../tools/real-input.js';

const place = (site: 'femoral' | 'popliteal' | 'dorsalis-pedis') => ({ site, side: 'left' }) as const;
const felt = (
  grades: Partial<Record<'femoral' | 'popliteal' | 'dorsalis-pedis', 'absent' | 'reduced' | 'normal'>>,
) =>
  Object.entries(grades).reduce(
    (record, [site, grade]) => setPulse(record, place(site as 'femoral'), { grade }),
    { ...emptyExamination(), examinedAt: '2026-05-19T09:40:00Z' } as Examination,
  );

const show = (earlier: unknown, examination: unknown, more: { lang?: string; register?: string } = {}) =>
  fixture<LimbChanges>(
    html`<limb-changes
      lang=${more.lang ?? 'en'}
      register=${more.register ?? 'trade'}
      .earlier=${earlier as Examination}
      .examination=${examination as Examination}
    ></limb-changes>`,
  );

const headings = (element: LimbChanges): string[] =>
  [...element.shadowRoot!.querySelectorAll('h2, h3')].map(({ textContent }) => textContent.trim());
const listed = (element: LimbChanges, heading: string): string[] => {
  const section = [...element.shadowRoot!.querySelectorAll('section')].find((one) =>
    one.querySelector('h3')!.textContent.includes(heading),
  );
  return [...(section?.querySelectorAll('li') ?? [])].map(({ textContent }) => textContent.trim());
};

describe('<limb-changes>', () => {
  it('shows nothing without an earlier visit', async () => {
    const element = await show(null, felt({ femoral: 'absent' }));
    expect(element.shadowRoot!.textContent.trim()).to.equal('');
  });

  it('tells a lost pulse as a change and a weaker one as possible chance, under the date of the earlier visit', async () => {
    const element = await show(
      felt({ femoral: 'normal', popliteal: 'normal', 'dorsalis-pedis': 'normal' }),
      felt({ femoral: 'reduced', popliteal: 'absent', 'dorsalis-pedis': 'normal' }),
    );
    expect(headings(element)).to.deep.equal(['Changes since 19 May 2026', 'Changed', 'May be chance']);
    expect(listed(element, 'Changed')).to.deep.equal(['Left popliteal pulse: absent; before: normal.']);
    expect(listed(element, 'May be chance')).to.deep.equal(['Left femoral pulse: reduced; before: normal.']);
    expect(element.shadowRoot!.textContent).to.include('1 site as before.');
    await expect(element).to.be.accessible();
  });

  it('tells a page of a date that is none, and shows the changes without one', async () => {
    const { examinedAt: _, ...undated } = felt({ femoral: 'normal' });
    const element = await show(undated, felt({ femoral: 'absent' }));
    const said = await consoleOf(async () => {
      element.since = 'last week';
      await element.updateComplete;
    });
    expect(said).to.deep.equal([
      'limb-changes: found since="last week", expected an ISO date or point of time; taken as ""',
    ]);
    expect(headings(element)[0]).to.equal('Changes since the earlier visit');
    element.since = '2026-05-02';
    await element.updateComplete;
    expect(headings(element)[0]).to.equal('Changes since 2 May 2026');
  });

  it('claims nothing of what was not examined this time', async () => {
    const element = await show(felt({ femoral: 'normal', popliteal: 'absent' }), felt({ femoral: 'normal' }));
    const said = element.shadowRoot!.textContent;
    expect(said).to.include('Known before and not examined this time: left popliteal.');
    expect(said).to.include('No change in what was examined both times.');
  });

  it('says that a record of a later version is not compared, and reads the next one', async () => {
    const element = await show({ format: 'pulse-map/9', scale: '0-3' }, felt({ femoral: 'normal' }));
    expect(element.shadowRoot!.querySelector('[role=status]')!.textContent).to.include('nothing is compared');
    element.earlier = felt({ femoral: 'absent' });
    await element.updateComplete;
    expect(listed(element, 'Changed')).to.deep.equal(['Left femoral pulse: normal; before: absent.']);
  });

  it('speaks German, and plainly', async () => {
    const [before, now] = [felt({ popliteal: 'normal' }), felt({ popliteal: 'absent' })];
    const german = await show(before, now, { lang: 'de' });
    expect(headings(german)[0]).to.equal('Änderungen seit dem 19. Mai 2026');
    const plain = await show(before, now, { register: 'plain' });
    expect(plain.shadowRoot!.textContent).to.include('not felt; before: normal');
  });
});
