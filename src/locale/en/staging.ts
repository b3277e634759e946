import { stagingFrom, type StagingTable } from '../staging.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { list } from './phrases.js';
import { plainStaging } from './staging-plain.js';

const trade: StagingTable = {
  title: 'Stages',
  schemes: {
    acute: 'Acute limb ischaemia class (Rutherford)',
    fontaine: 'Fontaine stage',
    rutherford: 'Rutherford category',
    wound: 'Wound grade',
    ischaemia: 'Ischaemia grade',
    infection: 'Foot infection grade',
    wifi: 'Stage of wound, ischaemia and foot infection (WIfI)',
  },
  meanings: {
    acute: {
      I: 'viable, not immediately threatened',
      IIa: 'marginally threatened',
      IIb: 'immediately threatened',
      III: 'irreversible',
    },
    fontaine: {
      I: 'no symptoms',
      IIa: 'mild claudication',
      IIb: 'moderate to severe claudication',
      III: 'rest pain',
      IV: 'ulcer or gangrene',
    },
    rutherford: {
      0: 'no symptoms',
      1: 'mild claudication',
      2: 'moderate claudication',
      3: 'severe claudication',
      4: 'rest pain',
      5: 'minor tissue loss',
      6: 'major tissue loss',
    },
    wound: {
      0: 'no wound',
      1: 'small or shallow ulcer',
      2: 'deeper ulcer, or gangrene of digits',
      3: 'extensive ulcer or gangrene',
    },
    degrees: { 0: 'none', 1: 'mild', 2: 'moderate', 3: 'severe' },
    wifi: {
      1: 'very low risk of amputation',
      2: 'low risk of amputation',
      3: 'moderate risk of amputation',
      4: 'high risk of amputation',
      5: 'unsalvageable foot',
    },
  },
  notes: {
    'no-single-class': 'These findings fit no single Rutherford class; the least that they allow is shown.',
    'both-arms': 'Both arms may be obstructed: the ABPI may read too high, and the grade may be worse.',
    'acute-limb':
      'Signs of acute limb ischaemia: the acute class counts. Chronic stages are meant for complaints of 2 weeks and more.',
    'not-atherosclerotic':
      'Limb threat is defined for atherosclerosis; another disease is recorded as the cause.',
    'fixed-mottling': 'Fixed mottling goes with the irreversible class.',
    'described-for-leg': 'The classes were described for the leg.',
    'old-deficit': 'A known old deficit of power or sensation is not counted.',
    'pressures-not-met':
      'The objective pressure criteria of this category are not met: recheck symptom and pressures.',
    'pressures-of-rest-pain': 'Pressures are in the range of rest pain; neuropathy may mask pain.',
    'disease-not-shown': 'Arterial disease is not shown by pulses and pressures: look for another cause.',
    'disease-untested': 'Arterial disease is not proven: pulses, ABPI, toe pressure or waveform are needed.',
    'other-causes': 'A completed walk without a fall: think of spine, hip and veins.',
    'at-200': 'Exactly 200 m is not defined by the scheme; set the convention you use.',
    'toe-decides': 'ABPI and toe pressure give different grades; the toe pressure decides.',
    incompressible: 'Ankle arteries incompressible: grade by toe pressure or TcPO₂.',
    'one-incompressible': 'One ankle artery is incompressible: the grade may be worse.',
    'diabetes-ankle': 'In diabetes the ankle pressure may read too high: the grade may be worse.',
    'diabetes-unasked':
      'Diabetes not recorded: with diabetes the grade may be worse and a toe pressure is needed.',
    'worse-counts': 'ABPI and ankle pressure give different grades; the worse counts.',
    'at-70': '70 mmHg is printed in two grades; set the convention you use.',
    'one-sign-only': 'One sign alone does not make an infection by this scheme.',
  },
  excluded: {
    amputated: 'The foot is lost: the scheme does not apply.',
    acute: 'Not meant for acute limb ischaemia.',
    vasculitis: 'Not meant for vasculitis.',
    injury: 'Not meant for injury.',
    'venous-ulcer': 'Not meant for venous ulcers.',
    buerger: 'Not meant for thromboangiitis obliterans (Buerger’s disease).',
    vasospasm: 'Not meant for vasospasm.',
  },
  risks: {
    'very-low': 'very low',
    low: 'low',
    moderate: 'moderate',
    high: 'high',
  },
  acuteTitle: 'Acute',
  grades: 'The three components',
  wifiTitle: 'Foot',
  grade: (roman) => `grade ${roman}`,
  nothing: 'Not graded: not enough recorded',
  unread:
    'The record cannot be read here, so no stage is worked out from it. Stages you have set yourself stay as they are.',
  or: (items) => list(items, 'or'),
  between: (least, most) => `At least ${least}, at most ${most}`,
  notAcute:
    'No acute onset recorded: not classified as acute limb ischaemia. If symptoms are under 2 weeks, record the onset.',
  acuteUnknown:
    'Applies to symptoms of under 2 weeks, however they began. The onset is not recorded: establish it now.',
  window: (from, to) =>
    `Guideline window for revascularisation: within ${from ? `${from} to ` : ''}${to} hours. Call now.`,
  noWindow:
    'Guidelines: primary amputation may have to be considered; decided by the vascular team. Call now.',
  beside: (what) => `Beside it: ${what}, in the range of rest pain.`,
  objective: {
    met: 'Objective pressure criteria for this category met.',
    'not-met': 'Objective pressure criteria for this category not met.',
    'not-measured': 'Objective pressure criteria for this category not measured.',
  },
  differ: 'Fontaine and Rutherford disagree here: compare the findings behind each.',
  from: (what) => `From: ${what}.`,
  risk: (risk) => `Estimated 1-year risk of major amputation: ${risk}.`,
  benefit: (benefit) => `Estimated benefit of revascularisation: ${benefit}.`,
  edition: 'Tables of wound, ischaemia and foot infection (WIfI) after Mills 2014.',
  set: 'Clinician’s own grade',
  setTo: (scheme) => `${scheme}, set by you`,
  asDerived: 'As calculated',
  why: 'Why',
  overrule: {
    to: (stage, derived) => `set by the clinician to ${stage} (${derived})`,
    derived: (stage) => `derived was ${stage}`,
    nothing: 'nothing could be derived',
    because: (why) => `, because ${why}`,
  },
  yours: {
    to: (stage, derived) => `Yours: ${stage}. ${derived}`,
    derived: (stage) => `Derived: ${stage}.`,
    nothing: 'Nothing was derived.',
  },
};

export const staging = stagingFrom(inRegisters(trade, plainStaging), { anatomy, list });
