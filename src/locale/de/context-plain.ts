import type { Side } from '../../anatomy/index.js';
import type { ContextTable } from '../context.js';
import type { Otherwise } from '../terms.js';
import { anatomy } from './anatomy.js';

const at = (side: Side): string => anatomy.sides[side];

/** What is known beforehand, for a reader who is no clinician. */
export const plainContext: Otherwise<ContextTable> = {
  title: 'Was schon bekannt ist',
  mechanisms: {
    injury: 'Verletzung oder Operation',
    embolic: 'eingeschwemmtes Gerinnsel',
    thrombotic: 'Gerinnsel in einer kranken Schlagader',
    dissection: 'Einriss in der Wand der Hauptschlagader',
    vasculitis: 'Entzündung der großen Schlagadern',
    compression: 'Druck von außen',
    buerger: 'Entzündung kleiner Schlagadern (Morbus Buerger)',
    vasospasm: 'Finger, die bei Kälte weiß werden (Raynaud)',
  },
  injury: 'Verletzt oder operiert an',
  legAmputations: {
    forefoot: 'vorderer Fuß',
    'below-knee': 'unterhalb des Knies',
    'through-knee': 'im Knie',
    'above-knee': 'oberhalb des Knies',
  },
  missing: 'Puls war nie da',
  repaired: 'Bypässe und Stents',
  amputation: 'Durch eine Operation entfernt',
  missingOptions: { 'dorsalis-pedis': 'Fußrücken', 'posterior-tibial': 'Innenknöchel' },
  harvested: 'Schlagader am Handgelenk (Daumenseite) entnommen',
  repairArtery: 'Schlagader',
  choose: 'Schlagader wählen',
  aneurysms: 'Bekannte erweiterte Schlagader',
  access: 'Zugang für die Dialyse (Blutwäsche)',
  accessKinds: { fistula: 'eigene Vene (Fistel)', graft: 'Kunststoffrohr' },
  devices: 'Katheter in einer Schlagader',
  coldInjury: 'Schaden durch Kälte',
  coldHours: 'Stunden seit dem Schaden durch Kälte',
  medicineNames: {
    antiplatelet: 'Mittel gegen das Verklumpen des Blutes',
    anticoagulant: 'Blutverdünner',
  },
  ownCourse: 'entlang der Schlagader',
  graftPulses: { present: 'zu tasten', absent: 'nicht zu tasten' },
  graftSigns: 'Zeichen einer Infektion darüber',
  said: {
    neverThere: (side, sites) => `Puls war nie da: ${sites.join(', ')} ${at(side)}`,
    legAmputated: (side, is) => `Teil des Beins ${at(side)} entfernt: ${is}`,
    armAmputated: (side, is) => `Teil des Arms ${at(side)} entfernt: ${is}`,
    harvested: (side) => `Schlagader am Handgelenk (Daumenseite) entnommen: ${at(side)}`,
    graftInfection: (is) => `Zeichen einer Infektion über dem Bypass: ${is}`,
    aneurysm: (place, side) => `bekannte erweiterte Schlagader: ${place}${side ? ` ${at(side)}` : ''}`,
    noAneurysm: 'keine erweiterte Schlagader bekannt',
    access: (side, is) => `Zugang für die Dialyse (Blutwäsche), Arm ${at(side)}: ${is}`,
    accessSigns: (side, is) => `Zeichen am Zugang für die Dialyse ${at(side)}: ${is}`,
    noAccess: 'kein Zugang für die Dialyse',
    noDevice: 'kein Katheter in einer Schlagader',
    coldInjury: (limb, hours) => `Schaden durch Kälte, ${limb}${hours ? `, vor ${hours} h` : ''}`,
    noMedicines: 'nimmt weder ein Mittel gegen das Verklumpen noch einen Blutverdünner noch ein Statin',
  },
};
