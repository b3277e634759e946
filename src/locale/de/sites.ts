import type { SiteTable } from '../site-words.js';

/** Every site in words; `pulse` where its pulse in one word is not the name with "puls" at its end. */
// prettier-ignore
export const SITES: SiteTable<{ readonly pulse?: string }> = {
  'superficial-temporal': { name: 'Temporalis', code: 'TE', technique: 'Vor dem Ohr, knapp über dem Jochbogen, mit leichter Fingerkuppe.' },
  carotid: { name: 'Carotis', code: 'CA', technique: 'Neben dem Kehlkopf, vor dem Kopfnicker; sanft, tief am Hals, nie beide Seiten zugleich.' },
  subclavian: { name: 'Subclavia', code: 'SC', technique: 'Hinter der Mitte des Schlüsselbeins, nach unten gegen die erste Rippe gedrückt.' },
  axillary: { name: 'Axillaris', code: 'AX', technique: 'Hoch in der Achselhöhle, nach außen gegen den Oberarmknochen gedrückt.' },
  brachial: { name: 'Brachialis', code: 'BR', technique: 'Innen neben der Bizepssehne, in der Beuge des gestreckten Ellenbogens.' },
  radial: { name: 'Radialis', code: 'RA', technique: 'Am Handgelenk auf der Daumenseite, zwischen Knochen und Beugesehne.' },
  ulnar: { name: 'Ulnaris', code: 'UL', technique: 'Am Handgelenk auf der Kleinfingerseite, gleich außen neben der Beugesehne.' },
  'abdominal-aorta': { name: 'Bauchaorta', tiny: 'Aorta', pulse: 'Bauchaortenpuls', code: 'AO', technique: 'Über dem Nabel, etwas links, in der Tiefe; beidseits eine Hand, um die Breite abzuschätzen.' },
  renal: { name: 'Renalis', code: 'RE', technique: 'Stethoskop eine Handbreit über dem Nabel, zwei Finger neben der Mittellinie.' },
  iliac: { name: 'Iliaca', code: 'IL', technique: 'Stethoskop auf halbem Weg zwischen Nabel und Leistenmitte.' },
  femoral: { name: 'Femoralis', code: 'FE', technique: 'In der Leiste knapp unter dem Band, mitten zwischen Darmbeinstachel und Schambeinfuge.' },
  'adductor-canal': { name: 'Adduktorenkanal', code: 'AK', technique: 'Stethoskop innen am Oberschenkel, eine Handbreit über dem Knie.' },
  popliteal: { name: 'Poplitea', code: 'PO', technique: 'Knie leicht gebeugt, die Fingerkuppen beider Hände tief in der Kniekehle.' },
  'posterior-tibial': { name: 'Tibialis posterior', tiny: 'Tib. post.', pulse: 'Tibialis-posterior-Puls', code: 'TP', technique: 'Hinter dem Innenknöchel, ein Drittel des Wegs zur Ferse.' },
  'dorsalis-pedis': { name: 'Dorsalis pedis', tiny: 'Dors. pedis', pulse: 'Dorsalis-pedis-Puls', code: 'DP', technique: 'Auf dem Fußrücken, gleich außen neben der Großzehensehne, leicht.' },
};
