import type { StagingTable } from '../staging.js';
import type { Otherwise } from '../terms.js';

/** The stages, for a reader who is no clinician. */
export const plainStaging: Otherwise<StagingTable> = {
  title: 'Severity',
  schemes: {
    acute: 'How urgent (Rutherford)',
    fontaine: 'Severity (Fontaine)',
    rutherford: 'Severity (Rutherford)',
    wound: 'Wound',
    ischaemia: 'Lack of blood',
    infection: 'Infection of the foot',
    wifi: 'Risk to the foot',
  },
  meanings: {
    acute: {
      I: 'limb not in immediate danger',
      IIa: 'limb in danger if not treated promptly',
      IIb: 'limb in immediate danger, every hour counts',
      III: 'the damage may be lasting',
    },
    fontaine: {
      IIa: 'mild pain on walking',
      IIb: 'moderate to severe pain on walking',
      III: 'pain at rest or at night',
      IV: 'sore or dead tissue',
    },
    rutherford: {
      1: 'mild pain on walking',
      2: 'moderate pain on walking',
      3: 'severe pain on walking',
      4: 'pain at rest or at night',
      5: 'small wound or dead tissue',
      6: 'large wound or dead tissue',
    },
    wifi: {
      1: 'very low risk of losing the foot',
      2: 'low risk of losing the foot',
      3: 'moderate risk of losing the foot',
      4: 'high risk of losing the foot',
      5: 'foot that can hardly be kept',
    },
    wound: {
      1: 'small or shallow sore',
      2: 'deeper sore, or dead tissue of toes',
      3: 'large sore or dead tissue',
    },
  },
  notes: {
    'no-single-class': 'What was found fits no single Rutherford grade; the least that it allows is shown.',
    'fixed-mottling': 'Blotches that do not pale when pressed go with lasting damage.',
    'described-for-leg': 'The grades were made for the leg.',
    'old-deficit': 'Weakness or numbness known to be old is not counted.',
    'pressures-not-met': 'The measured pressures do not fit this grade: check complaint and pressures again.',
    'pressures-of-rest-pain':
      'The pressures are as low as with pain at rest; lost feeling may hide the pain.',
    'disease-not-shown': 'Pulses and pressures show no narrowed arteries: look for another cause.',
    'disease-untested':
      'Narrowed arteries are not proven: pulses, ankle or toe pressure, or the pulse wave are needed.',
    'other-causes': 'The whole walk without a fall in pressure: think of back, hip and veins.',
    'at-200': 'The scale does not say where exactly 200 m belongs; set what you use.',
    'toe-decides': 'Ankle and toe pressure give different grades; the toe pressure decides.',
    incompressible: 'The ankle arteries are too hard to measure: grade by toe pressure or skin oxygen.',
    'one-incompressible': 'One ankle artery is too hard to measure: the grade may be worse.',
    'both-arms':
      'Both arm arteries may be narrowed: the comparison may read too high, the grade may be worse.',
    'acute-limb':
      'Signs that the blood supply was lost suddenly: how urgent it is counts. This scheme is for complaints of 2 weeks and more.',
    'not-atherosclerotic':
      'A limb at risk is defined for furred-up arteries; another disease is recorded as the cause.',
    'worse-counts': 'The compared and the measured ankle pressure give different grades; the worse counts.',
    'at-70': '70 mmHg stands in two grades; set what you use.',
    'one-sign-only': 'One sign alone does not make an infection by this scale.',
  },
  excluded: {
    amputated: 'The foot is lost: the scale does not apply.',
    acute: 'Not meant for a sudden loss of blood supply.',
    vasculitis: 'Not meant for inflammation of the arteries.',
    'venous-ulcer': 'Not meant for sores from the veins.',
    buerger: 'Not meant for inflammation of small arteries (Buerger’s disease).',
    vasospasm: 'Not meant for fingers that turn white in the cold.',
  },
  acuteTitle: 'Sudden',
  grades: 'The three parts',
  nothing: 'Not enough recorded to tell',
  unread:
    'The record cannot be read here, so no grade is worked out from it. Grades you have set yourself stay as they are.',
  notAcute:
    'No sudden beginning recorded: not graded as a sudden loss of blood supply. If it is less than 2 weeks old, record when it began.',
  acuteUnknown:
    'Counts for complaints of less than 2 weeks, however they began. When it began is not recorded: find out now.',
  window: (from, to) =>
    `By the guidelines blood flow is to be restored within ${from ? `${from} to ` : ''}${to} hours. Call now.`,
  noWindow:
    'By the guidelines removing the limb may have to be considered; the blood-vessel team decides. Call now.',
  beside: (what) => `Beside it: ${what}, as low as with pain at rest.`,
  objective: {
    met: 'The measured pressures fit.',
    'not-met': 'The measured pressures do not fit.',
    'not-measured': 'The pressures for this grade are not measured.',
  },
  edition: 'Tables of the risk to the foot after Mills 2014.',
  differ: 'Fontaine and Rutherford disagree here: compare what each rests on.',
  risk: (risk) => `Estimated risk of losing the foot or leg within 1 year: ${risk}.`,
  benefit: (benefit) => `Estimated benefit of restoring the blood flow: ${benefit}.`,
  set: 'Your own grade',
  asDerived: 'As worked out',
  overrule: {
    derived: (stage) => `worked out was ${stage}`,
    nothing: 'nothing could be worked out',
  },
  yours: {
    derived: (stage) => `Worked out: ${stage}.`,
    nothing: 'Nothing was worked out.',
  },
};
