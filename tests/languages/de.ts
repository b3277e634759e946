import type { LanguageSamples } from './types.js';

/** English words that are no German ones in any spelling. */
const FOREIGN = `the of and or to with without not no is are by at on for from after before above below between beyond than this that
  left right side both pulses felt heard block blocked narrowing narrowed open artery arteries site sites leg foot ankle
  toe toes thigh calf knee skin pain wound ulcer pressure limit hour hours minutes day days seconds femoral popliteal tibial
  radial ulnar brachial carotid subclavian axillary iliac renal palmar aortic absent reduced bounding systolic continuous
  nothing examined recorded found expected clear limb limbs stage blood flow vein veins`;
/** Words spelt alike in both languages, names of works among them. */
const ALIKE = `xyz normal doppler mm statin arm arms hand finger warm symptom start diabetes bypass stent amputation compression stents
  r l s h m cm min mmhg kpa x esc parc tasc ii iwgdf acc aha global vascular guidelines rutherford fontaine wifi iib iia iii iv i
  dorsalis dors pedis medial lateral aorta truncus brachiocephalicus t e b a d ax br ca sc ra ul ao re il fe po dp`;

export const german: LanguageSamples = {
  tag: 'de',
  english: 'German',
  load: async () => (await import('../../src/locale/de/register.js')).de,
  foreign: new Set(FOREIGN.split(/\s+/)),
  alike: new Set(ALIKE.split(/\s+/)),
  quoted: /„[^“]*“/g,
  // A date is no number: 01.05.2026.
  wrongNumber: /(?<![\d.])\d+\.\d+(?!\d|\.\d)|\d%/,
  date: '1. Mai 2026',
  faults: {
    conflict: 'pulses › femoral › left: gefunden "cast"; erwartet ein Grad oder ein Grund, nicht beides.',
    atLeastOne: 'mindestens 1 Zeichen',
  },
  figure: /^Arterien des Körpers/,
  block: 'Verschluss zwischen Femoralis links und Poplitea links',
  plain: {
    trade:
      /okklu|stenos|palpa|palpier|infrapopliteal|krural|femoro|aortoil|ischäm|Ödem|claudic|phasisch|auskult|systol|distal|proximal|insuffizien|komprimierbar|brachial|radialis|ulnaris|tibial|poplite|femoral|iliac|carotis|pedis|embol|thrombos|aneurysm|gangrän|nekros|ulkus|ulzer|dissektion|vaskulitis|kollateral|läsion|\bABI\b|\bTBI\b|tcpO|rubor|zyanos|plethysm|parästhes|anästhes|hyperton|lymphödem|arterioven|SIRS|hämatom|mediaskler|kontraindiz|suprakond/i,
    sides: [/\brechts\b|\brecht(e|er|es|en|em)\b/gi, /\blinks\b|\blink(e|er|es|en|em)\b/gi],
  },
  notes:
    /aus dem Gedächtnis|gängige Praxis|ohne Quelle|keine Quelle|Faustregel|(?<!ärztliche |ärztlichem |Ihrem )\bUrteil\b|Ermessen|geraten|unsere (eigene )?Wahl|TODO|FIXME|Platzhalter|noch zu prüfen, ob/i,
  chooser: { leftFemoral: 'Femoralis links', folds: [/^Geräusch$/, /^Nicht beurteilbar/, /^Dopplersignal/] },
};
