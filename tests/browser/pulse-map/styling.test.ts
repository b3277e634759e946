// What a page may set from outside: colours, lines, and the parts of the drawing.
import { expect, fixture } from '@open-wc/testing';
import { html } from 'lit';
import type { PulseMap } from 'pulse-map/elements/pulse-map';
import { examined } from '../../tools/examinations.js';
import { figureOf } from '../tools/skin.js';
import { openMap } from '../tools/map.js';

const style = (map: PulseMap, selector: string): CSSStyleDeclaration =>
  getComputedStyle(figureOf(map).querySelector(selector) as Element);

describe('the look of a map', () => {
  it('has its lines as thick as the page asks, in the figure and in its picture', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    const LINES = [
      '.leaders path',
      '.hints',
      '.g-normal .line',
      '.g-not-examined .dash',
      '.g-normal .numeral',
    ];
    const widths = (): number[] => LINES.map((line) => parseFloat(style(map, line).strokeWidth));
    const usual = widths();
    map.style.setProperty('--pulse-map-stroke', '1.5');
    widths().forEach((width, i) => expect(width / usual[i]!, LINES[i]).to.be.closeTo(1.5, 0.01));
    expect(map.toSVG()).to.include('stroke-width="1.5"');
  });

  it('can be changed part by part', async () => {
    const map = await openMap({ examination: examined({ 'left femoral': 'normal' }) });
    await fixture(
      html`<style>
        pulse-map {
          --pulse-map-vessel: rgb(1, 2, 3);
        }
        pulse-map::part(labels) {
          fill: rgb(4, 5, 6);
          font-style: italic;
        }
        pulse-map::part(leaders) {
          opacity: 0.5;
        }
        pulse-map::part(body) {
          fill: rgb(7, 8, 9);
        }
        pulse-map::part(letters) {
          font-size: 30px;
        }
      </style>`,
    );
    expect(style(map, '.artery.near').fill).to.equal('rgb(1, 2, 3)');
    expect(style(map, '.label.plain').fill).to.equal('rgb(4, 5, 6)');
    expect(style(map, '.label.quiet').fontStyle).to.equal('italic');
    expect(style(map, '.leaders').opacity).to.equal('0.5');
    expect(style(map, '.body').fill).to.equal('rgb(7, 8, 9)');
    expect(style(map, '.letters text').fontSize).to.equal('30px');
  });

  it('changes by a red flag nowhere but where something is scrolled to', async () => {
    const map = await openMap({ width: 1240, examination: examined({ 'left femoral': 'normal' }) });
    const flags = map.shadowRoot?.querySelector('limb-flags') as HTMLElement;
    /** What every element of the map would be styled again for. */
    const inherited = (): string[] =>
      ['.main', '.figure', '.figure .label', '.also summary'].map((selector) =>
        getComputedStyle(map.shadowRoot?.querySelector(selector) as Element).getPropertyValue('--_sticky'),
      );
    const room = (selector: string): string =>
      getComputedStyle(map.shadowRoot?.querySelector(selector) as Element).scrollMarginBlockStart;
    const rooms = (): string[] => ['.site', '.toolbar button'].map(room);
    const before = inherited();
    expect(rooms()).to.deep.equal(['0px', '0px']);
    flags.toggleAttribute('raised', true);
    expect(inherited()).to.deep.equal(before);
    expect(rooms()).to.deep.equal(['60px', '60px']);
    expect(getComputedStyle(map.shadowRoot?.querySelector('.beside > div') as Element).top).to.equal('60px');
    flags.toggleAttribute('unchecked', true);
    expect(inherited()).to.deep.equal(before);
    expect(rooms()).to.deep.equal(['120px', '120px']);
    map.display = 'table';
    await map.updateComplete;
    expect(room('.table select')).to.equal('120px');
  });
});
