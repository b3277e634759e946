import { compressionFrom, type CompressionTable } from '../compression.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { speech } from './phrases.js';

const trade: CompressionTable = {
  title: 'Compression: arterial limits',
  verdicts: {
    'within-limits': 'Within the limits for full compression; your local protocol decides',
    reduced: 'Outside the limits for full compression: reduced compression only, if the specialist agrees',
    'not-known': 'Not known: not enough recorded to compress',
    'advice-first': 'No compression before a specialist opinion, by your local protocol',
  },
  venous: { varices: 'varicose veins', pigment: 'venous pigment', oedema: 'oedema', ulcer: 'a venous ulcer' },
  asks: {
    'ankle-or-toe': 'the ABPI or toe pressure',
    toe: 'the toe pressure',
    diabetes: 'whether there is diabetes',
    'thrombosis-signs': 'signs of deep vein thrombosis',
    feeling: 'sensation',
    'heart-failure': 'heart failure, as a cause of the oedema',
  },
  feeling: {
    normal: 'sensation normal',
    digits: 'sensation lost in the toes',
    'beyond-digits': 'sensation lost beyond the toes',
    lost: 'no sensation in the foot',
  },
  measures: { ankle: 'ankle pressure', toe: 'toe pressure', tcpo2: 'TcPO₂' },
  grounds: {
    indexWithin: 'ABPI {}, within {} to {}',
    indexBelow: 'ABPI {}, below {}',
    indexAbove: 'ABPI {}, above {} and not reliable',
    toeIndexBelow: 'TBPI {}, abnormal',
    pressureBelow: '{} {} mmHg, below {}',
    pressureFrom: '{} {} mmHg, not below {}',
    incompressible: 'an incompressible ankle artery',
    armsDoubted: 'both arms possibly obstructed, so that the ABPI may read too high',
    graft: 'a graft or stent in the leg',
    heartFailure: 'heart failure',
    filament: '10 g filament not fully felt',
    thrombosis: 'signs of deep vein thrombosis: exclude it first',
    flags: 'a red flag of this leg, which comes first',
  },
  from: 'From: {}.',
  missing: 'Not yet recorded: {}.',
  because: 'Asked because of {}.',
  limits:
    'Limits: full compression with ABPI {} to {} or toe pressure from {} mmHg; specialist first below ABPI {}, ankle {}, toe {} or TcPO₂ {} mmHg.',
  ownLimits: 'By your pathway.',
  consensus: 'By published consensus; your local protocol may differ.',
};

const plain: Otherwise<CompressionTable> = {
  title: 'Compression stockings or bandages',
  verdicts: {
    'within-limits': 'The measurements allow full compression; the team treating you decides',
    reduced: 'Only light compression, and only if a specialist agrees',
    'not-known': 'Not known yet: more has to be checked before this leg is compressed',
    'advice-first': 'No compression until a specialist has seen this leg',
  },
  venous: {
    varices: 'varicose veins',
    pigment: 'brown skin',
    oedema: 'swelling',
    ulcer: 'a sore from the veins',
  },
  asks: {
    'ankle-or-toe': 'the blood pressure at the ankle or toe',
    toe: 'the blood pressure at the toe',
    diabetes: 'whether there is diabetes',
    'thrombosis-signs': 'signs of a clot in the deep veins',
    feeling: 'feeling in the foot',
    'heart-failure': 'whether a weak heart causes the swelling',
  },
  measures: { ankle: 'ankle pressure', toe: 'toe pressure', tcpo2: 'skin oxygen pressure' },
  grounds: {
    indexWithin: 'ankle compared with arm {}, within {} to {}',
    indexBelow: 'ankle compared with arm {}, below {}',
    indexAbove: 'ankle compared with arm {}, above {} and not reliable',
    toeIndexBelow: 'toe compared with arm {}, too low',
    incompressible: 'an ankle artery too hard to measure',
    armsDoubted: 'both arms possibly blocked, so that the comparison may come out too high',
    graft: 'a bypass or stent in the leg',
    heartFailure: 'a weak heart',
    filament: 'the 10 g thread was not felt everywhere',
    thrombosis: 'signs of a clot in a deep vein: this has to be ruled out first',
    flags: 'a warning sign of this leg, which comes first',
  },
  feeling: {
    normal: 'feeling normal',
    digits: 'numb in the toes',
    'beyond-digits': 'numb beyond the toes',
    lost: 'no feeling in the foot',
  },
  limits:
    'Limits: full compression with ankle compared with arm {} to {} or toe pressure from {} mmHg; specialist first below ankle compared with arm {}, ankle {}, toe {} or skin oxygen {} mmHg.',
};

export const compression = compressionFrom(inRegisters(trade, plain), speech);
