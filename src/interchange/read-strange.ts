import { isPulseSite, type Laterality, siteDefinition, type SiteId } from '../anatomy/index.js';
import { type Json, PRESSURE_SITES, type Reason, REASONS, type RecordPath } from '../examination/index.js';
import { type BodySite, readBodySite, siteOn } from './body-site.js';
import { LOINC, SNOMED, SYSTEMS } from './codes.js';
import { joined, type Reading, unread } from './found.js';
import { limbAt } from './places.js';
import { at, codesIn, isElement, listAt, textAt } from './resource.js';
import { readNumeral, readStrength } from './strength.js';
import { valueNames } from './values.js';

/*
 * Observations of other programs, by the published codes that this library writes, too. What leaves a doubt is not read.
 */

const KNOWN = new Set(
  'resourceType id meta language text identifier status category code subject encounter effectiveDateTime _effectiveDateTime issued performer bodySite method interpretation note component hasMember derivedFrom basedOn partOf dataAbsentReason'.split(
    ' ',
  ),
);

/** Elements that no reader below looks at. */
function strangeParts(own: Json, path: string, read: readonly string[]): Reading {
  const names = isElement(own) ? Object.keys(own) : [];
  const left = names.filter(
    (name) =>
      (!KNOWN.has(name) && !/^_?value[A-Z]/.test(name)) ||
      (['note', 'component'].includes(name) && !read.includes(name)),
  );
  return joined(left.map((name) => unread(`${path}.${name}`, 'not-kept')));
}

function sideOf({ sides }: BodySite, path: string): Laterality | Reading {
  const [side] = sides;
  if (side === undefined) return unread(`${path}.bodySite`, 'no-side');
  return sides.length > 1 ? unread(`${path}.bodySite`, 'sides-differ') : side;
}

/** The site that a `bodySite` names, when all that it says agrees. */
function siteIn({ places, site }: BodySite): SiteId | undefined {
  const sites = new Set([...places.map(({ artery }) => siteOn(artery)), ...(site ? [site] : [])]);
  return sites.size === 1 ? [...sites][0] : undefined;
}

/** A reason that the record knows, in words or as a code of this library. */
function reasonIn(absent: unknown): Reason | undefined {
  const text = (textAt(absent, 'text') ?? '').trim().toLowerCase();
  return REASONS.find((reason) => reason === text && reason !== 'other');
}

function readPulse(own: Json, path: string): Reading {
  const bodySite = readBodySite(at(own, 'bodySite'));
  const site = siteIn(bodySite);
  if (site === undefined || !isPulseSite(site)) return unread(`${path}.bodySite`, 'no-place');
  const isMidline = siteDefinition(site).occurs === 'midline';
  const side = isMidline && bodySite.sides.length === 0 ? 'midline' : sideOf(bodySite, path);
  if (typeof side !== 'string') return side;
  if (isMidline !== (side === 'midline')) return unread(`${path}.bodySite`, 'sides-differ');
  const method = codesIn(at(own, 'method'), SYSTEMS.snomed);
  if (method.some((code) => code !== SNOMED.palpation)) return unread(`${path}.method`, 'not-understood');
  const place: RecordPath = ['pulses', site, side];
  const rest = strangeParts(own, path, ['note']);
  const notes = listAt(own, 'note').flatMap((note) => textAt(note, 'text') ?? []);
  const note = notes.length
    ? [{ path: [...place, 'note'], value: notes.join('\n'), at: `${path}.note` }]
    : [];
  const names = valueNames(own);
  const absent = at(own, 'dataAbsentReason');
  if (absent !== undefined) {
    const reason = names.length ? undefined : reasonIn(absent);
    if (!reason) return unread(`${path}.dataAbsentReason`, names.length ? 'contradicts' : 'no-reason');
    return joined([
      {
        found: [
          ...note,
          { path: [...place, 'couldNotExamine'], value: reason, at: `${path}.dataAbsentReason` },
        ],
        unread: [],
      },
      rest,
    ]);
  }
  if (names.length !== 1) return unread(path, names.length ? 'contradicts' : 'not-understood');
  const [name = ''] = names;
  const strength =
    name === 'valueCodeableConcept'
      ? readStrength(at(own, name))
      : name === 'valueString'
        ? readStrength({ text: at(own, name) })
        : readNumeral(own);
  if (!strength) return unread(`${path}.${name}`, 'scale');
  const means = listAt(own, 'interpretation').flatMap((one) => codesIn(one, SYSTEMS.interpretation));
  const isOdd = means.some(
    (code) => (code === 'ND' && strength.grade !== 'absent') || (code === 'N' && strength.grade !== 'normal'),
  );
  if (isOdd) return unread(`${path}.interpretation`, 'contradicts');
  return joined([
    {
      found: [
        { path: [...place, 'grade'], value: strength.grade, at: `${path}.${name}` },
        ...(strength.scale ? [{ path: ['scale'], value: strength.scale, at: `${path}.${name}` }] : []),
        ...note,
      ],
      unread: [],
    },
    rest,
  ]);
}

/** A quantity in one of some units; a number, or why it is none. */
function amount(own: unknown, path: string, units: readonly string[]): number | Reading {
  const names = valueNames(own);
  const value = at(own, 'valueQuantity');
  const number = at(value, 'value');
  if (names.length !== 1 || typeof number !== 'number' || at(value, 'comparator') !== undefined)
    return unread(`${path}.${names[0] ?? 'dataAbsentReason'}`, names.length ? 'not-understood' : 'no-reason');
  const system = textAt(value, 'system');
  const unit = textAt(value, 'code') ?? textAt(value, 'unit') ?? '';
  return units.includes(unit) && (system === undefined || system === SYSTEMS.ucum)
    ? number
    : unread(`${path}.valueQuantity`, 'unit');
}

const MMHG = ['mm[Hg]', 'mmHg'];

function readAmount(own: Json, path: string, of: RecordPath, units: readonly string[]): Reading {
  const value = amount(own, path, units);
  return typeof value === 'number'
    ? { found: [{ path: of, value, at: `${path}.valueQuantity` }], unread: [] }
    : value;
}

/** A systolic pressure: at an artery that the record has, or of the circulation where no place is named. */
function readSystolic(own: Json, path: string): Reading {
  if (at(own, 'bodySite') === undefined)
    return joined([readAmount(own, path, ['circulation', 'systolic'], MMHG), strangeParts(own, path, [])]);
  const bodySite = readBodySite(at(own, 'bodySite'));
  const parts = bodySite.places.map(({ part }) => part);
  if (parts.includes('ankle')) return unread(`${path}.bodySite`, 'which-artery');
  const named = parts.includes('upper-arm') ? 'brachial' : parts.includes('toe') ? 'toe' : siteIn(bodySite);
  const site = PRESSURE_SITES.find((one) => one === named);
  if (!site) return unread(`${path}.bodySite`, 'no-place');
  const limb = limbAt(`pressures.${site}`) === 'arm' ? 'arm' : 'leg';
  if (isOtherLimb(at(own, 'bodySite'), limb)) return unread(`${path}.bodySite`, 'contradicts');
  const side = sideOf(bodySite, path);
  if (typeof side !== 'string') return side;
  return joined([readAmount(own, path, ['pressures', site, side], MMHG), strangeParts(own, path, [])]);
}

const COMPONENTS: Readonly<Record<string, RecordPath>> = {
  [LOINC.systolic]: ['circulation', 'systolic'],
  [LOINC.diastolic]: ['circulation', 'diastolic'],
};

const LIMB_WORDS: Readonly<Record<'arm' | 'leg', RegExp>> = {
  arm: /\b(arm|forearm|oberarm|wrist|hand|finger|brachial|radial|ulnar)/i,
  leg: /\b(leg|ankle|foot|toe|thigh|calf|tibial|pedis|pedal|popliteal|femoral|bein|kn\u00f6chel|fu\u00df|zeh|wade)/i,
};

/** Whether the text of a place names the other limb than its codes. */
function isOtherLimb(bodySite: unknown, limb: 'arm' | 'leg'): boolean {
  const text = (textAt(bodySite, 'text') ?? '').slice(0, 200);
  return LIMB_WORDS[limb === 'arm' ? 'leg' : 'arm'].test(text) && !LIMB_WORDS[limb].test(text);
}

/** "Right arm" and the like, in which no more is said than that it was an arm. */
const UPPER_ARM =
  /^\W*((right|left|rechter|linker)\W+)?(upper\W+arm|arm|oberarm)(\W+(right|left|rechts|links))?\W*$/i;

/**
 * Why a blood pressure is not that of the circulation: it was measured elsewhere than at an upper arm. Of one that was, the record keeps no
 * arm, which is told.
 */
function cuffPlace(own: Json, path: string): { readonly isRead: boolean; readonly told: Reading } {
  const bodySite = at(own, 'bodySite');
  if (bodySite === undefined) return { isRead: true, told: joined([]) };
  const where = `${path}.bodySite`;
  const read = readBodySite(bodySite);
  const parts = read.places.map(({ part, artery }) => part ?? artery);
  const isAnkle = parts.includes('ankle');
  const isArm = parts.length
    ? parts.every((one) => one === 'upper-arm' || one === 'brachial')
    : UPPER_ARM.test((textAt(bodySite, 'text') ?? '').slice(0, 200)) || read.site === 'brachial';
  if (!isArm) return { isRead: false, told: unread(where, isAnkle ? 'which-artery' : 'no-place') };
  if (isOtherLimb(bodySite, 'arm')) return { isRead: false, told: unread(where, 'contradicts') };
  if (read.sides.length > 1) return { isRead: false, told: unread(where, 'sides-differ') };
  return { isRead: true, told: unread(where, 'not-kept') };
}

function readBloodPressure(own: Json, path: string): Reading {
  const { isRead, told } = cuffPlace(own, path);
  if (!isRead) return told;
  const components = listAt(own, 'component').map((component, i) => {
    const place = `${path}.component[${i}]`;
    const [code] = codesIn(at(component, 'code'), SYSTEMS.loinc).flatMap((one) =>
      Object.hasOwn(COMPONENTS, one) ? [one] : [],
    );
    return code === undefined
      ? unread(place, 'unknown-code')
      : readAmount(component, place, COMPONENTS[code] as RecordPath, MMHG);
  });
  return joined([...components, told, strangeParts(own, path, ['component'])]);
}

/** Where a refill is taken that the record keeps; a nail alone says no limb. */
const DIGIT_WORDS: typeof LIMB_WORDS = {
  arm: /\b(hand|finger|thumb|daumen)/i,
  leg: /\b(foot|forefoot|toe|hallux|zeh|gro\u00dfzeh|fu\u00df|vorfu\u00df)/i,
};

/** Capillary refill of a hand or foot; one of the chest or of nowhere is no finding of a limb. */
function readRefill(own: Json, path: string): Reading {
  const where = `${path}.bodySite`;
  const bodySite = at(own, 'bodySite');
  const named = readBodySite(bodySite);
  const text = (textAt(bodySite, 'text') ?? '').slice(0, 200);
  const isElsewhere = named.site !== undefined || named.places.some(({ part }) => part !== 'toe');
  const limbs = (['leg', 'arm'] as const).filter(
    (limb) => DIGIT_WORDS[limb].test(text) || (limb === 'leg' && named.places.length > 0),
  );
  const [limb] = limbs;
  if (limb === undefined || isElsewhere) return unread(where, 'no-place');
  if (limbs.length > 1) return unread(where, 'contradicts');
  const side = sideOf(named, path);
  if (typeof side !== 'string') return side;
  return joined([
    readAmount(own, path, ['inspection', limb, side, 'refill'], ['s']),
    strangeParts(own, path, []),
  ]);
}

const READERS: Readonly<Record<string, (own: Json, path: string) => Reading>> = {
  [LOINC.pulse]: readPulse,
  [LOINC.systolic]: readSystolic,
  [LOINC.bloodPressure]: readBloodPressure,
  [LOINC.refill]: readRefill,
  [LOINC.heartRate]: (own, path) =>
    joined([
      readAmount(own, path, ['circulation', 'heartRate'], ['/min', '{beats}/min', 'beats/min']),
      at(own, 'bodySite') === undefined ? joined([]) : unread(`${path}.bodySite`, 'not-kept'),
      strangeParts(own, path, []),
    ]),
};

/** Reads an Observation of another program, as far as its code and all that it says leave no doubt. */
export function readStrange(own: Json, path: string): Reading {
  const code = at(own, 'code');
  const known = [...new Set(codesIn(code, SYSTEMS.loinc))].filter((one) => Object.hasOwn(READERS, one));
  if (codesIn(code, SYSTEMS.snomed).includes(SNOMED.ankleIndex)) return unread(path, 'derived');
  const [first, ...others] = known;
  if (first === undefined || others.length > 0) return unread(`${path}.code`, 'unknown-code');
  return (READERS[first] as (own: Json, path: string) => Reading)(own, path);
}
