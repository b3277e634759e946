import { type LocalisationTable, localisationFrom } from '../localisation.js';
import { inRegisters } from '../terms.js';
import { anatomy, atLimb, pulseAt, pulseName } from './anatomy.js';
import { examination } from './examination.js';
import { plainLocalisation } from './localisation-plain.js';
import { sentence, speech } from './phrases.js';
import { skinLevels } from './skin-levels.js';

const table: LocalisationTable = {
  causes: {
    none: 'keine Arterienerkrankung',
    focal: 'umschriebene Erkrankung (eine oder wenige Läsionen)',
    diffuse: 'diffuse Erkrankung (Mehretagenbefall)',
    distal: 'Erkrankung der kleinen distalen Arterien',
    vasculitis: 'Großgefäßvaskulitis (Takayasu, Riesenzell)',
    embolic: 'Embolie',
    injury: 'Verletzung',
    compression: 'Kompression von außen oder Entrapment',
    coarctation: 'Aortenisthmusstenose',
    dissection: 'Aortendissektion',
    aneurysm: 'Aneurysma',
    'low-flow': 'niedriger Fluss oder Vasokonstriktion (Schock, Kälte)',
  },
  states: { patent: 'durchgängig', narrowed: 'stenosiert', blocked: 'verschlossen' },
  muscles: {
    none: 'keiner',
    buttock: 'Gesäß',
    thigh: 'Oberschenkel',
    'calf-upper': 'obere Wade',
    'calf-lower': 'untere Wade',
    foot: 'Fuß',
    arm: 'Arm',
  },
  delays: { right: 'rechts später', left: 'links später', both: 'beidseits', none: 'keine' },
  between: {
    'radio-radial': 'Radioradiale Pulsverzögerung',
    'radio-femoral': 'Radiofemorale Pulsverzögerung',
  },
  temperatures: { warm: 'warm', cool: 'kühl', cold: 'kalt' },
  pulse: pulseAt,
  pulseOf: pulseName,
  findings: {
    pulse: (pulse, grade) => `${pulse} ${grade}`,
    doppler: (at, signal) => `${at}, Doppler: ${signal}`,
    thrill: (at) => `${at}: Schwirren`,
    bruit: (at, bruit) => `${at}: ${bruit}`,
    noBruit: (at, none) => `${at}: ${none}`,
    index: (at, value) => `${at}, Druckindex ${value}`,
    ankleIndex: (side, value) => `Knöchel-Arm-Index (ABI) ${side} ${value}`,
    toeIndex: (side, value) => `Zehen-Arm-Index (TBI) ${side} ${value}`,
    fingerIndex: (side, value) => `Finger-Arm-Index ${side} ${value}`,
    incompressible: (at) => `${at} nicht komprimierbar`,
    falls: (side) => `Knöcheldruck fällt nach Belastung, ${side}`,
    noFall: (side) => `Kein Abfall des Knöcheldrucks nach Belastung, ${side}`,
    skin: (limb, temperature) => `${limb} ${temperature}`,
    skinFrom: (limb, temperature, level) => `${limb} ${temperature} ab Höhe ${level}`,
    wound: (limb) => `Ulkus oder Gangrän, ${limb}`,
    numbness: (limb) => `Gefühlsverlust über die Spitzen hinaus, ${limb}`,
    flush: (side, artery) => `Hohlhandbogentest ${side}: Handfläche füllt sich nach Freigabe, ${artery}`,
    noFlush: (side, artery) => `Hohlhandbogentest ${side}: Handfläche bleibt weiß nach Freigabe, ${artery}`,
    noPain: (limb) => `Kein Belastungsschmerz ${atLimb[limb]}`,
    pain: (limb, muscle) => `Belastungsschmerz: ${limb}, ${muscle}`,
    graftPulse: {
      present: (vessel) => `Bypasspuls tastbar: ${vessel}`,
      absent: (vessel) => `Kein Bypasspuls: ${vessel}`,
    },
    vertebral: {
      forward: (side) => `Vertebralis ${side}: orthograder Fluss`,
      alternating: (side) => `Vertebralis ${side}: Pendelfluss`,
      reversed: (side) => `Vertebralis ${side}: retrograder Fluss`,
    },
    steal: {
      dizzy: (side) => `Schwindel bei Gebrauch des Arms, ${side}`,
      'chest-pain': (side) => `Brustschmerz bei Gebrauch des Arms, ${side}`,
    },
  },
  acts: {
    listen: (place) => `${place}: auskultieren`,
    doppler: (place) => `${place}: Doppler`,
    'ankle-pressure': (side) => `Knöcheldruck ${side}`,
    'toe-pressure': (side) => `Zehendruck ${side}`,
    'pain-level': (limb) => `Ort des Belastungsschmerzes: ${limb}`,
    onset: () => 'Wie es begann',
    'arm-pressures': () => 'Druck an beiden Armen',
  },
  whys: {
    listen: 'Ein Strömungsgeräusch dort würde die Stenose lokalisieren.',
    doppler: 'Sagt, ob und wie dort Blut fließt.',
    'ankle-pressure': 'Sagt, wie stark der Abfall ist.',
    'toe-pressure': 'Sagt etwas über den Fuß, wo der Knöchel es nicht tut oder die Arterien starr sind.',
    delay: 'Ein späterer Puls spricht für die Arterie dazwischen.',
    'pain-level': 'Der höchste schmerzende Muskel weist auf die Arterie darüber.',
    onset: 'Plötzlich oder allmählich entscheidet zwischen Embolie und alter Erkrankung.',
    'arm-pressures':
      'Ein Unterschied spricht für eine Läsion von Subclavia oder Truncus brachiocephalicus auf der Seite des niedrigeren Drucks.',
  },
  assumptions: {
    cause: (cause) => `wie häufig die Ursache „${cause}“ ist`,
    palpation: (pulse) => `wie zuverlässig der ${pulse} getastet wird`,
    bruit: 'wie oft eine Stenose zu hören ist',
    doppler: 'was ein Dopplersignal aussagt',
    index: 'was ein Druckindex aussagt',
    pain: 'was der Ort der Schmerzen aussagt',
    delay: 'was eine Pulsverzögerung aussagt',
    seen: 'was Haut, Wunden und Gefühl aussagen',
  },
  grades: {
    firm: 'Belastbar: So eingestufte Antworten trafen in veröffentlichten Fällen mindestens neunmal von zehn zu.',
    'fairly-firm':
      'Recht belastbar: So eingestufte Antworten trafen in veröffentlichten Fällen sieben- bis neunmal von zehn zu.',
    'not-firm':
      'Nicht belastbar: So eingestufte Antworten trafen in veröffentlichten Fällen seltener als siebenmal von zehn zu.',
  },
  held: (held, tried) =>
    `Bleibt in ${held} von ${tried} Abwandlungen aller Annahmen zugleich die erste Antwort.`,
  hangsOn: (assumptions) => `Es hängt davon ab, ${assumptions}.`,
  ungraded: (limb, count) =>
    `${sentence(atLimb[limb])} ${count === 1 ? 'fehlt noch eine Stelle' : `fehlen noch ${count} Stellen`}.`,
  allOpen: (cause) => `Wahrscheinlichste Gesamterklärung: alle Arterien durchgängig; ${cause}.`,
  story: (lesions, cause) =>
    `Wahrscheinlichste Gesamterklärung: ${lesions}; wahrscheinliche Ursache: ${cause}.`,
  reconstituted: ', stenosiert oder über Kollateralen aufgefüllt',
  open: 'Keine Hauptarterie verschlossen',
  elsewhere: 'Andere Stelle',
  wheres: { above: 'proximal davon', beyond: 'distal davon' },
  notExcluded: {
    'small-arteries': 'Erkrankung der kleinsten Arterien',
    emboli: 'Embolien',
    injury: 'Arterienschaden durch die Verletzung',
    exertion: 'Stenose, die sich nur unter Belastung zeigt',
  },
  excludesNot: (what) => `Durch Pulse nicht ausgeschlossen: ${what}.`,
  questions: {
    circulation: 'Blutdruck und Körpertemperatur',
    swelling: 'Ist das Bein geschwollen und blau?',
    access: 'Hat dieser Arm einen Dialysezugang?',
    'from-birth': 'War dieser Puls jemals tastbar?',
  },
  asks: {
    circulation:
      'Niedriger Druck oder Auskühlung nimmt mehreren Gliedmaßen den Puls, ohne dass eine Arterie erkrankt ist.',
    swelling: 'Eine durch Gerinnsel verlegte Vene kann den Puls eines geschwollenen blauen Beins nehmen.',
    access: 'Ein Zugang leitet dem Handgelenk Blut ab, ohne dass eine Arterie erkrankt ist.',
    'from-birth': 'Vielen Menschen fehlt ein Fußpuls von Geburt an, oder er ist beidseits schwer zu tasten.',
  },
  natures: {
    embolus: 'Embolie',
    thrombosis: 'Thrombose in situ',
    'chronic-disease': 'chronische Arterienerkrankung',
    injury: 'Verletzung',
    dissection: 'Dissektion',
    aneurysm: 'Aneurysma',
    vasculitis: 'Vaskulitis',
    compression: 'Kompression von außen oder Entrapment',
    coarctation: 'Aortenisthmusstenose',
    'low-flow': 'geringer Fluss oder Vasokonstriktion',
    none: 'keine Arterienerkrankung',
  },
  flagAsks: 'Davon hängt ein Warnzeichen ab.',
  enough: 'Am Krankenbett ist nichts mehr zu finden, das viel daran ändert',
  enoughWhy: 'Bildgebung nach örtlichem Vorgehen.',
  agree: 'Pulsregel und Wahrscheinlichkeitsmodell stimmen überein.',
  disagree: 'Pulsregel und Wahrscheinlichkeitsmodell widersprechen sich.',
  favours: (pieces) =>
    `Das Wahrscheinlichkeitsmodell spricht für ${pieces}; die widersprüchlichen Befunde prüfen.`,
  ruleAlone:
    'Das Wahrscheinlichkeitsmodell spricht hier gegen eine okklusive Läsion: Ein Puls könnte falsch beurteilt sein. Erneut palpieren.',
  networkAlone: (pieces) =>
    `Nach der Pulsregel ist keine okklusive Läsion erkennbar; das Wahrscheinlichkeitsmodell spricht für ${pieces}.`,
  impossible: 'Diese Befunde passen nicht zueinander.',
  without: (findings) => `Ohne einen von diesen passten sie: ${findings}.`,
  somewhere: 'irgendwo auf dem Weg',
  beyond: (site) => `irgendwo hinter ${site}`,
  fromTo: (above, below) => `irgendwo zwischen ${above} und ${below}`,
  fromHeart: (below) => `irgendwo zwischen dem Herzen und ${below}`,
  lost: { absent: 'Verschluss', reduced: 'Stenose oder Verschluss' },
  conflict: (finding, other) => `${finding} passt kaum zu: ${other}. Beides noch einmal prüfen.`,
  odds: { for: 'Chancen mal', against: 'Chancen geteilt durch' },
  ways: { for: 'dafür', against: 'dagegen' },
  titles: {
    occludedHeading: 'Ort des Verschlusses, nach Wahrscheinlichkeit',
    byArtery: 'Nach Arterie',
    natureHeading: 'Wahrscheinliche Ursache',
    beginsHeading: 'Proximalste Läsion, nach Wahrscheinlichkeit',
    nothing: 'Keine okklusive Läsion erkennbar',
    furtherHeading: 'Weitere Läsionen',
    evidenceHeading: 'Was für und gegen die führende Lokalisation spricht',
    nextHeading: 'Nächster Schritt mit dem größten Erkenntnisgewinn',
    start: 'Beginnen mit',
    openNow: 'Zur Stelle',
    howFirm: 'Belastbarkeit',
    numbers: 'Alle Wahrscheinlichkeiten',
    levels: 'Nach Etagen',
    causesHeading: 'Wahrscheinliche Ursache',
  },
};

/** Words of the belief network's answers. */
export const localisation = localisationFrom(inRegisters(table, plainLocalisation), {
  anatomy,
  examination,
  skinLevels,
  speech,
});
