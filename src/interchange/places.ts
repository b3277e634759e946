import {
  type ArteryId,
  arteryCodings,
  type Laterality,
  SITE_IDS,
  siteDefinition,
  type SiteId,
} from '../anatomy/index.js';
import type { Json } from '../examination/index.js';
import { EXTENSIONS, SNOMED, SYSTEMS } from './codes.js';
import { type CodeAndSystem, concept, element, legible } from './resource.js';

export function isSite(name: string): name is SiteId {
  return SITE_IDS.includes(name as SiteId);
}

const ARM =
  /^pressures\.(afterExercise\.)?(brachial|radial|ulnar|finger)$|\.arm(\.|$)|^context\.arm|^bedside\.(hand-arch|cold-provocation|scalene|hyperabduction|costoclavicular|arm-stress)(\.|$)/;
const LEG = /^pressures\.|\.leg(\.|$)|^context\.(leg|absentFromBirth)|^bedside\./;

/** The limb that a sided part of the record, or what is derived of one, is about. */
export function limbAt(code: string): 'arm' | 'leg' | 'head' | undefined {
  if (code === 'inspection.head') return 'head';
  if (ARM.test(code)) return 'arm';
  return LEG.test(code) ? 'leg' : undefined;
}

/** The artery at which a part of the record was felt, heard or measured. */
export function arteryAt(code: string): ArteryId | undefined {
  const [part, ...names] = code.split('.');
  const site = names.at(-1) ?? '';
  if (part === 'pulses' || part === 'bruits') return isSite(site) ? siteDefinition(site).artery : undefined;
  const isArtery = ['brachial', 'radial', 'ulnar', 'dorsalis-pedis', 'posterior-tibial'].includes(site);
  return part === 'pressures' && isArtery ? (site as ArteryId) : undefined;
}

/** How this library names a place: the side, then the site or limb. */
export function ownPlace(code: string, side: Laterality): string {
  const [part, site] = code.split('.');
  const named = part === 'pulses' || part === 'bruits' ? site : limbAt(code);
  return named ? `${side} ${named}` : side;
}

const isSided = (coding: CodeAndSystem, artery: ArteryId): boolean =>
  coding.system === SYSTEMS.snomed && coding.code !== arteryCodings(artery, 'midline')[0]?.code;

/** The side as an extension of a `bodySite` whose published codes do not have it. */
function laterality(side: 'right' | 'left', text: string, snomed: boolean): Json {
  const own = { system: SYSTEMS.place, code: side };
  const codings = snomed ? [{ system: SYSTEMS.snomed, code: SNOMED[side] }, own] : [own];
  return [{ url: EXTENSIONS.laterality, valueCodeableConcept: concept(codings, text) }];
}

/**
 * The `bodySite` of a part of the record.
 * @param words the place, and the side alone, as a person reads them
 */
export function bodySite(
  code: string,
  side: Laterality,
  words: { readonly place: string; readonly side: string },
  { snomed }: { readonly snomed: boolean },
): Json {
  const artery = arteryAt(code);
  const published: CodeAndSystem[] = artery ? arteryCodings(artery, side, { snomed }) : [];
  if (code === 'pressures.toe' && snomed) published.push({ system: SYSTEMS.snomed, code: SNOMED.toe });
  const hasSide =
    side === 'midline' || published.some((coding) => artery !== undefined && isSided(coding, artery));
  return element({
    extension: hasSide ? undefined : laterality(side, words.side, snomed),
    coding: [...published, { system: SYSTEMS.place, code: ownPlace(code, side) }] as unknown as Json,
    text: legible(words.place),
  }) as Json;
}
