import { flagWordsFrom, type FlagTable } from '../flag-words.js';
import { inRegisters } from '../terms.js';
import { anatomy } from './anatomy.js';
import { flagBar } from './flag-bar.js';
import { plainFlags } from './flags-plain.js';
import { groundWords } from './grounds.js';
import { cited } from './citations.js';
import { decimal, list, range } from './phrases.js';

const trade: FlagTable = {
  missing: {
    onset: 'der Beginn',
    symptom: 'die Beschwerden',
    severity: 'ihre Schwere',
    distance: 'die schmerzfreie Gehstrecke',
    exercise: 'Knöchelarteriendrücke nach Belastung',
    'same-artery': 'dieselbe Knöchelarterie in Ruhe und nach Belastung',
    pressures: 'Knöchel- oder Zehendruck',
    toe: 'der Zehendruck',
    disease:
      'der Nachweis einer arteriellen Verschlusskrankheit durch Pulse, ABI, Zehendruck oder Dopplerkurve',
    sensation: 'die Sensibilität',
    movement: 'die Motorik',
    arterial: 'die arteriellen Dopplersignale an Fuß oder Handgelenk',
    venous: 'das venöse Dopplersignal',
    ulcer: 'ob ein Ulkus besteht',
    ulcerPlace: 'wo das Ulkus liegt',
    ulcerCause: 'die Ursache des Ulkus',
    gangrene: 'ob eine Gangrän besteht',
    gangreneExtent: 'wie weit die Gangrän reicht',
    infection: 'lokale Infektionszeichen',
    rednessCm: 'wie weit die Rötung reicht',
    deepInfection: 'ob die Infektion tiefer als die Haut reicht',
    systemic: 'systemische Entzündungszeichen (SIRS)',
    wound: 'der Wundgrad',
    ischaemia: 'Drücke',
  },
  questions: {
    onset:
      'Wann hat es begonnen, oder wann war die Extremität zuletzt sicher gesund? Plötzlich? Seither schlechter?',
    movement: 'Lassen sich Zehen oder Finger, Sprung- oder Handgelenk gegen Widerstand bewegen?',
    sensation: 'Wird leichte Berührung an Zehen oder Fingern und darüber gespürt?',
    'arterial-doppler': 'Arterielles Dopplersignal an beiden Endarterien?',
    'venous-doppler': 'Venöses Dopplersignal?',
    'other-pulses': 'Proximale Pulse, und die andere Extremität?',
    'passive-stretch': 'Muskulatur druckschmerzhaft oder gespannt? Passiver Dehnungsschmerz?',
    background: 'Rhythmus, bekanntes Aneurysma, Bypass oder Stent, Antikoagulans abgesetzt?',
    'distal-pulses': 'Pulse distal der Verletzung?',
    'ankle-index': 'ABI?',
    'forearm-index': 'Unterarmdruck im Verhältnis zum anderen Oberarm?',
    'other-side-index': 'Der Index der Gegenseite zum Vergleich?',
    'abdominal-or-back-pain': 'Neue Bauch-, Rücken- oder Flankenschmerzen, Kollaps?',
    'chest-or-back-pain': 'Plötzlicher Brust- oder Rückenschmerz?',
    'other-popliteal-and-aorta': 'Der andere Poplitealpuls, und die Aorta?',
    'pad-tests': 'Pulse, ABI, Zehendruck: Besteht eine arterielle Verschlusskrankheit?',
    toe: 'Zehendruck?',
    diabetes: 'Diabetes?',
    'old-deficit': 'Ist das Defizit alt und unverändert?',
    'marks-unrecorded': 'Auf der Haut gezeichnet: in der Inspektion erfassen?',
  },
  urgencies: { now: 'Jetzt', today: 'Heute', soon: 'Binnen Tagen' },
  workingDays: (days) => `Binnen ${days} ${days === 1 ? 'Werktag' : 'Werktagen'}`,
  target: (inHospital, atHome) =>
    `Übliches Ziel von der Überweisung bis zur Revaskularisation: ${inHospital} Tage stationär, ${atHome} Tage ambulant.`,
  names: {
    circulation: 'Mehrere Extremitäten ohne Perfusion: Schock oder Kreislaufstillstand?',
    'aneurysm-symptomatic': 'Verdacht auf symptomatisches oder rupturiertes Aortenaneurysma',
    dissection: 'Verdacht auf Aortendissektion',
    'stroke-now': 'Verdacht auf Schlaganfall',
    'access-bleeding': 'Dialyseshunt blutet oder droht zu bluten',
    'arterial-injury': 'Verdacht auf Arterienverletzung',
    'aortic-occlusion': 'Verdacht auf akuten Aortenverschluss (beide Beine)',
    'aneurysm-with-acute-limb': 'Aortenaneurysma mit akut ischämischem Bein',
    'popliteal-aneurysm-acute':
      'Verdacht auf thrombosiertes Poplitealaneurysma mit akuter Extremitätenischämie',
    'acute-limb-irreversible': 'Akute Extremitätenischämie wahrscheinlich, möglicherweise irreversibel',
    'acute-limb-threatened': 'Akute Extremitätenischämie wahrscheinlich, Extremität möglicherweise bedroht',
    'acute-limb': 'Verdacht auf akute Extremitätenischämie (ALI)',
    'graft-occlusion': 'Verdacht auf Bypass- oder Stentverschluss',
    'iatrogenic-hand': 'Handischämie nach arteriellem Zugang oder Katheter',
    'fixed-mottling': 'Fixierte (nicht wegdrückbare) Marmorierung',
    'compartment-syndrome': 'Verdacht auf Kompartmentsyndrom',
    'arterial-injury-possible': 'Arterienverletzung nicht ausgeschlossen',
    phlegmasia: 'Verdacht auf Phlegmasie (venöse Extremitätenischämie)',
    'graft-infection': 'Verdacht auf Bypassinfektion',
    'false-aneurysm': 'Verdacht auf falsches Aneurysma',
    'access-steal': 'Verdacht auf Shunt-Steal oder monomele Neuropathie',
    'cold-injury': 'Kälteschaden (Erfrierung)',
    'wet-gangrene': 'Feuchte Gangrän',
    'spreading-infection': 'Verdacht auf Sepsis, Infektion mit systemischen Entzündungszeichen (SIRS)',
    'diabetic-foot-emergency': 'Extremitätenbedrohendes diabetisches Fußproblem',
    'threatened-hand': 'Kritische digitale Ischämie',
    'neuro-deficit': 'Motorisches oder sensibles Defizit',
    'acute-limb-possible': 'Akute Extremitätenischämie (ALI) nicht ausgeschlossen',
    'no-doppler': 'Kein arterielles Dopplersignal an Fuß oder Handgelenk',
    'perfusion-poor': 'Stark verminderte Perfusion, chronisch',
    'aneurysm-possible': 'Verdacht auf Aneurysma',
    'popliteal-aneurysm-possible': 'Verdacht auf Poplitealaneurysma',
    'access-thrombosed': 'Verdacht auf Thrombose des Dialyseshunts',
    'digital-ischaemia': 'Verdacht auf digitale Embolie',
    'deep-infection': 'Tiefe oder sich ausbreitende Weichteilinfektion',
    'diabetic-foot-active': 'Aktives diabetisches Fußproblem',
    tia: 'Verdacht auf transitorische ischämische Attacke (TIA)',
    'chronic-limb-threat': 'Verdacht auf chronische extremitätenbedrohende Ischämie (CLTI)',
    'foot-ulcer-unproven': 'Ulkus, arterielle Verschlusskrankheit nicht geprüft',
    'ulnar-artery-hand': 'Verdacht auf Verschluss der A. ulnaris (Hypothenar-Hammer-Syndrom)',
    'threatening-pressure': 'Perfusionsdruck im Bereich einer bedrohten Extremität',
  },
  actions: {
    circulation:
      'Jetzt das Notfallteam rufen, nach dem örtlichen Pfad: erst den Kreislauf beurteilen, dann einen Verschluss lokalisieren.',
    'aneurysm-symptomatic':
      'Ruptur bis zum Beweis des Gegenteils: jetzt Notfall- und Gefäßteam rufen, nach dem örtlichen Aneurysma-Pfad.',
    dissection:
      'Notfallteam rufen; dringende Bildgebung und fachärztliche Beurteilung nach dem örtlichen Aorten-Pfad.',
    'stroke-now': 'Jetzt rufen, nach dem örtlichen Schlaganfall-Pfad.',
    'access-bleeding': 'Jetzt Notfall- und Shuntteam rufen, nach dem örtlichen Pfad.',
    'arterial-injury': 'Trauma- und Gefäßteam rufen, nach dem örtlichen Trauma-Pfad.',
    'aortic-occlusion':
      'Jetzt das Gefäßteam rufen, nach dem örtlichen Pfad für die akute Extremitätenischämie. Nicht für ein spinales Problem halten.',
    'acute-limb': 'Jetzt das Gefäßteam rufen; dem örtlichen Pfad für die akute Extremitätenischämie folgen.',
    'graft-occlusion': 'In dieser Zeit das Gefäßteam rufen oder dorthin überweisen, nach dem örtlichen Pfad.',
    'iatrogenic-hand': 'Gefäßteam und das Team rufen, das den Zugang gelegt hat, nach dem örtlichen Pfad.',
    'compartment-syndrome':
      'Orthopädisches oder chirurgisches Team rufen und einengende Verbände oder Gipse lösen, nach dem örtlichen Pfad. Pulse sind meist tastbar: nicht warten, bis sie fehlen.',
    'arterial-injury-possible':
      'Index messen und erneut untersuchen; Traumateam nach dem örtlichen Trauma-Pfad.',
    phlegmasia: 'Gefäßteam rufen, nach dem örtlichen Thrombose-Pfad.',
    'graft-infection': 'Gefäßteam rufen, nach dem örtlichen Pfad.',
    'false-aneurysm': 'Bildgebung und Gefäßteam, nach dem örtlichen Pfad.',
    'access-steal': 'Shuntteam rufen, nach dem örtlichen Pfad.',
    'cold-injury': 'Notfallteam, nach dem örtlichen Pfad für Kälteschäden.',
    'wet-gangrene': 'Jetzt das chirurgische oder das Gefäßteam rufen, nach dem örtlichen Pfad.',
    'spreading-infection': 'Jetzt als Notfall behandeln, nach dem örtlichen Sepsis-Pfad.',
    'diabetic-foot-emergency':
      'Sofort in die Akutversorgung einweisen und das interdisziplinäre Fußteam verständigen, nach dem örtlichen Pfad.',
    'threatened-hand': 'Gefäß- oder Rheumateam rufen, nach dem örtlichen Pfad.',
    'neuro-deficit':
      'Jetzt den Beginn klären; Schlaganfall-, spinaler oder Gefäß-Pfad je nach Befund. Wenn neu, die Extremität als möglicherweise ischämisch behandeln.',
    'acute-limb-possible':
      'Jetzt den Beginn klären. Liegt er weniger als 2 Wochen zurück, auch bei allmählichem Beginn, als Verdacht auf akute Extremitätenischämie nach dem örtlichen Pfad behandeln.',
    'no-doppler': 'Klären, ob es neu ist; Gefäßteam nach dem örtlichen Pfad.',
    'perfusion-poor': 'Gefäßmedizinische Überweisung, nach dem örtlichen Pfad.',
    'aneurysm-possible':
      'Bildgebung und gefäßmedizinische Beurteilung nach dem örtlichen Aneurysma-Pfad; bei Bauch-, Rücken- oder Extremitätenschmerz, Kollaps oder akuter Ischämie jetzt rufen.',
    'popliteal-aneurysm-possible':
      'Bildgebung nach dem örtlichen Aneurysma-Pfad; wird das Bein akut ischämisch, jetzt rufen.',
    'digital-ischaemia':
      'Gefäßteam, nach dem örtlichen Pfad: nach der Quelle suchen (Aorta, A. poplitea, Herz).',
    'deep-infection':
      'Beurteilung am selben Tag nach dem örtlichen chirurgischen Pfad; sofort einweisen, wenn Extremität oder Leben bedroht ist.',
    'diabetic-foot-active': 'In dieser Zeit an die Fußambulanz überweisen, nach dem örtlichen Pfad.',
    tia: 'Beurteilung am selben Tag, nach dem örtlichen Pfad für transitorische ischämische Attacken.',
    'chronic-limb-threat': 'Dringende gefäßmedizinische Überweisung, nach dem örtlichen Pfad.',
    'foot-ulcer-unproven':
      'ABI und Zehendruck messen und an Fuß- oder Gefäßambulanz überweisen, nach dem örtlichen Pfad.',
    'ulnar-artery-hand': 'An Gefäß- oder Handambulanz überweisen, nach dem örtlichen Pfad.',
  },
  teams: {
    vascular: 'Gefäßchirurgie',
    emergency: 'Notfallteam',
    aortic: 'Aortenteam',
    trauma: 'Traumateam',
    surgery: 'Chirurgie',
    access: 'Shuntteam',
    hand: 'Handchirurgie',
    foot: 'Fußambulanz',
    neurology: 'Neurologie',
    stroke: 'Stroke-Unit',
  },
  called: (team, time, whom) => `${team} gerufen: ${time}${whom ? ` (${whom})` : ''}`,
  stillMissing: (what) => `Noch nicht erfasst: ${what}.`,
  classIs: (rutherford) => `Akute Klasse: ${rutherford}.`,
  classOpen: (rutherford) => `Akute Klasse noch offen: ${rutherford}.`,
  window: (from, to) =>
    `Zeitfenster der Leitlinien für die Revaskularisation: ${from ? `${from} bis ` : ''}${to} Stunden. Gerufen wird sofort.`,
  since: (hours) => `${hours} h vom Beginn bis zur Untersuchung.`,
  abbreviations: {
    ankleIndex: { short: 'ABI', long: 'Knöchel-Arm-Index (ABI)' },
    toeIndex: { short: 'TBI', long: 'Zehen-Arm-Index (TBI)' },
    // What is in brackets needs no ending.
    oxygen: { short: 'tcpO₂', long: 'tcpO₂ (transkutaner Sauerstoffpartialdruck)' },
  },
  title: 'Warnzeichen',
  unread: 'Dieser Befund kann hier nicht gelesen werden. Er wurde nicht auf Warnzeichen geprüft.',
  unchecked: (count) =>
    count === 1
      ? '1 Eintrag einer neueren Version wurde nicht auf Warnzeichen geprüft.'
      : `${count} Einträge einer neueren Version wurden nicht auf Warnzeichen geprüft.`,
  sources: 'Quellen',
  cite: cited,
  caution:
    'Ausgelöst durch die erfassten Befunde; keine Diagnose. Was als Nächstes geschieht, entscheiden der örtliche Behandlungspfad und eine approbierte Fachkraft.',
};

export const flags = flagWordsFrom(inRegisters(trade, plainFlags), flagBar, {
  anatomy,
  groundWords,
  list,
  range,
  decimal,
  dates: 'de-DE',
});
