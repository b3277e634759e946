import type { ContextTable } from '../context.js';
import type { Otherwise } from '../terms.js';

/** What is known beforehand, for a reader who is no clinician. */
export const plainContext: Otherwise<ContextTable> = {
  title: 'What is already known',
  mechanisms: {
    embolic: 'clot that travelled from elsewhere',
    thrombotic: 'clot formed in a diseased artery',
    dissection: 'tear in the wall of the main artery',
    vasculitis: 'inflammation of the large arteries',
    compression: 'pressure from outside',
    buerger: 'inflammation of small arteries (Buerger’s disease)',
    vasospasm: 'fingers that turn white in the cold (Raynaud’s disease)',
  },
  amputation: 'Removed by an operation',
  missingOptions: { 'dorsalis-pedis': 'top of the foot', 'posterior-tibial': 'inner ankle' },
  harvested: 'Wrist artery used elsewhere (thumb side)',
  harvestedOption: 'used',
  aneurysms: 'Known widened artery',
  access: 'Access for dialysis (blood washing)',
  accessKinds: { fistula: 'own vein (fistula)', graft: 'plastic tube' },
  coldInjury: 'Harm from cold',
  coldHours: 'Hours since the harm from cold',
  medicineNames: { antiplatelet: 'drug against clumping of the blood', anticoagulant: 'blood thinner' },
  graftPulse: 'Pulse of the bypass',
  graftPulses: { present: 'felt', absent: 'not felt' },
  said: {
    legAmputated: (side, is) => `part of the ${side} leg removed: ${is}`,
    armAmputated: (side, is) => `part of the ${side} arm removed: ${is}`,
    neverThere: (side, sites) => `pulse never there, ${side}: ${sites.join(', ')}`,
    harvested: (side) => `${side} wrist artery used elsewhere (thumb side)`,
    graftPulse: (is) => `pulse of the bypass ${is}`,
    graftInfection: (is) => `signs of infection over the bypass: ${is}`,
    aneurysm: (place, side) => `known widened artery: ${side ? `${side} ` : ''}${place}`,
    noAneurysm: 'no known widened artery',
    access: (side, is) => `access for dialysis (blood washing), ${side} arm: ${is}`,
    accessSigns: (side, is) => `signs at the access for dialysis, ${side}: ${is}`,
    noAccess: 'no access for dialysis',
    coldInjury: (limb, hours) => `harm from cold, ${limb}${hours ? `, ${hours} h ago` : ''}`,
    noMedicines: 'takes no drug against clumping, blood thinner or statin',
  },
};
