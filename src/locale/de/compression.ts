import { compressionFrom, type CompressionTable, type CompressionWords } from '../compression.js';
import { inRegisters, type Otherwise } from '../terms.js';
import { speech } from './phrases.js';

const trade: CompressionTable = {
  title: 'Kompression: arterielle Grenzen',
  verdicts: {
    'within-limits': 'Innerhalb der Grenzen für volle Kompression; der lokale Standard entscheidet',
    reduced: 'Außerhalb der Grenzen für volle Kompression: nur reduziert und mit fachärztlicher Zustimmung',
    'not-known': 'Unbekannt: für eine Kompression ist zu wenig erfasst',
    'advice-first': 'Keine Kompression vor fachärztlicher Beurteilung, nach lokalem Standard',
  },
  venous: {
    varices: 'Varizen',
    pigment: 'venöser Pigmentierung',
    oedema: 'Ödem',
    ulcer: 'einem venösen Ulkus',
  },
  asks: {
    'ankle-or-toe': 'der ABI oder Zehendruck',
    toe: 'der Zehendruck',
    diabetes: 'ob ein Diabetes besteht',
    'thrombosis-signs': 'Zeichen der tiefen Venenthrombose',
    feeling: 'die Sensibilität',
    'heart-failure': 'eine Herzinsuffizienz als Ursache des Ödems',
  },
  feeling: {
    normal: 'Sensibilität normal',
    digits: 'Sensibilität an den Zehen vermindert',
    'beyond-digits': 'Sensibilität über die Zehen hinaus vermindert',
    lost: 'Sensibilität des Fußes aufgehoben',
  },
  measures: { ankle: 'Knöchelarteriendruck', toe: 'Zehendruck', tcpo2: 'tcpO₂' },
  grounds: {
    indexWithin: 'ABI {}, zwischen {} und {}',
    indexBelow: 'ABI {}, unter {}',
    indexAbove: 'ABI {}, über {} und nicht verlässlich',
    toeIndexBelow: 'TBI {}, pathologisch',
    pressureBelow: '{} {} mmHg, unter {}',
    pressureFrom: '{} {} mmHg, nicht unter {}',
    incompressible: 'eine nicht komprimierbare Knöchelarterie',
    armsDoubted: 'mögliche Stenosen beider Arme, sodass der ABI zu hoch ausfallen kann',
    graft: 'Bypass oder Stent am Bein',
    heartFailure: 'Herzinsuffizienz',
    filament: '10-g-Filament nicht überall gespürt',
    thrombosis: 'Zeichen der tiefen Venenthrombose: zuerst ausschließen',
    flags: 'ein Warnzeichen dieses Beins, das vorgeht',
  },
  from: 'Aus: {}.',
  missing: 'Noch nicht erfasst: {}.',
  because: 'Gefragt wegen {}.',
  limits:
    'Grenzen: volle Kompression bei ABI {} bis {} oder Zehendruck ab {} mmHg; zuerst Facharzt bei ABI unter {}, Knöchel unter {}, Zehe unter {} oder tcpO₂ unter {} mmHg.',
  ownLimits: 'Nach Ihrem Behandlungspfad.',
  consensus: 'Nach veröffentlichtem Konsens; der lokale Standard kann abweichen.',
};

const plain: Otherwise<CompressionTable> = {
  title: 'Kompressionsstrümpfe oder -verbände',
  verdicts: {
    'within-limits': 'Die Messwerte erlauben volle Kompression; Ihr Behandlungsteam entscheidet',
    reduced: 'Nur leichte Kompression, und nur wenn eine Fachärztin oder ein Facharzt zustimmt',
    'not-known': 'Noch unbekannt: Vor einer Kompression ist mehr zu prüfen',
    'advice-first': 'Keine Kompression, bevor das Bein fachärztlich beurteilt ist',
  },
  venous: {
    varices: 'Krampfadern',
    pigment: 'brauner Haut',
    oedema: 'Schwellung',
    ulcer: 'einer offenen Wunde durch die Venen',
  },
  asks: {
    'ankle-or-toe': 'der Blutdruck am Knöchel oder an der Zehe',
    toe: 'der Blutdruck an der Zehe',
    diabetes: 'ob eine Zuckerkrankheit besteht',
    'thrombosis-signs': 'Zeichen eines Gerinnsels in den tiefen Venen',
    feeling: 'das Gefühl im Fuß',
    'heart-failure': 'ob eine Herzschwäche die Schwellung macht',
  },
  measures: {
    ankle: 'Blutdruck am Knöchel',
    toe: 'Blutdruck an der Zehe',
    tcpo2: 'Sauerstoffdruck der Haut',
  },
  grounds: {
    indexWithin: 'Knöchel im Vergleich zum Arm {}, innerhalb von {} bis {}',
    indexBelow: 'Knöchel im Vergleich zum Arm {}, unter {}',
    indexAbove: 'Knöchel im Vergleich zum Arm {}, über {} und nicht verlässlich',
    toeIndexBelow: 'Zehe im Vergleich zum Arm {}, zu niedrig',
    incompressible: 'eine Schlagader am Knöchel, die zu hart zum Messen ist',
    armsDoubted: 'mögliche Engstellen beider Arme, sodass der Vergleich zu hoch ausfallen kann',
    heartFailure: 'Herzschwäche',
    filament: 'der 10-g-Faden wurde nicht überall gespürt',
    thrombosis: 'Zeichen eines Gerinnsels in einer tiefen Vene: Das ist zuerst auszuschließen',
  },
  feeling: {
    normal: 'Gefühl normal',
    digits: 'an den Zehen taub',
    'beyond-digits': 'über die Zehen hinaus taub',
    lost: 'kein Gefühl im Fuß',
  },
  limits:
    'Grenzen: volle Kompression, wenn der Knöchel im Vergleich zum Arm {} bis {} erreicht oder die Zehe ab {} mmHg; zuerst fachärztlich bei Knöchel im Vergleich zum Arm unter {}, Knöchel unter {}, Zehe unter {} oder Sauerstoff der Haut unter {} mmHg.',
};

export const compression: CompressionWords = compressionFrom(inRegisters(trade, plain), speech);
