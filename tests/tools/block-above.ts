import { type ArteryId, type PulseSiteId, siteDefinition } from '../../src/anatomy/index.js';

/** Where the artery just above a site is not the one it lies on, since that one begins close to the site. */
const FED_BY: Readonly<Partial<Record<PulseSiteId, ArteryId>>> = {
  femoral: 'external-iliac',
  popliteal: 'superficial-femoral',
  'dorsalis-pedis': 'anterior-tibial',
};

/** The artery in which the bedside rule puts a block when this is the first absent pulse: the one just above it. */
export function blockAbove(site: PulseSiteId): ArteryId {
  return FED_BY[site] ?? siteDefinition(site).artery;
}
