import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import 'pulse-map/elements/pulse-lesson/define';

const meta: Meta = {
  title: 'Elements/Lesson',
  component: 'pulse-lesson',
};
export default meta;

/** A lesson that ships. Click the slide, or use the keys named below it. */
export const Lesson: StoryObj = {
  render: () => html`<pulse-lesson shipped="superficial-femoral" channel="story"></pulse-lesson>`,
};

/** Screen and presenter’s window on one page; in a lecture they are two windows. */
export const WithPresenter: StoryObj = {
  name: 'With the presenter’s window',
  render: () =>
    html`<pulse-lesson shipped="embolus-groin" channel="two"></pulse-lesson>
      <pulse-lesson shipped="embolus-groin" channel="two" presenter></pulse-lesson>`,
};

/** The room marks on a map of its own: the button “Mark”, or the key M. Its marks are no findings of the lesson. */
export const Marking: StoryObj = {
  render: () => html`<pulse-lesson shipped="superficial-femoral" channel="marking"></pulse-lesson>`,
};

/** Two pages of A4 to print. */
export const HandOut: StoryObj = {
  name: 'Hand-out',
  render: () => html`<pulse-lesson shipped="superficial-femoral" hand-out></pulse-lesson>`,
};

/** In German. */
export const German: StoryObj = {
  loaders: [() => import('pulse-map/locale/de')],
  render: () => html`<pulse-lesson shipped="subclavian-steal" channel="german" lang="de"></pulse-lesson>`,
};

/** A lesson that does not exist is said in words. */
export const NotFound: StoryObj = {
  name: 'Not found',
  render: () => html`<pulse-lesson shipped="none"></pulse-lesson>`,
};
