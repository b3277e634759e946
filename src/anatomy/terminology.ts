import type { ArteryId } from './arteries.js';
import type { Laterality } from './sides.js';

/** Identifiers of an artery in open terminologies. What was not found in a published standard text is left out. */
export interface ArteryCodes {
  readonly uberon?: string;
  readonly fma?: string;
  readonly snomed?: { readonly structure: string; readonly right?: string; readonly left?: string };
}

/**
 * Codes by artery.
 * Sources: UBERON edit file and circulatory subset (CC BY 3.0); FMA identifiers as printed in the HRA-VCCF vessel table
 * (CC BY 4.0); SNOMED CT identifiers as printed in the DICOM PS3.16 context groups and the HL7 vital-signs value sets.
 * UBERON and FMA of vertebral and internal thoracic are from memory.
 * Both parts of the abdominal aorta carry the codes of the whole. The femoral pulse site carries SNOMED CT "Femoral artery", as DICOM
 * CID 3440 does, since the code printed for the common femoral artery is probably an "Entire" concept; for the
 * superficial femoral artery none is given for the same reason.
 * Using SNOMED CT in a product needs a licence in some countries: `arteryCodings` leaves it out on request.
 */
export const ARTERY_CODES: Readonly<Record<ArteryId, ArteryCodes>> = {
  'ascending-aorta': { uberon: 'UBERON:0001496', fma: 'FMA:3736', snomed: { structure: '54247002' } },
  'aortic-arch': { uberon: 'UBERON:0001508', fma: 'FMA:3768', snomed: { structure: '57034009' } },
  brachiocephalic: { uberon: 'UBERON:0001529', fma: 'FMA:3932', snomed: { structure: '12691009' } },
  'common-carotid': {
    uberon: 'UBERON:0001530',
    fma: 'FMA:3939',
    snomed: { structure: '32062004', right: '65355003', left: '113263003' },
  },
  'internal-carotid': { uberon: 'UBERON:0001532', fma: 'FMA:3947', snomed: { structure: '86117002' } },
  'external-carotid': { uberon: 'UBERON:0001070', fma: 'FMA:10635', snomed: { structure: '22286001' } },
  'superficial-temporal': { uberon: 'UBERON:0001614', fma: 'FMA:49650', snomed: { structure: '15672000' } },
  subclavian: { uberon: 'UBERON:0001533', fma: 'FMA:3951', snomed: { structure: '36765005' } },
  vertebral: { uberon: 'UBERON:0001535', fma: 'FMA:3956', snomed: { structure: '85234005' } },
  'internal-thoracic': { uberon: 'UBERON:0002456', fma: 'FMA:3960', snomed: { structure: '69327007' } },
  axillary: { uberon: 'UBERON:0001394', fma: 'FMA:22654', snomed: { structure: '67937003' } },
  brachial: {
    uberon: 'UBERON:0001398',
    fma: 'FMA:22689',
    snomed: { structure: '17137000', right: '723962009', left: '723961002' },
  },
  radial: {
    uberon: 'UBERON:0001404',
    fma: 'FMA:22730',
    snomed: { structure: '45631007', right: '368503001', left: '368504007' },
  },
  ulnar: {
    uberon: 'UBERON:0001406',
    fma: 'FMA:22796',
    snomed: { structure: '44984001', right: '368505008', left: '368506009' },
  },
  'deep-palmar-arch': { fma: 'FMA:22838', snomed: { structure: '10119003' } },
  'superficial-palmar-arch': {
    uberon: 'UBERON:0006564',
    fma: 'FMA:22834',
    snomed: { structure: '26818002' },
  },
  'thoracic-aorta': { uberon: 'UBERON:0002345', fma: 'FMA:87217', snomed: { structure: '32672002' } },
  'suprarenal-aorta': { uberon: 'UBERON:0001516', fma: 'FMA:3789', snomed: { structure: '7832008' } },
  renal: { uberon: 'UBERON:0001184', fma: 'FMA:14751', snomed: { structure: '2841007' } },
  'infrarenal-aorta': { uberon: 'UBERON:0001516', fma: 'FMA:3789', snomed: { structure: '7832008' } },
  'common-iliac': { uberon: 'UBERON:0001191', fma: 'FMA:14764', snomed: { structure: '73634005' } },
  'internal-iliac': { uberon: 'UBERON:0001309', fma: 'FMA:18808', snomed: { structure: '90024005' } },
  'external-iliac': { uberon: 'UBERON:0001308', fma: 'FMA:18805', snomed: { structure: '113269004' } },
  'common-femoral': {
    fma: 'FMA:323778',
    snomed: { structure: '7657000', right: '69833005', left: '113270003' },
  },
  'deep-femoral': { uberon: 'UBERON:0001355', fma: 'FMA:20741', snomed: { structure: '31677005' } },
  'superficial-femoral': { fma: 'FMA:323777' },
  popliteal: {
    uberon: 'UBERON:0002250',
    fma: 'FMA:77155',
    snomed: { structure: '43899006', right: '57832007', left: '25885001' },
  },
  'anterior-tibial': { uberon: 'UBERON:0001537', fma: 'FMA:43894', snomed: { structure: '68053000' } },
  'dorsalis-pedis': {
    uberon: 'UBERON:0001539',
    fma: 'FMA:43915',
    snomed: { structure: '86547008', right: '792816004', left: '792817008' },
  },
  'tibioperoneal-trunk': { fma: 'FMA:66421' },
  'posterior-tibial': {
    uberon: 'UBERON:0001538',
    fma: 'FMA:43895',
    snomed: { structure: '13363002', right: '214811007', left: '214912001' },
  },
  peroneal: { uberon: 'UBERON:0001540', fma: 'FMA:43921', snomed: { structure: '8821006' } },
  'plantar-arch': { fma: 'FMA:43942', snomed: { structure: '83018002' } },
};

/** The URIs that identify each terminology in a coding. */
export const CODE_SYSTEMS = {
  uberon: 'http://purl.obolibrary.org/obo/uberon.owl',
  fma: 'http://purl.org/sig/ont/fma.owl',
  snomed: 'http://snomed.info/sct',
} as const;
export type CodeSystem = keyof typeof CODE_SYSTEMS;

export interface Coding {
  readonly system: string;
  readonly code: string;
}

/**
 * The codings of an artery on one side, the sided SNOMED CT code first where one is published.
 * @param options.snomed false leaves SNOMED CT out (licence)
 */
export function arteryCodings(
  artery: ArteryId,
  side: Laterality,
  options: { snomed?: boolean } = {},
): Coding[] {
  const { uberon, fma, snomed } = ARTERY_CODES[artery];
  const codings: Coding[] = [];
  if (snomed && options.snomed !== false) {
    const sided = side === 'midline' ? undefined : snomed[side];
    codings.push({ system: CODE_SYSTEMS.snomed, code: sided ?? snomed.structure });
  }
  if (uberon) codings.push({ system: CODE_SYSTEMS.uberon, code: uberon });
  if (fma) codings.push({ system: CODE_SYSTEMS.fma, code: fma });
  return codings;
}
