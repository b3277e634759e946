/** Six of the invented examinations: aneurysm, bypass, little examined, outlet, veins, injury. */
import { at, examiner, type LetterCase, legs, record } from './case.js';

export const OTHER_CASES: readonly LetterCase[] = [
  {
    name: '07-aneurysm',
    subject: 'Walter Brandt',
    record: record(
      {
        'midline abdominal-aorta': { grade: 'bounding', expansile: true },
        'right popliteal': { grade: 'bounding', expansile: true },
        'left popliteal': 'normal',
        'right femoral': 'normal',
        'left femoral': 'normal',
        'right posterior-tibial': 'normal',
        'right dorsalis-pedis': 'normal',
        'left posterior-tibial': 'normal',
        'left dorsalis-pedis': 'absent',
      },
      {
        examinedAt: at,
        examiner,
        history: { ...legs({ symptom: 'none' }, { symptom: 'none' }), elsewhere: [] },
        context: {
          ageBand: '60-79',
          smoking: 'past',
          aneurysms: [],
          absentFromBirth: { left: ['dorsalis-pedis'] },
        },
      },
    ),
  },
  {
    name: '08-bypass-gone-quiet',
    subject: 'Rosa Keller',
    record: record(
      {
        'right femoral': 'normal',
        'right popliteal': 'absent',
        'right posterior-tibial': { grade: 'absent', doppler: 'monophasic' },
        'right dorsalis-pedis': { grade: 'absent', doppler: 'absent' },
        'left femoral': 'normal',
      },
      {
        examinedAt: at,
        examiner,
        onset: 'acute',
        history: {
          leg: { right: { symptom: 'rest-pain', onset: 'sudden', hours: 30, newComplaint: true } },
          operations: 'Femoropopliteal bypass on the right, 2024',
        },
        context: {
          ageBand: '60-79',
          revascularisations: [
            {
              artery: 'superficial-femoral',
              side: 'right',
              kind: 'bypass',
              graftPulse: 'absent',
              infectionSigns: [],
            },
          ],
        },
        inspection: {
          leg: {
            right: {
              colour: 'pale',
              temperature: 'cool',
              movement: 'normal',
              sensation: 'normal',
              refill: 5,
            },
          },
        },
        pressures: {
          brachial: { left: 140 },
          'posterior-tibial': { right: 40 },
          'dorsalis-pedis': { right: 0 },
        },
      },
    ),
  },
  {
    name: '09-hardly-examined',
    subject: 'Ahmed Nasser',
    record: record(
      {
        'left femoral': 'normal',
        'left popliteal': { couldNotExamine: 'cast' },
        'left posterior-tibial': { couldNotExamine: 'cast' },
        'left dorsalis-pedis': { couldNotExamine: 'cast', note: 'toes warm' },
        'right femoral': 'normal',
        'right popliteal': { couldNotExamine: 'pain' },
      },
      {
        examinedAt: at,
        examiner,
        context: { legAmputation: { right: 'below-knee' } },
        bruits: { femoral: { left: { couldNotExamine: 'declined' } } },
        inspection: { leg: { left: { couldNotExamine: 'cast' } } },
        bedside: { elevation: { left: { notDone: 'cast' } } },
        pressures: { toe: { left: 'dressing' }, brachial: { right: 'declined' } },
      },
    ),
  },
  {
    name: '10-thoracic-outlet',
    subject: 'Hanna Seidel',
    record: record(
      { 'right radial': 'normal', 'left radial': 'normal', 'right ulnar': 'normal', 'left ulnar': 'normal' },
      {
        examinedAt: at,
        examiner,
        history: {
          arm: { right: { symptom: 'claudication', coldFingers: true }, left: { symptom: 'none' } },
        },
        context: { ageBand: '20-39', smoking: 'never', armClaudication: { right: 'arm', left: 'none' } },
        bedside: {
          hyperabduction: {
            right: { before: 'normal', during: 'absent', symptoms: ['tingling', 'heaviness'], seconds: 60 },
            left: { before: 'normal', during: 'normal', symptoms: [], seconds: 60 },
          },
          'arm-stress': { right: { seconds: 90, stopped: 'pain', felt: { tingling: 30, pain: 60 } } },
          'hand-arch': { right: { method: 'modified', radial: { seconds: 4 }, ulnar: { seconds: 5 } } },
        },
      },
    ),
  },
  {
    name: '11-venous-ulcer',
    subject: 'Greta Holm',
    record: record(
      { 'right posterior-tibial': { couldNotExamine: 'oedema' } },
      {
        examinedAt: at,
        examiner,
        history: legs({ symptom: 'none', note: 'aching in the evening' }, { symptom: 'none' }),
        inspection: {
          leg: {
            right: {
              ulcer: 'shallow',
              ulcerPlace: 'ankle',
              ulcerCause: 'venous',
              ulcerSizeMm: 40,
              oedema: 'pitting',
              varices: true,
              pigment: true,
              infection: [],
            },
          },
        },
        pressures: {
          brachial: { right: 136, left: 134 },
          'dorsalis-pedis': { right: 142, left: 140 },
          toe: { right: 110 },
        },
      },
      'rest-normal',
    ),
  },
  {
    name: '12-knee-injury',
    subject: 'Tom Farrell',
    record: record(
      {
        'left femoral': 'normal',
        'left popliteal': { couldNotExamine: 'pain' },
        'left posterior-tibial': { grade: 'absent', doppler: 'monophasic' },
        'left dorsalis-pedis': 'absent',
        'right posterior-tibial': 'normal',
        'right dorsalis-pedis': 'normal',
      },
      {
        examinedAt: '2026-10-10T16:05Z',
        examiner,
        onset: 'acute',
        history: { leg: { left: { onset: 'sudden', hours: 3, suddenPain: true } } },
        context: { ageBand: '20-39', mechanism: 'injury', injury: { left: 'knee' } },
        inspection: {
          leg: {
            left: {
              temperature: 'cool',
              temperatureLevel: 'knee',
              injurySigns: ['knee-dislocation'],
              muscle: 'tense',
              stretchPain: true,
              sensation: 'digits',
              movement: 'normal',
            },
          },
        },
        pressures: { brachial: { right: 124 }, 'posterior-tibial': { left: 62 } },
      },
    ),
  },
];
