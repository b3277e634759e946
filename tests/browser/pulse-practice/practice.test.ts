import { expect, fixture, html } from '@open-wc/testing';
import { type PulsePractice } from '../../../src/elements/pulse-practice/element.js';
import '../../../src/elements/pulse-practice/define.js';
import '../../../src/locale/de/register.js';
import {
  conclude,
  parseCode,
  type PatientRequest,
  perform,
  resultOf,
  rightAnswer,
  simulatedPatient,
  startRound,
} from '../../../src/practice/index.js';
import { truthOf } from '../../../src/practice/hidden.js';
import { click, press, setViewport, type } from '../../tools/real-input.js';
import { handedOver } from '../tools/handed-over.js';
import { until } from '../tools/until.js';

/** An acute leg: one limb, a sure hand. */
const CODE = 'clear-15';
const right = rightAnswer(truthOf(simulatedPatient(parseCode(CODE) as PatientRequest)));
const LIMB = right.lesions[0]!.limb;
const SIDE = LIMB.split(' ')[0]!;

const text = (element: PulsePractice): string => element.shadowRoot!.textContent!.replace(/\s+/g, ' ');
const find = <T extends HTMLElement = HTMLElement>(element: PulsePractice, selector: string): T => {
  const found = element.shadowRoot!.querySelector<T>(selector);
  if (!found) throw new Error(`found no ${selector}`);
  return found;
};
const site = (element: PulsePractice, place: string): Element =>
  find(element, `.site[data-place="${place}"] .target`);

async function met(
  template = html`<pulse-practice code=${CODE} lang="en"></pulse-practice>`,
): Promise<PulsePractice> {
  const element = await fixture<PulsePractice>(template);
  await element.updateComplete;
  return element;
}

async function touched(element: PulsePractice, target: Element): Promise<void> {
  target.scrollIntoView({ block: 'center' });
  await click(target, { kind: 'touch' });
  await element.updateComplete;
}

const chip = (element: PulsePractice, value: string): HTMLElement => find(element, `input[value="${value}"]`);

/** Answers rightly by touch and shows the truth. */
async function answered(element: PulsePractice): Promise<void> {
  await touched(element, find(element, '.side .button.solid'));
  await touched(element, find(element, `input[name="${LIMB} ${right.lesions[0]!.levels[0]}"]`));
  for (const value of [right.cause!, right.stages[0]!, right.urgency, right.first[0]!])
    await touched(element, chip(element, value));
  await touched(element, find(element, '.answer .button.solid'));
}

describe('a patient to practise on', () => {
  beforeEach(() => setViewport({ width: 1280, height: 720 }));
  afterEach(() => localStorage.clear());

  it('is any patient where no number was asked for', async () => {
    const element = await met(html`<pulse-practice lang="en"></pulse-practice>`);
    await click(find(element, '.setup .button.solid'));
    await element.updateComplete;
    expect(element.shadowRoot!.querySelector('[role=alert]')).to.equal(null);
    expect(parseCode(element.code)).not.to.equal(undefined);
    expect(find(element, '.site[tabindex="0"]').getAttribute('aria-label')).to.include('femoral');
  });

  it('is chosen in a narrow window without a word sticking out, in German as in English', async () => {
    await setViewport({ width: 320, height: 568 });
    for (const lang of ['en', 'de']) {
      const element = await met(html`<pulse-practice lang=${lang}></pulse-practice>`);
      const edge = element.getBoundingClientRect().right;
      const parts = [...element.shadowRoot!.querySelectorAll('.setup *')];
      expect(parts.length).to.be.above(10);
      for (const one of parts)
        expect(one.getBoundingClientRect().right, `${lang} ${one.localName}`).to.be.at.most(edge);
      element.remove();
    }
  });

  it('is examined, named and marked by keys alone', async () => {
    const element = await met();
    find(element, '.site[tabindex="0"]').focus();
    // The tab stop is the right femoral; the arrows lead over the groin and down the leg.
    await press('f');
    await element.updateComplete;
    expect(find(element, '.card').textContent).to.include('right femoral');
    expect(find(element, '.clock').textContent).to.include('0:15');
    await press('ArrowRight');
    await element.updateComplete;
    await press('l');
    await element.updateComplete;
    expect(find(element, '.card').textContent).to.include('Listen over the left femoral');
    await press('Enter');
    await element.updateComplete;
    expect(find(element, '.card').textContent).to.include('Feel the left femoral');
    await press('ArrowDown', 'Enter');
    await element.updateComplete;
    expect(find(element, '.log').children.length).to.equal(4);
    for (const name of ['ask onset', `feeling ${SIDE} leg`, `look ${SIDE} leg`]) {
      const button = find<HTMLButtonElement>(element, `[data-act="${name}"]`);
      button.closest('details')!.open = true;
      button.focus();
      await press('Enter');
      await element.updateComplete;
      expect(button.disabled).to.equal(true);
    }
    find(element, '.side .button.solid').focus();
    await press('Enter');
    await element.updateComplete;
    find(element, `input[name="${LIMB} ${right.lesions[0]!.levels[0]}"]`).focus();
    await press(' ');
    for (const value of [right.cause!, right.stages[0]!, right.urgency, right.first[0]!]) {
      chip(element, value).focus();
      await press(' ');
      await element.updateComplete;
    }
    find(element, '.answer .button.solid').focus();
    await press('Enter');
    await element.updateComplete;
    expect(element.answered).to.equal(true);
    expect(element.shadowRoot!.activeElement?.textContent).to.equal('Mark sheet');
    expect(find(element, '.total b').textContent).to.equal('20');
    expect(element.shadowRoot!.querySelectorAll('.flags .missed').length).to.equal(0);
    expect(find(element, '.flags').textContent).to.include('Found:');
    expect(find(element, '.told').children.length).to.be.greaterThan(1);
    // After the answer nothing more is examined.
    find(element, '.site[tabindex="0"]').focus();
    await press('d');
    await element.updateComplete;
    expect(element.shadowRoot!.querySelector('.card')).to.equal(null);
    // The findings are presented, the room votes, and the results leave as a file.
    find(element, 'textarea').focus();
    await type('right femoral normal, left radial normal');
    await press('Tab', 'Enter');
    await element.updateComplete;
    const verdicts = [...find(element, '.presented').children].map(({ className }) => className);
    expect(verdicts).to.deep.equal(['right', 'claimed']);
    find(element, '.vote summary').focus();
    await press('Enter');
    await until(() => find<HTMLDetailsElement>(element, '.vote').open, 'the vote is open');
    await press('Tab', 'Tab');
    expect(element.shadowRoot!.activeElement?.getAttribute('name')).to.equal('counts');
    await type('2 0 5 13');
    await press('Enter');
    await element.updateComplete;
    expect(find(element, '.vote .true').textContent).to.include('13 hands');
    find(element, '.progress summary').focus();
    await press('Enter');
    await until(() => find<HTMLDetailsElement>(element, '.progress').open, 'the results are open');
    await press('Tab');
    expect(element.shadowRoot!.activeElement?.textContent?.trim()).to.equal('Download as CSV');
    const [file] = await handedOver(() => press('Enter'));
    expect(file!.name).to.equal('practice.csv');
    expect(file!.text).to.include(CODE);
  }).timeout(120_000);

  it('is examined, named and marked by touch on a phone, with room for a finger and nothing to scroll sideways', async () => {
    await setViewport({ width: 390, height: 844 });
    const element = await met();
    for (const place of [`${SIDE} femoral`, `${SIDE} popliteal`, `${SIDE} dorsalis-pedis`])
      await touched(element, site(element, place));
    expect(find(element, '.log').children.length).to.equal(3);
    await touched(element, find(element, '[data-tool="doppler"]'));
    await touched(element, site(element, `${SIDE} dorsalis-pedis`));
    expect(find(element, '.card').textContent).to.include('Doppler');
    const heights = [...element.shadowRoot!.querySelectorAll('.side .button, .tools .button')]
      .map((one) => one.getBoundingClientRect().height)
      .filter(Boolean);
    expect(heights.length).to.be.above(3);
    expect(Math.min(...heights)).to.be.least(44);
    await answered(element);
    expect(element.answered).to.equal(true);
    expect(document.documentElement.scrollWidth).to.be.most(390);
    expect(find(element, '.sheet').textContent).to.include('Truth');
    // What is marked has a line of its own, so that no column is too narrow for a word.
    const row = find(element, '.wide tbody tr');
    const [name, cell] = [row.querySelector('th')!, row.querySelector('td')!];
    expect(name.getBoundingClientRect().bottom).to.be.most(cell.getBoundingClientRect().top + 1);
    expect(cell.getBoundingClientRect().width).to.be.greaterThan(100);
    // Beside the map, where a tablet leaves as little room, too.
    await setViewport({ width: 820, height: 1180 });
    await until(() => element.getBoundingClientRect().width > 700, 'the wide page');
    expect(name.getBoundingClientRect().bottom).to.be.most(cell.getBoundingClientRect().top + 1);
    expect(cell.getBoundingClientRect().width).to.be.greaterThan(100);
  }).timeout(120_000);

  it('says what a signal at the wrist of the simulated hand means, once one was listened to', async () => {
    const element = await met();
    const said = (): boolean => text(element).includes('monophasic signal at the wrist is usual');
    await click(find(element, '[data-tool="doppler"]'));
    await click(site(element, 'left brachial'));
    await element.updateComplete;
    expect(said()).to.equal(false);
    await click(site(element, 'left radial'));
    await element.updateComplete;
    expect(said()).to.equal(true);
  });

  it('shows nothing of the truth before the answer, on the map or in words, and all of it after', async () => {
    const element = await met();
    const marks = (): number => element.shadowRoot!.querySelectorAll('.lesions .ridge').length;
    const absent = (): number => element.shadowRoot!.querySelectorAll('.figure .g-absent').length;
    const hollow = (): number => element.shadowRoot!.querySelectorAll('.ground [class*="none"]').length;
    const [before, drawn] = [marks() + absent(), hollow()];
    expect(before).to.equal(0);
    await touched(element, site(element, `${SIDE} femoral`));
    expect(hollow()).to.equal(drawn);
    expect(text(element)).not.to.match(/Mark sheet|Rutherford IIb|Red flags/);
    await answered(element);
    expect(marks()).to.be.greaterThan(0);
    expect(absent()).to.be.greaterThan(1);
    expect(text(element)).to.include('Rutherford IIb');
  }).timeout(120_000);

  it('does not forget: going back to the patient leaves findings and time as they were', async () => {
    const element = await met();
    await touched(element, site(element, `${SIDE} femoral`));
    const clock = find(element, '.clock').textContent;
    await touched(element, find(element, '.side .button.solid'));
    await touched(element, find(element, '.answer .button:not(.solid)'));
    expect(find(element, '.clock').textContent).to.equal(clock);
    expect(find(element, '.log').children.length).to.equal(1);
  });

  it('holds a presentation against the truth', async () => {
    const element = await met();
    await touched(element, site(element, `${SIDE} popliteal`));
    await answered(element);
    find(element, 'textarea').focus();
    await type(`${SIDE} popliteal absent, ${SIDE} radial normal`);
    await touched(element, find(element, '[data-do="check"]'));
    const verdicts = [...element.shadowRoot!.querySelectorAll('.presented li')].map(
      ({ className }) => className,
    );
    expect(verdicts).to.deep.equal(['right', 'claimed']);
  }).timeout(120_000);

  it('goes on quoting what it did not understand while the presentation is changed', async () => {
    const element = await met();
    await answered(element);
    const field = find<HTMLTextAreaElement>(element, 'textarea');
    field.focus();
    await type('qwertz');
    await touched(element, find(element, '[data-do="check"]'));
    const quoted = () =>
      [...element.shadowRoot!.querySelectorAll('[role=status] .hint')].at(-1)?.textContent.trim();
    const before = quoted();
    expect(before).to.include('qwertz');
    field.focus();
    field.setSelectionRange(0, 0);
    await type('and ');
    await element.updateComplete;
    expect(quoted()).to.equal(before);
  }).timeout(120_000);

  it('counts the hands of a room from one line, and marks the right choice after the answer only', async () => {
    const element = await met();
    const vote = find<HTMLDetailsElement>(element, '.vote');
    vote.open = true;
    find(element, '[name="counts"]').focus();
    await type('2 0 5 13');
    await press('Enter');
    await element.updateComplete;
    const hands = (): string[] =>
      [...find(element, '.vote').querySelectorAll('.n')].map(({ textContent }) => textContent);
    expect(hands()).to.deep.equal(['2 hands', '0 hands', '5 hands', '13 hands']);
    expect(element.shadowRoot!.querySelector('.vote .true')).to.equal(null);
    await answered(element);
    expect(hands()[3]).to.equal('13 hands');
    expect(find(element, '.vote .true').textContent).to.include('At once');
  }).timeout(120_000);

  it('keeps results on the machine only where the page says so', async () => {
    const key = 'pulse-practice:test';
    await answered(await met());
    expect(localStorage.getItem(key)).to.equal(null);
    const kept = await met(html`<pulse-practice code=${CODE} keep="test" lang="en"></pulse-practice>`);
    await answered(kept);
    expect(JSON.parse(localStorage.getItem(key)!)).to.have.length(1);
    const again = await met(html`<pulse-practice keep="test" lang="en"></pulse-practice>`);
    expect(text(again)).to.include('Your patients so far (1)');
    expect(text(again)).to.include('Kept in this browser on this machine');
  }).timeout(120_000);

  it('draws and says what was right of what was tried by level, and forgets it in one act that can be undone', async () => {
    const key = 'pulse-practice:learned';
    const patient = simulatedPatient(parseCode(CODE) as PatientRequest);
    const round = perform(startRound(patient), `feel ${SIDE} femoral`);
    const level = right.lesions[0]!.levels[0];
    const [best, blind] = [{ lesions: [{ limb: LIMB, level }] }, { lesions: [] }].map((answer) =>
      resultOf(patient, conclude(round, answer), '2026-11-20T09:00:00Z'),
    );
    localStorage.setItem(key, JSON.stringify([blind, best, best]));
    const element = await met(html`<pulse-practice keep="learned" lang="en"></pulse-practice>`);
    find<HTMLDetailsElement>(element, '.progress').open = true;
    const row = find(element, '.levels li');
    expect(row.textContent.replace(/\s+/g, ' ')).to.include('2 of 3 right');
    const places = (name: string): number[] =>
      [...row.querySelectorAll(name)].map((mark) => mark.getBoundingClientRect().x);
    expect(places('.was-wrong').length).to.equal(1);
    expect(places('.was-right').length).to.equal(2);
    expect(Math.max(...places('.was-wrong'))).to.be.lessThan(Math.min(...places('.was-right')));
    expect(text(element)).to.match(/The last 3 patients brought \d+% of the points/);
    expect(text(element)).to.include('November 20, 2026');
    await expect(element).to.be.accessible();
    await touched(element, find(element, '[data-do="forget"]'));
    expect(localStorage.getItem(key)).to.equal(null);
    expect(element.shadowRoot!.querySelector('.progress') === null).to.equal(true);
    expect(text(element)).to.include('3 patients forgotten');
    await touched(element, find(element, '[data-do="restore"]'));
    expect(JSON.parse(localStorage.getItem(key)!)).to.have.length(3);
    expect(text(element)).to.include('Your patients so far (3)');
    expect(element.shadowRoot!.querySelector('[data-do="restore"]') === null).to.equal(true);
  }).timeout(120_000);

  it('keeps what another window kept meanwhile, and says where nothing is kept', async () => {
    const key = 'pulse-practice:windows';
    const [one, other] = await Promise.all(
      [1, 2].map(() => met(html`<pulse-practice code=${CODE} keep="windows" lang="en"></pulse-practice>`)),
    );
    await answered(one!);
    await answered(other!);
    expect(JSON.parse(localStorage.getItem(key)!)).to.have.length(2);
    const nowhere = await met();
    await answered(nowhere);
    expect(text(nowhere)).to.include('Kept nowhere');
  }).timeout(120_000);

  it('is chosen by number or code, and told where there is none of it', async () => {
    const element = await met(html`<pulse-practice lang="en"></pulse-practice>`);
    find(element, '[name="number"]').focus();
    await type('nobody');
    await press('Enter');
    await element.updateComplete;
    expect(find(element, '[role="alert"]').textContent).to.include('no such patient');
    find<HTMLInputElement>(element, '[name="number"]').select();
    await type('7');
    const changed: string[] = [];
    element.addEventListener('practice-change', ({ code }) => changed.push(code));
    await press('Enter');
    await element.updateComplete;
    expect(element.code).to.equal('clear-7');
    expect(changed).to.deep.equal(['clear-7']);
    expect(find(element, 'h2').textContent).to.equal('Patient clear-7');
  });

  it('gives an examiner the expected findings to tick, and says that it tells the truth', async () => {
    const element = await met(html`<pulse-practice code=${CODE} examiner lang="en"></pulse-practice>`);
    expect(text(element)).to.include('It tells the truth: not for the candidate');
    expect(text(element)).to.include('Acute IIb');
    expect(text(element)).to.include('Acute limb ischaemia');
    expect(element.shadowRoot!.querySelectorAll('tbody input[type="checkbox"]').length).to.be.greaterThan(40);
    expect(element.shadowRoot!.querySelector('.site')).to.equal(null);
  });

  it('is accessible while it is examined, answered and marked, and speaks German', async () => {
    const element = await met(html`<pulse-practice code=${CODE} lang="de"></pulse-practice>`);
    await touched(element, site(element, `${SIDE} femoral`));
    await expect(element).to.be.accessible();
    await touched(element, find(element, '.side .button.solid'));
    await expect(element).to.be.accessible();
    await touched(element, find(element, '.answer .button.solid'));
    await expect(element).to.be.accessible();
    expect(text(element)).to.include('nicht beantwortet');
    expect(text(element)).to.include('Embolie');
    expect(text(element)).not.to.match(/\bnot answered|Truth|Your answer\b/);
  }).timeout(120_000);
});
