import type { SiteTable } from '../site-words.js';

/** Every site in words; `pulse` where its pulse in one word is not the name with "puls" at its end. */
// prettier-ignore
export const SITES: SiteTable<{ readonly pulse?: string }> = {
  'superficial-temporal': { name: 'Temporalis', code: 'TE', plain: { name: 'Schläfe' } },
  carotid: { name: 'Carotis', code: 'CA', plain: { name: 'Halsschlagader' } },
  subclavian: { name: 'Subclavia', code: 'SC', plain: { name: 'Schlüsselbeinarterie' } },
  axillary: { name: 'Axillaris', code: 'AX', plain: { name: 'Achselhöhle' } },
  brachial: { name: 'Brachialis', code: 'BR', plain: { name: 'Ellenbeuge' } },
  radial: { name: 'Radialis', code: 'RA', plain: { name: 'Daumenseite des Handgelenks' } },
  ulnar: { name: 'Ulnaris', code: 'UL', plain: { name: 'Kleinfingerseite des Handgelenks' } },
  'abdominal-aorta': { name: 'Bauchaorta', tiny: 'Aorta', pulse: 'Bauchaortenpuls', code: 'AO', plain: { name: 'Bauchschlagader' } },
  renal: { name: 'Renalis', code: 'RE', plain: { name: 'Nierenarterie' } },
  iliac: { name: 'Iliaca', code: 'IL', plain: { name: 'Beckenarterie' } },
  femoral: { name: 'Femoralis', code: 'FE', plain: { name: 'Leiste' } },
  'adductor-canal': { name: 'Adduktorenkanal', code: 'AK', plain: { name: 'Innenseite des Oberschenkels' } },
  popliteal: { name: 'Poplitea', code: 'PO', plain: { name: 'Kniekehle' } },
  'posterior-tibial': { name: 'Tibialis posterior', tiny: 'Tib. post.', pulse: 'Tibialis-posterior-Puls', code: 'TP', plain: { name: 'Innenseite des Knöchels', tiny: 'Innenknöchel' } },
  'dorsalis-pedis': { name: 'Dorsalis pedis', tiny: 'Dors. pedis', pulse: 'Dorsalis-pedis-Puls', code: 'DP', plain: { name: 'Oberseite des Fußes', tiny: 'Fußrücken' } },
};
