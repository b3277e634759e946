import { expect, fixture } from '@open-wc/testing';
import { html } from 'lit';
import 'pulse-map';
import type { BedsideTest, LimbFlags, LimbStopwatch, PulseMap, PulseReading } from 'pulse-map';
import { messagesFor, registerLanguage } from 'pulse-map/core';
import { en } from 'pulse-map/core/tables';
import { de } from 'pulse-map/locale/de';
import { threatened } from '../../../stories/limb-records.js';
import { examined } from '../../../stories/records.js';
import { click, press, type } from '../../tools/real-input.js';
import { drawn, field } from '../tools/limbs.js';
import { openMap, settled, site } from '../tools/map.js';
import { allByRole, byRole, nameOf, readableText } from '../tools/perceive.js';

const page = document.documentElement;
afterEach(() => (page.lang = 'en'));

const lead = (map: Element): string =>
  nameOf(allByRole(map, 'heading').find((h) => h.matches('[part~=lead]')) as Element);
const block = examined({ 'left femoral': 'normal', 'left popliteal': 'absent' });

describe('the language of an element', () => {
  it('is that of the page, down to the reading within the map', async () => {
    page.lang = 'de';
    const map = await openMap({ examination: block });
    expect(byRole(map, 'button', 'Rückgängig')).to.exist;
    expect(lead(map)).to.equal('Verschluss irgendwo zwischen Femoralis links und Poplitea links, 72 %');
  });

  it('is that of the nearest element with a lang around it, a shadow tree around it included', async () => {
    const host = await fixture<HTMLElement>(html`<div lang="de-AT"></div>`);
    host.attachShadow({ mode: 'open' }).innerHTML = '<pulse-map></pulse-map>';
    const map = host.shadowRoot?.querySelector('pulse-map') as PulseMap;
    await settled(map);
    expect(map.getAttribute('lang'), 'none of its own is written').to.equal(null);
    expect(lead(map)).to.equal('Kein Puls erfasst');
  });

  it('is looked for in the page a few times an update, however many words are shown', async () => {
    const around = await fixture<HTMLElement>(html`<div><pulse-map></pulse-map></div>`);
    const map = around.querySelector('pulse-map') as PulseMap;
    await settled(map);
    const read = Element.prototype.getAttribute;
    let asked = 0;
    around.getAttribute = function (name) {
      asked += Number(name === 'lang');
      return read.call(this, name);
    };
    map.requestUpdate();
    await map.updateComplete;
    // For what is done before and after the drawing; the words of the drawing itself are dozens.
    expect(asked).to.be.within(1, 6);
    around.lang = 'de';
    map.requestUpdate();
    await map.updateComplete;
    expect(byRole(map, 'button', 'Rückgängig')).to.exist;
  });

  it('is its own where it has one, and follows a change of it, and of its absence', async () => {
    page.lang = 'de';
    const map = await fixture<PulseMap>(html`<pulse-map lang="en"></pulse-map>`);
    await settled(map);
    expect(lead(map)).to.equal('No pulse recorded');
    map.setAttribute('lang', 'de');
    await settled(map);
    expect(lead(map)).to.equal('Kein Puls erfasst');
    map.lang = 'en';
    await settled(map);
    expect(lead(map)).to.equal('No pulse recorded');
    map.removeAttribute('lang');
    await settled(map);
    expect(lead(map)).to.equal('Kein Puls erfasst');
  });

  it('follows the page when it takes another one later', async () => {
    const map = await openMap({ examination: block });
    expect(byRole(map, 'button', 'Undo')).to.exist;
    page.lang = 'de';
    await new Promise((done) => requestAnimationFrame(done));
    await settled(map);
    expect(byRole(map, 'button', 'Rückgängig')).to.exist;
    expect(lead(map)).to.match(/^Verschluss/);
    map.remove();
    page.lang = 'en';
    document.body.append(map);
    await settled(map);
    expect(lead(map), 'also while it was out of the page').to.match(/^Occlusion/);
  });

  it('is English where nobody has registered the words', async () => {
    const map = await fixture<PulseMap>(html`<pulse-map lang="fr"></pulse-map>`);
    await settled(map);
    expect(lead(map)).to.equal('No pulse recorded');
  });

  it('comes in also when it is registered after the element was drawn', async () => {
    const map = await fixture<PulseMap>(html`<pulse-map lang="eo"></pulse-map>`);
    await settled(map);
    registerLanguage('eo', { ...en, rule: { ...en.rule, nothing: 'Ankoraŭ nenio' } });
    await settled(map);
    expect(lead(map)).to.equal('Ankoraŭ nenio');
  });

  it('changes the words and nothing that was entered', async () => {
    const map = await openMap({ examination: block });
    await click(site(map, 'left popliteal'));
    map.lang = 'de';
    await settled(map);
    expect(byRole(map, 'dialog', 'Poplitea links')).to.exist;
    expect(map.examination).to.deep.equal(block);
    await press('Escape');
    expect(nameOf(byRole(map, 'button', /^Poplitea links: /))).to.equal('Poplitea links: 0, fehlend');
    await click(byRole(map, 'button', 'Normal setzen'));
    await settled(map);
    const [portion] = allByRole(map, 'button', /: \d+ Pulse normal/);
    await click(portion as HTMLElement);
    await settled(map);
    expect(byRole(map, 'status').textContent).to.match(/: \d+ Pulse normal/);
  });

  it('reaches what a form says of a control that cannot be sent, and the notice of a record that is kept unread', async () => {
    const map = await fixture<PulseMap>(html`<pulse-map lang="de" required></pulse-map>`);
    await settled(map);
    expect(map.validationMessage).to.equal(de.form.required);
    map.value = '{"format":"pulse-map/1"}';
    await settled(map);
    expect(map.validationMessage, 'kept as it is, so it can be sent').to.equal('');
    expect(readableText(map)).to.contain(de.form.sealed);
    map.lang = 'en';
    await settled(map);
    expect(readableText(map)).to.contain(en.form.sealed).and.not.to.contain(de.form.sealed);
  });

  it('is one for map and parts: a whole examination in German', async () => {
    const whole = await fixture<HTMLElement>(
      html`<limb-examination lang="de" .value=${JSON.stringify(threatened)}></limb-examination>`,
    );
    await drawn(whole);
    const said = allByRole(whole, 'heading').map(nameOf).join(' | ');
    for (const heading of Object.values(de.whole.parts)) expect(said).to.contain(heading);
    expect(
      allByRole(whole, 'radio', 'Vorhofflimmern').length +
        allByRole(whole, 'button', 'Vorhofflimmern').length,
    ).to.be.at.least(1);
  });

  it('is that of flags, reading, tests and watch on their own', async () => {
    const flags = await fixture<LimbFlags>(
      html`<limb-flags lang="de" .examination=${threatened}></limb-flags>`,
    );
    const reading = await fixture<PulseReading>(
      html`<pulse-reading lang="de" .examination=${block}></pulse-reading>`,
    );
    const test = await fixture<BedsideTest>(
      html`<bedside-test lang="de" test="venous-filling"></bedside-test>`,
    );
    const watch = await fixture<LimbStopwatch>(html`<limb-stopwatch lang="de"></limb-stopwatch>`);
    for (const one of [flags, reading, test, watch]) await drawn(one);
    expect(flags.shadowRoot?.textContent).to.contain('Akute Extremitätenischämie wahrscheinlich');
    expect(lead(reading)).to.equal('Verschluss irgendwo zwischen Femoralis links und Poplitea links, 72 %');
    expect(test.shadowRoot?.textContent).to.contain('Venenfüllung');
    expect(byRole(watch, 'button', 'Start')).to.exist;
    expect(byRole(watch, 'button', 'Zurücksetzen')).to.exist;
  });

  it('takes a number with a decimal comma', async () => {
    const inspection = await fixture<HTMLElement & { value: unknown }>(
      html`<limb-inspection lang="de"></limb-inspection>`,
    );
    await drawn(inspection);
    const refill = field(inspection, /^Rekapillarisierungszeit, linkes Bein/);
    refill.focus();
    await type('4,5');
    await press('Tab');
    await drawn(inspection);
    expect(inspection.value).to.deep.equal({ leg: { left: { refill: 4.5 } } });
    expect(field(inspection, /^Rekapillarisierungszeit, linkes Bein/).value).to.equal('4,5');
  });

  it('gives English and German by tag in the core', () => {
    expect(messagesFor('de-CH').rule.nothing).to.equal('Kein Puls erfasst');
    expect(messagesFor('en-GB').rule.nothing).to.equal('No pulse recorded');
  });
});
