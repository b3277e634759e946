import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, type TemplateResult } from 'lit';
import 'pulse-map/elements/limb-visits/define';
import type { PatientVisit } from 'pulse-map/elements/limb-visits';
import { emptyExamination, type Examination } from 'pulse-map/core';

interface Args {
  visits: readonly PatientVisit[];
  view: 'whole' | 'legs';
}

const meta: Meta<Args> = {
  title: 'Examination/Visits over time',
  component: 'limb-visits',
  args: { visits: [], view: 'legs' },
  argTypes: { visits: { control: false } },
  render: ({ visits, view }: Args): TemplateResult =>
    html`<div style="padding: 16px">
      <limb-visits .visits=${visits} view=${view}></limb-visits>
    </div>`,
};
export default meta;

type Story = StoryObj<Args>;
type Grade = 'absent' | 'reduced' | 'normal';

/** A leg's pulses, pressures in mmHg and walking distance in metres. Invented. */
const visit = (
  at: string,
  note: string,
  foot: Grade,
  ankle: number | 'incompressible' | undefined,
  distance?: number,
): PatientVisit => {
  const examination: Examination = {
    ...emptyExamination(),
    pulses: {
      femoral: { right: { grade: 'normal' }, left: { grade: 'normal' } },
      popliteal: { right: { grade: 'normal' }, left: { grade: foot } },
      'posterior-tibial': { right: { grade: 'normal' }, left: { grade: foot } },
    },
    ...(ankle !== undefined && {
      pressures: {
        brachial: { right: 140 },
        'posterior-tibial': { right: 148, left: ankle },
        toe: { right: 104, left: ankle === 'incompressible' ? 48 : Math.round(ankle * 0.6) },
      },
    }),
    ...(distance !== undefined && { history: { leg: { left: { symptom: 'claudication', distance } } } }),
  };
  return { id: at, at, note, examination };
};

const YEARS: readonly PatientVisit[] = [
  visit('2022-03-02', 'Pain on walking', 'normal', 124, 600),
  visit('2023-04-11', 'Review', 'reduced', 112, 420),
  visit('2024-05-07', 'Pulses only', 'reduced', undefined),
  visit('2025-05-20', 'Review', 'reduced', 108, 350),
  visit('2026-10-06', 'Walks less', 'absent', 84, 150),
];

/** No visit yet. */
export const None: Story = {};

/** One visit: there is nothing to compare. */
export const One: Story = { args: { visits: YEARS.slice(0, 1) } };

/** Five visits over years. At the third nothing was measured, so that the lines have a gap. */
export const Years: Story = { args: { visits: YEARS } };

/** The same, one of them entered in error. */
export const InError: Story = {
  args: { visits: YEARS.map((one, i) => (i === 3 ? { ...one, enteredInError: true } : one)) },
};

/** An artery that cannot be compressed any more has no index to compare. */
export const Incompressible: Story = {
  args: { visits: [...YEARS, visit('2027-01-12', 'Diabetes', 'absent', 'incompressible', 140)] },
};

/** Three visits of one day. */
export const Hours: Story = {
  args: {
    visits: [
      visit('2026-10-28T14:00+01:00', 'After bypass', 'reduced', 126),
      visit('2026-10-28T18:00+01:00', 'Evening', 'reduced', 124),
      visit('2026-10-28T23:00+01:00', 'Night', 'absent', 70),
    ],
  },
};

/** Ten thousand visits: only those in sight are drawn. */
export const Many: Story = {
  args: {
    visits: Array.from({ length: 10_000 }, (_, i) =>
      visit(
        new Date(Date.UTC(1996, 0, 1) + i * 86_400_000).toISOString().slice(0, 10),
        `Number ${i + 1}`,
        i % 400 < 200 ? 'normal' : 'reduced',
        Math.round(110 + 20 * Math.sin(i / 300)),
      ),
    ),
  },
};
