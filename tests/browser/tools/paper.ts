import { html } from '@open-wc/testing';

/** How a page asks for A4. */
export const PAPER = html`<style>
  @page {
    size: A4;
    margin: 12mm;
  }
  body {
    margin: 0;
  }
</style>`;
