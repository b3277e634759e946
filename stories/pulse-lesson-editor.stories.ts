import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import 'pulse-map/elements/pulse-lesson-editor/define';
import { shippedLessonInput } from 'pulse-map/lesson';

const meta: Meta = {
  title: 'Elements/Lesson editor',
  component: 'pulse-lesson-editor',
};
export default meta;

const sample = async (): Promise<string> =>
  JSON.stringify(await shippedLessonInput('superficial-femoral'), null, 2);

/** Empty: begin a lesson, start from one that ships, or open a file. */
export const Editor: StoryObj = {
  render: () => html`<pulse-lesson-editor></pulse-lesson-editor>`,
};

/** A lesson and its preview. */
export const WithALesson: StoryObj = {
  name: 'With a lesson',
  loaders: [async () => ({ text: await sample() })],
  render: (_, { loaded }) =>
    html`<pulse-lesson-editor .value=${(loaded as { text: string }).text}></pulse-lesson-editor>`,
};

/** What is wrong is told with its place, what was found and what was expected; a press leads there. */
export const WithFaults: StoryObj = {
  name: 'With faults',
  loaders: [
    async () => ({
      text: (await sample())
        .replace('"superficial-femoral"', '"Superficial femoral"')
        .replace(/"de":/, '"da":'),
    }),
  ],
  render: (_, { loaded }) =>
    html`<pulse-lesson-editor .value=${(loaded as { text: string }).text}></pulse-lesson-editor>`,
};

/** In German. */
export const German: StoryObj = {
  loaders: [() => import('pulse-map/locale/de')],
  render: () => html`<pulse-lesson-editor lang="de"></pulse-lesson-editor>`,
};
