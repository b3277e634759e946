import type { SiteTable } from '../site-words.js';

/** What every site is called. */
// prettier-ignore
export const SITES: SiteTable = {
  'superficial-temporal': { name: 'superficial temporal', short: 'Temporal', code: 'ST', plain: { name: 'temple' } },
  carotid: { name: 'carotid', code: 'CA', plain: { name: 'neck' } },
  subclavian: { name: 'subclavian', code: 'SC', plain: { name: 'collarbone' } },
  axillary: { name: 'axillary', code: 'AX', plain: { name: 'armpit' } },
  brachial: { name: 'brachial', code: 'BR', plain: { name: 'elbow crease' } },
  radial: { name: 'radial', code: 'RA', plain: { name: 'wrist, thumb side' } },
  ulnar: { name: 'ulnar', code: 'UL', plain: { name: 'wrist, little-finger side' } },
  'abdominal-aorta': { name: 'abdominal aorta', short: 'Aorta', code: 'AO', plain: { name: 'main artery of the belly' } },
  renal: { name: 'renal', code: 'RE', plain: { name: 'kidney artery' } },
  iliac: { name: 'iliac', code: 'IL', plain: { name: 'lower belly' } },
  femoral: { name: 'femoral', code: 'FE', plain: { name: 'groin' } },
  'adductor-canal': { name: 'adductor canal', code: 'AC', plain: { name: 'inner thigh' } },
  popliteal: { name: 'popliteal', code: 'PO', plain: { name: 'hollow of the knee' } },
  'posterior-tibial': { name: 'posterior tibial', tiny: 'Post. tibial', code: 'PT', plain: { name: 'inner ankle', tiny: 'Inner ankle' } },
  'dorsalis-pedis': { name: 'dorsalis pedis', tiny: 'Dors. pedis', code: 'DP', plain: { name: 'top of the foot', tiny: 'Foot top' } },
};
