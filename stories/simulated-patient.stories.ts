import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import './simulated-patient/many.js';
import './simulated-patient/page.js';

const meta: Meta = { title: 'Simulated patient/Try it' };
export default meta;

/** One artery, one slider: waves of pressure (red) and velocity (blue), pressures, grades, sounds and indices follow at once. */
export const Slider: StoryObj = { render: () => html`<simulated-patient-page></simulated-patient-page>` };

/** Many patients at once: generated and examined in a worker, with progress and a way to stop. */
export const Many: StoryObj = { render: () => html`<many-patients-page></many-patients-page>` };
