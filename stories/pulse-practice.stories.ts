import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import 'pulse-map/elements/pulse-practice/define';

const meta: Meta = {
  title: 'Elements/Practice',
  component: 'pulse-practice',
};
export default meta;

/** A clear patient. Touch sites, ask, measure, then name it. */
export const Practice: StoryObj = {
  render: () => html`<pulse-practice code="clear-15"></pulse-practice>`,
};

/** Without a code the person chooses the patient. */
export const Choose: StoryObj = {
  render: () => html`<pulse-practice></pulse-practice>`,
};

/** What an examiner holds beside a practical examination. It tells the truth. */
export const Examiner: StoryObj = {
  name: 'Examiner’s sheet',
  render: () => html`<pulse-practice code="4817" examiner></pulse-practice>`,
};

/** In German. */
export const German: StoryObj = {
  loaders: [() => import('pulse-map/locale/de')],
  render: () => html`<pulse-practice code="hard-4" lang="de"></pulse-practice>`,
};
