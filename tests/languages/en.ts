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
  chooser: { leftFemoral: 'Left femoral', folds: [/^Bruit$/, /^Could not examine/, /^Doppler signal/] },
};
