import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map';
import { LANGUAGES } from 'pulse-map/core';
import 'pulse-map/locale/de';
import { threatened } from './limb-records.js';
import { earlier, oneBlock } from './records.js';

/*
 * Words follow the element's own `lang`, else the nearest one around it; the layout follows `dir`. What is the patient's
 * right stays at the reader's left whichever way the words run.
 */

interface Args {
  /** The element's own language. */
  lang: string;
  /** Which way the page runs. */
  dir: 'ltr' | 'rtl';
  display: 'figure' | 'table';
}

const meta: Meta<Args> = {
  title: 'Languages',
  component: 'pulse-map',
  args: { lang: 'en', dir: 'ltr', display: 'figure' },
  argTypes: {
    lang: { control: 'inline-radio', options: LANGUAGES.map(({ tag }) => tag) },
    dir: { control: 'inline-radio', options: ['ltr', 'rtl'] },
    display: { control: 'inline-radio', options: ['figure', 'table'] },
  },
  render: ({ lang, dir, display }: Args): TemplateResult =>
    html`<div dir=${dir}>
      <pulse-map
        lang=${lang}
        display=${display}
        .value=${JSON.stringify(oneBlock)}
        .compare=${earlier}
      ></pulse-map>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;

/** Built in. */
export const English: Story = {};

/** From `pulse-map/locale/de`. */
export const German: Story = { args: { lang: 'de' } };

/** As a table. */
export const GermanTable: Story = { args: { lang: 'de', display: 'table' } };

/** Every part of the examination by the same registration. */
export const GermanExamination: Story = {
  render: () => html`<limb-examination lang="de" .value=${JSON.stringify(threatened)}></limb-examination>`,
};

/** A page that runs right to left: tools, reading and table are mirrored, the patient is not. */
export const RightToLeft: Story = { args: { dir: 'rtl' } };

/** The table there. */
export const RightToLeftTable: Story = { args: { dir: 'rtl', display: 'table' } };
