import type { Patient, Visit } from './types.js';

/*
 * Three patients, made up for this page. Nobody like them has been examined. Their records stand here as a form would have
 * submitted them, as text; a unit test reads each with the library.
 */

export const PATIENTS: readonly Patient[] = [
  {
    id: 'lindqvist',
    name: 'Marta Lindqvist',
    born: '1958-02-11',
    number: 'AR-1041',
    summary: 'Left calf pain on walking, smoker until 2019',
  },
  {
    id: 'okafor',
    name: 'Tobias Okafor',
    born: '1951-07-30',
    number: 'AR-1077',
    summary: 'Atrial fibrillation, sudden cold right leg',
  },
  {
    id: 'caldeira',
    name: 'Ines Caldeira',
    born: '1967-10-04',
    number: 'AR-1102',
    summary: 'Left arm tires at work, dizzy when painting ceilings',
  },
];

type Sides = { readonly right?: object; readonly left?: object; readonly midline?: object };

const normal = { grade: 'normal' };
const absent = { grade: 'absent' };
const reduced = { grade: 'reduced' };
const both = (finding: object): Sides => ({ right: finding, left: finding });

const NORMAL_HEAD_AND_ARMS: Readonly<Record<string, Sides>> = {
  'superficial-temporal': both(normal),
  carotid: both(normal),
  subclavian: both(normal),
  axillary: both(normal),
  brachial: both(normal),
  radial: both(normal),
  ulnar: both(normal),
};

function record(examinedAt: string, parts: object): string {
  return JSON.stringify({ format: 'pulse-map/1', scale: '0-3', examinedAt, ...parts });
}

export const VISITS: readonly Visit[] = [
  {
    id: 'lindqvist-0',
    patientId: 'lindqvist',
    savedAt: '2025-11-12T10:31:00Z',
    fields: {
      date: '2025-11-12',
      examiner: 'Dr S. Novak',
      reason: 'Pain on walking',
      story: 'Left calf tires on the way to the bus.',
      walking: '450',
      smoking: 'former',
      medicines: 'Amlodipine 5 mg',
      extent: 'pulses',
      pulses: record('2025-11-12T10:20Z', {
        onset: 'chronic',
        pulses: {
          femoral: both(normal),
          popliteal: { right: normal, left: reduced },
          'posterior-tibial': { right: normal, left: reduced },
          'dorsalis-pedis': both(normal),
        },
        history: { leg: { left: { symptom: 'claudication', distance: 380 } } },
        pressures: {
          brachial: { right: 138, left: 136 },
          'dorsalis-pedis': { right: 142, left: 108 },
          'posterior-tibial': { right: 146, left: 112 },
        },
      }),
      plan: 'Atorvastatin, walking exercise.',
    },
  },
  {
    id: 'lindqvist-1',
    patientId: 'lindqvist',
    savedAt: '2026-05-19T09:52:00Z',
    fields: {
      date: '2026-05-19',
      examiner: 'Dr R. Haddad',
      reason: 'Pain on walking',
      story: 'Left calf cramps uphill since the winter, gone after two minutes’ rest.',
      walking: '400',
      smoking: 'former',
      medicines: 'Atorvastatin 20 mg\nAmlodipine 5 mg',
      extent: 'pulses',
      pulses: record('2026-05-19T09:40Z', {
        onset: 'chronic',
        pulses: {
          femoral: both(normal),
          popliteal: { right: normal, left: reduced },
          'posterior-tibial': { right: normal, left: reduced },
          'dorsalis-pedis': { right: normal, left: reduced },
        },
        bruits: { femoral: both({ bruit: 'none' }), 'adductor-canal': { left: { bruit: 'systolic' } } },
        history: { leg: { left: { symptom: 'claudication', distance: 350 } } },
        pressures: {
          brachial: { right: 140, left: 138 },
          'dorsalis-pedis': { right: 138, left: 106 },
          'posterior-tibial': { right: 143, left: 109 },
        },
      }),
      plan: 'Walking exercise, pressures at the next visit.',
    },
  },
  {
    id: 'lindqvist-2',
    patientId: 'lindqvist',
    savedAt: '2026-10-06T14:18:00Z',
    fields: {
      date: '2026-10-06',
      examiner: 'Dr R. Haddad',
      reason: 'Pain on walking',
      story: 'Walks half as far as in spring. No pain at night, no wound.',
      walking: '180',
      smoking: 'former',
      medicines: 'Atorvastatin 40 mg\nAmlodipine 5 mg\nClopidogrel 75 mg',
      extent: 'pulses',
      pulses: record('2026-10-06T14:05Z', {
        onset: 'chronic',
        pulses: {
          ...NORMAL_HEAD_AND_ARMS,
          'abdominal-aorta': { midline: normal },
          femoral: both(normal),
          popliteal: { right: normal, left: absent },
          'posterior-tibial': { right: normal, left: { grade: 'absent', doppler: 'monophasic' } },
          'dorsalis-pedis': { right: normal, left: { grade: 'absent', doppler: 'monophasic' } },
        },
        bruits: { femoral: { right: { bruit: 'none' }, left: { bruit: 'systolic' } } },
        history: { leg: { left: { symptom: 'claudication', distance: 150 } } },
        pressures: {
          brachial: { right: 142, left: 140 },
          'dorsalis-pedis': { right: 144, left: 84 },
          'posterior-tibial': { right: 148, left: 88 },
        },
      }),
      plan: 'Duplex of the left leg. Return at once with pain at rest or a wound.',
    },
  },
  {
    id: 'okafor-1',
    patientId: 'okafor',
    savedAt: '2026-11-02T21:34:00Z',
    fields: {
      date: '2026-11-02',
      examiner: 'L. Brandt, duty doctor',
      reason: 'Suddenly cold or painful limb',
      story:
        'Right leg white and painful since supper, three hours ago. Toes numb. Apixaban not taken for a week.',
      smoking: 'never',
      medicines: 'Apixaban 5 mg, missed\nBisoprolol 2.5 mg',
      extent: 'pulses',
      pulses: record('2026-11-02T21:20Z', {
        onset: 'acute',
        pulses: {
          radial: both(normal),
          'abdominal-aorta': { midline: normal },
          femoral: { right: { grade: 'bounding', note: 'knocking, stops short' }, left: normal },
          popliteal: { right: absent, left: normal },
          'posterior-tibial': { right: { grade: 'absent', doppler: 'absent' }, left: normal },
          'dorsalis-pedis': { right: { grade: 'absent', doppler: 'absent' }, left: normal },
        },
      }),
      plan: 'Vascular team called at 21:22 by the acute-limb pathway; transfer under way.',
    },
  },
  {
    id: 'caldeira-1',
    patientId: 'caldeira',
    savedAt: '2026-09-15T11:07:00Z',
    fields: {
      date: '2026-09-15',
      examiner: 'Dr S. Novak',
      reason: 'Arm pain or weakness at work',
      story: 'Left arm heavy after minutes of work above the head, once nearly fainted.',
      smoking: 'current',
      medicines: 'Metformin 500 mg',
      extent: 'pulses',
      pulses: record('2026-09-15T10:50Z', {
        onset: 'chronic',
        pulses: {
          'superficial-temporal': both(normal),
          carotid: both(normal),
          subclavian: { right: normal, left: { grade: 'reduced', thrill: true } },
          axillary: { right: normal, left: reduced },
          brachial: { right: normal, left: reduced },
          radial: { right: normal, left: reduced },
          ulnar: { right: normal, left: reduced },
          femoral: both(normal),
          'posterior-tibial': both(normal),
          'dorsalis-pedis': { right: { couldNotExamine: 'dressing' }, left: normal },
        },
        bruits: { subclavian: { right: { bruit: 'none' }, left: { bruit: 'systolic' } } },
        delays: { radioRadial: 'left-later' },
      }),
      plan: 'Pressures in both arms, duplex of the arm inflow.',
    },
  },
];
