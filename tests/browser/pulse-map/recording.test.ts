import { expect } from '@open-wc/testing';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { parseExaminationText, pulseAt } from 'pulse-map/core';
import { examined, place } from '../../tools/examinations.js';
import { focused, type PointerKind } from '../../tools/real-input.js';
import { Hand } from '../tools/count.js';
import { chooser, leads, markNormal, openMap, saidAll, saidAt, settled, site, status } from '../tools/map.js';
import { allByRole, byRole, nameOf } from '../tools/perceive.js';

const HANDS: readonly PointerKind[] = ['mouse', 'pen', 'touch'];
const BLOCK = 'Occlusion somewhere between left femoral and left popliteal';

function handOn(map: PulseMap): Hand {
  return new Hand(() => settled(map));
}

/** What the record itself says, read as the form would send it. */
function gradeAt(map: PulseMap, key: string): string | undefined {
  const parsed = parseExaminationText(map.value);
  return parsed.ok ? pulseAt(parsed.value, place(key))?.grade : undefined;
}

/** From the end of the page's address bar: the focus is where a fresh page has it. */
function freshPage(): void {
  (focused() as HTMLElement | null)?.blur();
}

describe('recording a full normal examination', () => {
  for (const kind of HANDS) {
    it(`takes at most 7 actions by ${kind}, each named before it writes`, async () => {
      const map = await openMap();
      const hand = handOn(map);
      const named = await markNormal(map, (button) => hand.click(button, kind));
      expect(hand.actions).to.be.at.most(7);
      expect(named.map((name) => name.replace(/ normal .*/, ''))).to.deep.equal([
        'Head and neck: 4 pulses',
        'Right arm: 5 pulses',
        'Left arm: 5 pulses',
        'Abdomen: 1 pulse',
        'Right leg: 4 pulses',
        'Left leg: 4 pulses',
      ]);
      const normal = Object.values(saidAll(map)).filter((said) => said === '2, normal');
      expect(normal).to.have.length(23);
      expect(leads(map)).to.deep.equal([
        'All 23 pulses palpable, none reduced: no occlusive lesion suggested. A palpable pulse does not exclude arterial disease',
      ]);
      expect(status(map)).to.equal('Left leg: 4 pulses normal');
    });
  }

  it('takes at most 11 actions by keys alone, from the top of the page', async () => {
    const map = await openMap();
    const hand = handOn(map);
    freshPage();
    while (focused()?.matches('[part~=site]') !== true && hand.actions < 5) await hand.press('Tab');
    await hand.press('a');
    await settled(map);
    for (let portion = 0; portion < 6; portion++) {
      await hand.press('Enter');
      await settled(map);
    }
    expect(hand.actions).to.be.at.most(11);
    expect(focused()?.matches('[part~=site]'), 'the focus').to.equal(true);
    expect(Object.values(saidAll(map)).filter((said) => said === '2, normal')).to.have.length(23);
  });

  it('can be taken back in one action', async () => {
    const map = await openMap();
    const hand = handOn(map);
    await hand.click(byRole(map, 'button', 'Mark normal'));
    await settled(map);
    await hand.click(byRole(map, 'button', /^Left leg: 4 pulses normal/));
    expect(saidAt(map, 'left femoral')).to.equal('2, normal');
    expect(saidAt(map, 'right femoral')).to.equal('not examined');
    await hand.click(byRole(map, 'button', 'Undo'));
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
    expect(map.value).to.equal('');
    expect(leads(map)).to.deep.equal(['No pulse recorded']);
  });
});

describe('recording a block of the left superficial femoral', () => {
  function isTold(map: PulseMap): void {
    expect(leads(map)).to.deep.equal([`${BLOCK}, 95%`]);
    for (const key of ['left popliteal', 'left posterior-tibial', 'left dorsalis-pedis']) {
      expect(gradeAt(map, key), key).to.equal('absent');
    }
    expect(saidAt(map, 'left popliteal')).to.equal('0, absent');
    expect(saidAt(map, 'right popliteal')).to.equal('2, normal');
    expect(Object.values(saidAll(map)).filter((said) => said === '2, normal')).to.have.length(20);
  }

  for (const kind of HANDS) {
    it(`takes at most 13 actions by ${kind}, site by site`, async () => {
      const map = await openMap();
      const hand = handOn(map);
      await markNormal(map, (button) => hand.click(button, kind));
      for (const name of ['left popliteal', 'left posterior tibial', 'left dorsalis pedis']) {
        await hand.click(site(map, name), kind);
        await hand.click(byRole(chooser(map) as HTMLElement, 'radio', '0, absent'), kind);
      }
      expect(hand.actions).to.be.at.most(13);
      isTold(map);
    });

    it(`takes fewer by ${kind} when several sites are graded alike`, async () => {
      const map = await openMap();
      const hand = handOn(map);
      await hand.click(byRole(map, 'button', 'Grade several as 0, absent'), kind);
      for (const name of ['left popliteal', 'left posterior tibial', 'left dorsalis pedis']) {
        await hand.click(site(map, name), kind);
      }
      await markNormal(map, (button) => hand.click(button, kind));
      expect(hand.actions).to.be.at.most(11);
      isTold(map);
    });
  }

  it('takes at most 10 actions by keys alone, from the top of the page', async () => {
    const map = await openMap();
    const hand = handOn(map);
    freshPage();
    while (focused()?.matches('[part~=site]') !== true && hand.actions < 5) await hand.press('Tab');
    // From the right femoral to the left one, down over the adductor canal to the popliteal, on to the ankle.
    await hand.press('ArrowRight', '2', 'ArrowDown', 'ArrowDown', '0', 'ArrowDown', '0');
    expect(hand.actions).to.be.at.most(10);
    expect(leads(map)).to.deep.equal([`${BLOCK}, 88%`]);
    await hand.press('ArrowRight', '0', 'a');
    await settled(map);
    for (let portion = 0; portion < 6; portion++) {
      await hand.press('Enter');
      await settled(map);
    }
    isTold(map);
  });

  it('is shown on the artery between the two sites that bound it', async () => {
    const map = await openMap({
      examination: examined({
        'left femoral': 'normal',
        'left popliteal': 'absent',
        'left posterior-tibial': 'absent',
        'left dorsalis-pedis': 'absent',
      }),
    });
    const title = [...(map.shadowRoot?.querySelectorAll('title') ?? [])].find((t) =>
      t.textContent?.startsWith('Likely occlusion: somewhere between left femoral and left popliteal'),
    );
    const middle = (element: Element | null | undefined): number => {
      const box = element?.getBoundingClientRect();
      return box ? (box.top + box.bottom) / 2 : Number.NaN;
    };
    expect(middle(title?.parentElement)).to.be.above(middle(site(map, 'left femoral')));
    expect(middle(title?.parentElement)).to.be.below(middle(site(map, 'left popliteal')));
  });
});

describe('"the rest are normal"', () => {
  it('never touches a site already stated', async () => {
    const map = await openMap();
    const hand = handOn(map);
    await hand.click(site(map, 'right radial'));
    await hand.click(byRole(chooser(map) as HTMLElement, 'radio', '1, reduced'));
    await hand.click(site(map, 'left dorsalis pedis'));
    await hand.click(byRole(chooser(map) as HTMLElement, 'button', 'Not assessable'));
    await hand.click(byRole(chooser(map) as HTMLElement, 'radio', 'Dressing'));
    await markNormal(map, (button) => hand.click(button));
    expect(saidAt(map, 'right radial')).to.equal('1, reduced');
    expect(saidAt(map, 'left dorsalis pedis')).to.equal('not assessable: dressing');
    expect(saidAt(map, 'left radial')).to.equal('2, normal');
    expect(byRole<HTMLButtonElement>(map, 'button', 'Mark normal').disabled).to.equal(true);
  });

  it('leaves sites where one only listens alone', async () => {
    const map = await openMap();
    await markNormal(map);
    expect(saidAt(map, 'right renal')).to.equal('not auscultated');
  });
});

describe('on a phone', () => {
  it('offers only what is on the screen, and names a foot where a foot is left', async () => {
    const map = await openMap({ width: 380 });
    const hand = handOn(map);
    for (const name of ['left femoral', 'left popliteal']) {
      await hand.click(site(map, name));
      await hand.click(byRole(chooser(map) as HTMLElement, 'radio', '2, normal'));
    }
    await hand.click(byRole(map, 'button', 'Mark normal'));
    await settled(map);
    const offered = allByRole(map, 'button', /pulses? normal/).map((button) => nameOf(button));
    expect(offered.join()).not.to.match(/arm|hand|Head/);
    const foot = byRole(map, 'button', /^Left foot: 2 pulses normal/);
    expect(nameOf(foot))
      .to.match(/Dorsalis pedis/i)
      .and.to.match(/Posterior tibial/i);
    await hand.click(foot);
    expect(gradeAt(map, 'left dorsalis-pedis')).to.equal('normal');
    for (const unseen of ['left radial', 'right carotid', 'right femoral'])
      expect(gradeAt(map, unseen), unseen).to.equal(undefined);
    await hand.click(byRole(map, 'button', 'Undo'));
    for (const taken of ['left dorsalis-pedis', 'left posterior-tibial'])
      expect(gradeAt(map, taken), `${taken}, by one step of undo`).to.equal(undefined);
    expect(gradeAt(map, 'left popliteal')).to.equal('normal');
  });
});

describe('undo and redo', () => {
  it('walk back and forth through every step, by button and by key', async () => {
    const map = await openMap();
    const hand = handOn(map);
    site(map, 'right femoral').focus();
    await hand.press('2', 'ArrowRight', '1');
    expect(saidAt(map, 'left femoral')).to.equal('1, reduced');
    await hand.press('Control+z');
    expect(saidAt(map, 'left femoral')).to.equal('not examined');
    expect(status(map)).to.match(/^One step taken back/);
    await hand.click(byRole(map, 'button', 'Undo'));
    expect(saidAt(map, 'right femoral')).to.equal('not examined');
    expect(byRole<HTMLButtonElement>(map, 'button', 'Undo').disabled).to.equal(true);
    await hand.click(byRole(map, 'button', 'Redo'));
    expect(saidAt(map, 'right femoral')).to.equal('2, normal');
    site(map, 'right femoral').focus();
    await hand.press('Control+y');
    expect(saidAt(map, 'left femoral')).to.equal('1, reduced');
    expect(byRole<HTMLButtonElement>(map, 'button', 'Redo').disabled).to.equal(true);
  });

  it('has no depth at which it ends', async () => {
    const map = await openMap();
    const hand = handOn(map);
    site(map, 'right femoral').focus();
    for (let i = 0; i < 30; i++) await hand.press(String(i % 4));
    for (let i = 0; i < 30; i++) map.undo();
    await settled(map);
    expect(map.value).to.equal('');
  });
});
