import { expect, fixture, html } from '@open-wc/testing';
import 'pulse-map';
import 'pulse-map/locale/de';
import type { LimbReport } from 'pulse-map/elements/limb-report';
import { emptyExamination, type Examination, partMessagesFor } from 'pulse-map/core';
import { chronic, threatened } from '../../../stories/limb-records.js';
import { examined } from '../../tools/examinations.js';

interface Shown {
  lang?: string;
  register?: 'trade' | 'plain';
  subject?: string;
  details?: string;
}

const show = (
  examination: unknown,
  { lang = 'en', register = 'trade', subject = '', details = '' }: Shown = {},
) =>
  fixture<LimbReport>(
    html`<limb-report
      lang=${lang}
      register=${register}
      subject=${subject}
      details=${details}
      .examination=${examination as Examination}
    ></limb-report>`,
  );

const squeezed = (node: Element | null | undefined): string =>
  node?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const text = (element: LimbReport): string => squeezed(element.shadowRoot!.querySelector('.report'));
const headings = (element: LimbReport): string[] =>
  [...element.shadowRoot!.querySelectorAll('h2, h3, h4')].map(squeezed);

describe('<limb-report>', () => {
  it('puts the flag before the conclusion and the conclusion before the findings', async () => {
    const element = await show(threatened);
    const [name, flags, worst, conclusion, findings] = headings(element);
    expect(name).to.equal('Patient not named');
    expect(flags).to.equal('Red flags');
    expect(worst).to.contain('left leg');
    expect([conclusion, findings]).to.deep.equal(['Conclusion', 'Findings']);
    expect(text(element)).to.contain('Occlusion somewhere between left femoral and left popliteal');
  });

  it('names the patient as the page does', async () => {
    const element = await show(threatened, { subject: 'Marta Lindqvist', details: 'AR-1041' });
    const article = element.shadowRoot!.querySelector('article')!;
    expect(squeezed(element.shadowRoot!.getElementById(article.getAttribute('aria-labelledby')!))).to.equal(
      'Marta Lindqvist',
    );
    expect(text(element)).to.contain('AR-1041');
  });

  it('tells what is not as usual by itself, and counts what is normal', async () => {
    const element = await show(threatened);
    const leg = element.shadowRoot!.querySelector('[data-part="left leg"]');
    expect(squeezed(leg?.querySelector('.found'))).to.contain(
      'Posterior tibial and dorsalis pedis: 0, absent',
    );
    expect(squeezed(leg), 'a negative that matters stands in the open').to.contain(
      'Venous Doppler signal audible',
    );
    const details = leg?.querySelector('details');
    expect(squeezed(details?.querySelector('summary'))).to.equal('1 normal finding');
    expect(details?.open).to.equal(false);
    expect(squeezed(details)).to.contain('Femoral: 2, normal');
  });

  it('says why something was not examined, and never calls it normal', async () => {
    const element = await show({
      ...emptyExamination(),
      pulses: { femoral: { left: { couldNotExamine: 'dressing' } } },
    });
    expect(text(element)).to.match(/Left femoral: .*dressing/);
    expect(text(element)).to.not.contain('normal');
    expect(text(element)).to.contain('No pulse palpated: right leg');
  });

  it('says of tests by which limit they were read, and of stages what they rest on', async () => {
    const element = await show(chronic);
    expect(text(element)).to.contain('limit 15 s');
    expect(text(element)).to.contain('From: claudication and pain-free walking distance 180 m');
    expect(text(element)).to.contain('Denominator: higher arm');
  });

  it('marks what was entered in error before everything else, with who, when and why, and keeps all it says', async () => {
    const sound = await show(threatened);
    const element = await show({
      ...threatened,
      amendments: [
        { kind: 'amended', at: '2026-11-02T21:34Z', by: 'R. Haddad', why: 'Side corrected' },
        { kind: 'entered-in-error', at: '2026-11-03T08:00Z', by: 'L. Brandt', why: 'Other patient' },
      ],
    });
    expect(headings(element)[0]).to.equal('Entered in error');
    expect(text(element)).to.contain('by L. Brandt: Other patient');
    expect(text(element)).to.contain('by R. Haddad: Side corrected');
    for (const heading of headings(sound)) expect(headings(element)).to.contain(heading);
    const lead = element.shadowRoot!.querySelector('.lead')!;
    expect(getComputedStyle(lead).textDecorationLine).to.equal('line-through');
  });

  it('shows the day that the page gives as a day without a time, and the time of the record before it', async () => {
    const when = (element: LimbReport): string =>
      squeezed(element.shadowRoot!.querySelector('.when')).replace(words.title, '').trim();
    const { report: words } = partMessagesFor('en');
    const element = await show(examined({ 'left femoral': 'normal' }));
    expect(when(element)).to.equal('Date not recorded');
    for (const [day, said] of [
      ['2026-11-24', '24 Nov 2026, time not recorded'],
      ['24.11.2026', 'Date not recorded'],
      ['2026-13-45', 'Date not recorded'],
    ] as const) {
      element.day = day;
      await element.updateComplete;
      expect(when(element), day).to.equal(said);
    }
    element.day = '2026-11-24';
    element.examination = { ...element.examination, examinedAt: '2026-11-02T21:14+01:00' };
    await element.updateComplete;
    expect(when(element)).to.equal('2 Nov 2026, 21:14');
  });

  it('shows nothing as found in a record that it cannot read', async () => {
    const element = await show({ format: 'pulse-map/9', scale: '0-3' });
    expect(squeezed(element.shadowRoot!.querySelector('[role=status]'))).to.not.equal('');
    expect(element.shadowRoot!.querySelector('article')).to.equal(null);
  });

  it('cuts no word of its picture on a phone', async () => {
    const before = examined({ 'left femoral': 'normal', 'left popliteal': 'normal' });
    const element = await show(examined({ 'left femoral': 'normal', 'left popliteal': 'absent' }));
    element.earlier = before;
    element.style.cssText = 'inline-size: 390px';
    await element.updateComplete;
    const picture = element.shadowRoot!.querySelector<SVGElement>('.picture svg')!;
    const { left, right } = element.getBoundingClientRect();
    const words = [...picture.querySelectorAll('text')];
    expect(words.map(squeezed).join()).to.match(/absent, was/);
    const [from, to] = [left, right].map(Math.round) as [number, number];
    for (const word of words) {
      const box = word.getBoundingClientRect();
      expect(box.left, squeezed(word)).to.be.at.least(from);
      expect(box.right, squeezed(word)).to.be.at.most(to);
    }
    expect(getComputedStyle(picture).overflow).to.equal('visible');
  });

  it('draws of both legs no more than the legs: nothing of the body over the lines above', async () => {
    const element = await show(
      examined({
        'left femoral': 'normal',
        'left popliteal': 'absent',
        'right femoral': 'normal',
        'right popliteal': 'absent',
      }),
    );
    const picture = element.shadowRoot!.querySelector<SVGElement>('.picture svg')!;
    const { top } = picture.getBoundingClientRect();
    const above = [...picture.querySelectorAll('path')].filter(
      (path) => path.getBoundingClientRect().top < top - 1,
    );
    expect(above.length, 'paths of the body that reach above the picture').to.be.above(0);
    expect(getComputedStyle(picture).overflow).to.equal('hidden');
  });

  it('says that nothing is recorded', async () => {
    expect(text(await show(emptyExamination()))).to.contain('Nothing recorded yet.');
  });

  for (const [lang, register, conclusion] of [
    ['en', 'plain', 'What this points to'],
    ['de', 'trade', 'Beurteilung'],
    ['de', 'plain', 'Worauf das hindeutet'],
  ] as const)
    it(`speaks ${lang}, ${register}`, async () => {
      const element = await show(chronic, { lang, register });
      expect(headings(element)).to.contain(conclusion);
      expect(text(element)).to.not.match(/undefined|\[object/);
    });

  it('underlines every pressure an index was worked out from, that of the arm too', async () => {
    const element = await show(chronic);
    const used = [...element.shadowRoot!.querySelectorAll('td.used')].map((cell) =>
      squeezed(cell.closest('tr')!.querySelector('th')),
    );
    expect(used).to.deep.equal(['Arm', 'Dorsalis pedis', 'Great toe', 'Great toe']);
  });

  it('passes axe', async function () {
    // Two whole reports.
    this.timeout(120_000);
    await expect(await show(chronic)).to.be.accessible();
    await expect(await show(threatened)).to.be.accessible();
  });
});
