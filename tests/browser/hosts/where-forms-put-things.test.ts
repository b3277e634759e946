// Boxes that take their width from what is in them give an element room, and none is held open wider than the page.
import { expect, fixture, html } from '@open-wc/testing';
import type { TemplateResult } from 'lit';
import 'pulse-map';
import { setViewport } from '../../tools/real-input.js';
import { drawn } from '../tools/limbs.js';

const TAGS = ['pulse-map', 'limb-examination', 'pulse-reading', 'limb-pressures', 'bedside-test'] as const;

const PLACES: Readonly<Record<string, (element: Element) => TemplateResult>> = {
  'a block': (element) => html`<div>${element}</div>`,
  'a dialog of no set width': (element) => html`<dialog open style="padding:0;border:0">${element}</dialog>`,
  'an item of a flex row': (element) => html`<div style="display:flex"><div>${element}</div></div>`,
  'a flex row': (element) => html`<div style="display:flex"><span>Pulses</span>${element}</div>`,
  'an automatic column of a grid': (element) =>
    html`<div style="display:grid;grid-template-columns:auto auto;justify-content:start">${element}</div>`,
  'equal columns of a grid': (element) =>
    html`<div style="display:grid;grid-template-columns:1fr"><div style="min-width:0">${element}</div></div>`,
  'a table cell': (element) =>
    html`<table style="border-spacing:0">
      <tr>
        <td style="padding:0">${element}</td>
      </tr>
    </table>`,
  'an inline fieldset': (element) =>
    html`<fieldset style="display:inline-block;padding:0;border:0;margin:0;min-width:0">
      ${element}
    </fieldset>`,
};

describe('where forms put things', () => {
  for (const width of [390, 1280]) {
    for (const [place, around] of Object.entries(PLACES)) {
      it(`${place} gives every element room at ${width} px, and stays within the page`, async () => {
        await setViewport({ width, height: 900 });
        document.body.style.margin = '0';
        for (const tag of TAGS) {
          const element = document.createElement(tag);
          const box = await fixture(around(element));
          await drawn(element);
          const { width: given } = element.getBoundingClientRect();
          expect(given, `${tag} is wide enough`).to.be.at.least(280);
          expect(document.documentElement.scrollWidth, `${tag} keeps to the page`).to.be.at.most(width);
          box.remove();
        }
      });
    }
  }
});
