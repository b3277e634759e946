import { en, type Language } from '../../src/locale/index.js';
import { enParts } from '../../src/locale/parts.js';
import type { LanguageSamples } from './types.js';

export const english: LanguageSamples = {
  tag: 'en',
  english: 'English',
  load: () => Promise.resolve({ ...en, ...enParts } satisfies Language),
  foreign: new Set(
    'der die das und oder mit ohne nicht kein keine rechts links puls pulse(n) bein zehe'.split(' '),
  ),
  alike: new Set(),
  quoted: /“[^”]*”/g,
  wrongNumber: /\d,\d|\d %/,
  date: '1 May 2026',
  faults: {
    conflict: 'pulses › femoral › left: found "cast"; expected a grade or a reason, not both.',
    atLeastOne: 'at least 1 character',
  },
  figure: /^Arteries of the body/,
  block: 'Occlusion between left femoral and left popliteal',
  plain: {
    trade:
      /\b(occlu|stenos|palpa|infrapopliteal|crural|femoro-|aorto-|isch|oedem|bruit|thrill|claudic|\w*phasic|auscult|(dia)?systol|distal|proximal|incompetent|(in)?compressible|brachial|radial|ulnar|tibial|popliteal|femoral|iliac|carotid|pedis|pedal|embol|thrombos|aneurysm|gangren|necro|ulcer|dissection|vasculitis|collateral|lesion|ABPI|TBPI|TcPO|rubor|pallor|cyano|plethysm|paraesth|anaesth|hypertension|lymphoedema|arteriovenous|SIRS|haematoma|supine|dorsum|calcification|contraindicat)/i,
    sides: [/\bright\b/gi, /\bleft\b/gi],
  },
  notes:
    /from memory|common practice|no source|rule of thumb|recalled|(?<!clinician’s |your )judgement|our (own )?(choice|guess)|\bguess|TODO|FIXME|placeholder/i,
  chooser: { leftFemoral: 'Left femoral', folds: [/^Bruit$/, /^Could not examine/, /^Doppler signal/] },
};
