import { PULSE_SITE_IDS, siteDefinition, type SiteId } from '../../anatomy/index.js';
import type { Meaning, Strength } from '../meanings.js';

/** Shorthands by which the lexicons of all languages build their entries. */
export const site = (...sites: SiteId[]): Meaning => ({ is: 'site', sites });
export const sites = (...all: SiteId[]): Meaning => ({ is: 'site', sites: all, plural: true });
export const grade = (strength: Strength): Meaning => ({ is: 'grade', grade: strength });
export const FOOT: Meaning = { is: 'site', sites: ['posterior-tibial', 'dorsalis-pedis'], foot: true };
export const WRIST: Meaning = { is: 'site', sites: ['radial', 'ulnar'] };

/** The pulses that "all pulses" of a limb means, proximal to distal: common practice, no source. */
export const ALL_OF = {
  leg: PULSE_SITE_IDS.filter((id) => siteDefinition(id).region === 'leg'),
  arm: PULSE_SITE_IDS.filter((id) => siteDefinition(id).region === 'arm' && id !== 'subclavian'),
};

/** Anatomical names and abbreviations that are the same in every language, and the signs. */
export const LATIN: readonly (readonly [Meaning, string])[] = [
  [
    site('femoral'),
    'fem|femoral|femoralis|femoral artery|femoralis communis|arteria femoralis|arteria femoralis communis|a femoralis|a fem|a femoralis communis|a fem com|a fem comm|art fem|art femoralis|cfa|afc|cfv|fem communis',
  ],
  [
    site('popliteal'),
    'pop|popl|poplit|popliteal|poplitea|popliteal artery|arteria poplitea|a poplitea|a popl|a pop|apop|apo|art poplitea|art popl|popa',
  ],
  [
    site('posterior-tibial'),
    'pt|pta|tp|atp|tip|tibp|tib post|post tib|posttib|posterior tib|tibial post|tibialis posterior|tibialis post|tib posterior|posterior tibial|posterior tibialis|post tibial|tibial posterior|posterior tibial artery|a tibialis posterior|a tib post|a tib posterior|a tibialis post|arteria tibialis posterior|art tib post|art tibialis posterior|a tib p|tib p',
  ],
  [
    site('dorsalis-pedis'),
    'dp|dpa|adp|dors ped|dors pedis|dorsalis ped|dorsalis pedis|dorsalis pedis artery|dorsalispedis|dorsal pedis|dorsal pedal|a dorsalis pedis|a dors ped|a dors pedis|a dorsalis ped|arteria dorsalis pedis|art dors ped|art dorsalis pedis|a d p|dors p',
  ],
  [site('axillary'), 'ax|axill|axillary|axillaris|axilla|a axillaris|arteria axillaris|a ax'],
  [site('brachial'), 'brach|brachial|brachialis|a brachialis|arteria brachialis|a brach|brachial artery'],
  [site('radial'), 'rad|radial|radialis|a radialis|arteria radialis|a rad|radial artery'],
  [site('ulnar'), 'uln|ulnar|ulnaris|a ulnaris|arteria ulnaris|a uln|ulnar artery'],
  [
    site('subclavian'),
    'subcl|subclav|subclavian|subclavia|a subclavia|arteria subclavia|a subcl|subclavian artery',
  ],
  [
    site('carotid'),
    'carotid|carotis|karotis|carot|a carotis|arteria carotis|a carotis communis|carotis communis|a carotis interna|carotis interna|carotid artery|cca|ica|aci|acc|carotid bulb',
  ],
  [
    site('superficial-temporal'),
    'superficial temporal|temporalis superficialis|a temporalis|a temporalis superficialis|temporalis|temporal artery',
  ],
  [site('abdominal-aorta'), 'aorta|abdominal aorta|aorta abdominalis'],
  [site('renal'), 'renal|renalis|a renalis|renal artery'],
  [
    site('iliac'),
    'iliac|iliaca|a iliaca|a iliaca externa|a iliaca communis|iliaca externa|iliaca communis|iliac artery|eia|cia|aie|aic',
  ],
  [site('adductor-canal'), 'sfa|afs|adductor canal|a femoralis superficialis|femoralis superficialis'],
  [sites('femoral'), 'aa femorales|femorales'],
  [sites('popliteal'), 'aa popliteae|popliteae'],
  [sites('radial'), 'aa radiales|radiales'],
  [sites('carotid'), 'aa carotides|carotides'],
  [sites('posterior-tibial'), 'aa tibiales posteriores|aa tib post'],
  [sites('dorsalis-pedis'), 'aa dorsales pedis|aa dors ped'],
  [{ is: 'letter', sites: ['femoral'] }, 'f'],
  [{ is: 'letter', sites: ['popliteal'] }, 'p|ap'],
  [{ is: 'letter', sites: ['dorsalis-pedis'] }, 'd'],
  [{ is: 'letter', sites: ['posterior-tibial'] }, 't'],
  [grade('absent'), 'ø|o̸'],
  [grade('present'), '✓|✔'],
  [{ is: 'same' }, 'dito|ditto|dto|idem|id'],
  [{ is: 'doppler' }, 'doppler'],
];
