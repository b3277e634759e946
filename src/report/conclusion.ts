import { limbKey, type LimbKey } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import {
  type LimbRule,
  type NetworkReading,
  type Reading,
  readExamination,
  type Whereabouts,
  whereaboutsOf,
} from '../localisation/index.js';
import {
  everywhereLead,
  firmStatement,
  type FirmStatement,
  impossibleStatement,
  type ImpossibleStatement,
  type LeadStatement,
  limbLead,
  lesionReasons,
  natureStatements,
  type NatureStatement,
  type ReasonStatement,
  ruleLeads,
  talkingLimbs,
  voicesStatement,
  type VoicesStatement,
} from '../statements/index.js';

/** What the findings of one limb come to: both voices, how firm, and what contradicts. Never a diagnosis. */
export interface LimbConclusion {
  readonly limb: LimbKey;
  /** The network's stretch, where it finds one; it is then the headline, and the rule stands beside it. */
  readonly where?: Whereabouts;
  /** The bedside rule's sentence. */
  readonly rule: LeadStatement;
  /** Why the rule places each of its lesions there. */
  readonly reasons: readonly (readonly ReasonStatement[])[];
  readonly voices?: VoicesStatement;
  readonly firm?: FirmStatement;
  /** Pulses of this limb that contradict each other. */
  readonly contradictions: LimbRule['contradictions'];
}

/** What the examination as a whole comes to. */
export interface Conclusion {
  /** Every pulse equally poor: one sentence for all limbs. */
  readonly everywhere?: LeadStatement;
  /** Limbs in which something is found, the one that is worst off first. */
  readonly limbs: readonly LimbConclusion[];
  /** What the rule says where no limb has anything wrong; empty where nothing was graded. */
  readonly leads: readonly LeadStatement[];
  /** What may lie behind it, most probable first. */
  readonly natures: readonly NatureStatement[];
  /** Findings that can hardly be right together, or not at all. */
  readonly conflicts: Extract<NetworkReading, { readonly status: 'read' }>['conflicts'];
  readonly impossible?: ImpossibleStatement;
}

function limbConclusion(rule: LimbRule, { network }: Reading, examination: Examination): LimbConclusion {
  const key = limbKey(rule.limb);
  const read = network.status === 'read' ? network : undefined;
  const limb = read?.limbs[key].examined ? read.limbs[key] : undefined;
  const where = read && whereaboutsOf(read, key);
  const voices = limb && voicesStatement(rule, limb);
  const detail = read?.detail[key];
  return {
    limb: key,
    ...(where && { where }),
    rule: limbLead(rule),
    reasons: rule.lesions.map((lesion) => lesionReasons(examination, lesion)),
    ...(voices && { voices }),
    ...(detail && { firm: firmStatement(detail, rule) }),
    contradictions: rule.contradictions,
  };
}

/**
 * What the pulses, bruits, pressures and history of a record come to, in both voices.
 * @param first limbs in the order in which they are told; others follow
 */
export function conclusionOf(
  examination: Examination,
  first: readonly LimbKey[],
  earlier?: Examination,
): Conclusion {
  const reading = readExamination(examination, earlier);
  const { network } = reading;
  const rank = ({ limb }: LimbConclusion): number => {
    const at = first.indexOf(limb);
    return at < 0 ? first.length : at;
  };
  const limbs = talkingLimbs(reading).map((rule) => limbConclusion(rule, reading, examination));
  const everywhere = limbs.length ? everywhereLead(reading.rule) : undefined;
  return {
    ...(everywhere && { everywhere }),
    limbs: limbs.sort((a, b) => rank(a) - rank(b)),
    leads: limbs.length ? [] : ruleLeads(reading.rule),
    natures: network.status === 'read' && limbs.length ? natureStatements(network) : [],
    conflicts: network.status === 'read' ? network.conflicts : [],
    ...(network.status === 'impossible' && { impossible: impossibleStatement(network) }),
  };
}
