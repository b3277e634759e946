import { METHODS } from '../examination/index.js';
import { DEFAULT_COMPRESSION_LIMITS } from './compression-limits.js';
import { FLAG_CODES, type FlagCode, type RedFlag, type Team, TEAMS } from './flag.js';
import type { FlagSettings } from './flags.js';
import { DEFAULT_TRIAGE_SETTINGS, OPEN_CHOICES, triageSettings } from './settings.js';

/** Someone to call, or where it is written whom to call. */
export interface Contact {
  /** As it is said on the ward, such as "Vascular registrar". */
  readonly name?: string;
  /** Digits with an optional leading +, and blanks, brackets, points, slashes or hyphens to group them. */
  readonly telephone?: string;
  /** An `https:` address, such as that of the local pathway. */
  readonly page?: string;
}

/** The pathway of a hospital: whom its flags call, and its limits. */
export interface Pathway {
  /** What the pathway is called there. */
  readonly name?: string;
  /** Whom a flag calls: by the flag's code, else by its team (`whom`), else `any`. */
  readonly calls?: Readonly<Partial<Record<FlagCode | Team | 'any', Contact>>>;
  /** Limits and choices of the triage, where the hospital differs. */
  readonly settings?: FlagSettings;
}

/** A pathway as far as it can be used, and what could not, one sentence each for whoever set it. */
export interface ReadPathway {
  readonly pathway: Pathway;
  readonly faults: readonly string[];
}

const LONGEST_NAME = 120;
const SETTINGS = 'triage, pressures or compression';
const TELEPHONE = /^\+?[0-9][0-9 ().\-/]{1,30}$/;
const PAGE = /^https:\/\/[^\s"'<>\\@]+$/i;

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isName = (value: unknown): value is string =>
  typeof value === 'string' && value.trim() !== '' && value.length <= LONGEST_NAME;

const KEYS: ReadonlySet<string> = new Set([...FLAG_CODES, ...TEAMS, 'any']);
const CONTACT: Readonly<Record<keyof Contact, readonly [(value: unknown) => boolean, string]>> = {
  name: [isName, `text of 1 to ${LONGEST_NAME} characters`],
  telephone: [
    (value) => typeof value === 'string' && TELEPHONE.test(value) && value.replace(/\D/g, '').length > 1,
    'a telephone number such as "+44 1632 960000"',
  ],
  page: [(value) => typeof value === 'string' && PAGE.test(value), 'an https: address'],
};

/** What a value is, short enough for a message. */
function shown(value: unknown): string {
  const text = typeof value === 'string' || isFields(value) ? JSON.stringify(value) : String(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/** Takes the good parts of what a page hands over and lists the rest. */
class Reader {
  readonly faults: string[] = [];

  fault(path: string, found: unknown, expected: string): undefined {
    this.faults.push(`${path}: found ${shown(found)}, expected ${expected}`);
    return undefined;
  }

  contact(path: string, input: unknown): Contact | undefined {
    if (!isFields(input)) return this.fault(path, input, 'an object with name, telephone or page');
    const good: Record<string, string> = {};
    for (const [field, value] of Object.entries(input)) {
      if (value === undefined) continue;
      if (!Object.hasOwn(CONTACT, field)) {
        this.fault(`${path}.${field}`, value, `one of ${Object.keys(CONTACT).join(', ')}`);
        continue;
      }
      const [allowed, expected] = CONTACT[field as keyof Contact];
      if (allowed(value)) good[field] = value as string;
      else this.fault(`${path}.${field}`, value, expected);
    }
    return Object.keys(good).length ? good : undefined;
  }

  calls(input: unknown): Pathway['calls'] {
    if (input === undefined) return undefined;
    if (!isFields(input)) return this.fault('calls', input, 'an object of contacts');
    const good: Record<string, Contact> = {};
    for (const [key, value] of Object.entries(input)) {
      if (!KEYS.has(key)) this.fault(`calls.${key}`, value, 'the code of a flag, a team, or any');
      else if (value !== undefined) {
        const contact = this.contact(`calls.${key}`, value);
        if (contact) good[key] = contact;
      }
    }
    return good;
  }

  /** The choices that stand where a default stands, of the same kind. */
  choices(path: string, input: unknown, defaults: Fields): Fields | undefined {
    if (!isFields(input)) return this.fault(path, input, 'an object of settings');
    const good: Record<string, unknown> = {};
    for (const [key, value] of Object.entries(input)) {
      if (value === undefined) continue;
      const at = `${path}.${key}`;
      const usual = Object.hasOwn(defaults, key) ? defaults[key] : undefined;
      if (usual === undefined) this.fault(at, value, `one of ${Object.keys(defaults).join(', ')}`);
      else if (isFields(usual)) {
        const inner = this.choices(at, value, usual);
        if (inner) good[key] = inner;
      } else if (typeof usual === 'number') {
        if (typeof value === 'number' && Number.isFinite(value) && value >= 0) good[key] = value;
        else this.fault(at, value, 'a number from 0');
      } else {
        const open = OPEN_CHOICES.find(({ setting }) => `settings.triage.${setting}` === at);
        const words: readonly unknown[] = [usual, ...(open?.otherwise ?? [])];
        if (words.includes(value)) good[key] = value;
        else this.fault(at, value, words.map(String).join(' or '));
      }
    }
    return good;
  }

  settings(input: unknown): FlagSettings | undefined {
    if (input === undefined) return undefined;
    if (!isFields(input)) return this.fault('settings', input, `an object with ${SETTINGS}`);
    const { triage, pressures, compression, ...others } = input;
    for (const [key, value] of Object.entries(others)) this.fault(`settings.${key}`, value, SETTINGS);
    const own =
      triage === undefined
        ? undefined
        : this.choices('settings.triage', triage, DEFAULT_TRIAGE_SETTINGS as unknown as Fields);
    const methods = pressures === undefined ? undefined : this.methods(pressures);
    const limits =
      compression === undefined
        ? undefined
        : this.choices('settings.compression', compression, { ...DEFAULT_COMPRESSION_LIMITS });
    return {
      ...(own && { triage: own }),
      ...(methods && { pressures: methods }),
      ...(limits && { compression: limits }),
    } as FlagSettings;
  }

  /** The methods and limits of pressures that have a published name. */
  methods(input: unknown): Fields | undefined {
    if (!isFields(input)) return this.fault('settings.pressures', input, 'an object of settings');
    const good: Record<string, unknown> = {};
    for (const [field, value] of Object.entries(input)) {
      if (value === undefined) continue;
      const at = `settings.pressures.${field}`;
      const named = METHODS as Readonly<Record<string, readonly unknown[]>>;
      const words = Object.hasOwn(named, field) ? named[field] : undefined;
      if (!words) this.fault(at, value, `one of ${Object.keys(METHODS).join(', ')}`);
      else if (words.includes(value)) good[field] = value;
      else this.fault(at, value, words.map(String).join(' or '));
    }
    return good;
  }
}

/**
 * Reads the pathway that a page hands over. Whatever cannot be used is left out and named; a wrong number is never shown.
 * `null` and `undefined` are the empty pathway.
 */
export function readPathway(input: unknown): ReadPathway {
  const reader = new Reader();
  if (input === undefined || input === null) return { pathway: {}, faults: [] };
  if (!isFields(input)) {
    reader.fault('pathway', input, 'an object with name, calls or settings');
    return { pathway: {}, faults: reader.faults };
  }
  const { name, calls, settings, ...others } = input;
  for (const [key, value] of Object.entries(others)) reader.fault(key, value, 'name, calls or settings');
  if (name !== undefined && !isName(name)) reader.fault('name', name, CONTACT.name[1]);
  const called = reader.calls(calls);
  const chosen = reader.settings(settings);
  return {
    pathway: {
      ...(isName(name) && { name }),
      ...(called && { calls: called }),
      ...(chosen && { settings: chosen }),
    },
    faults: reader.faults,
  };
}

/** Whom a flag calls by a pathway. */
export function contactFor(
  { calls }: Pathway,
  { code, whom }: Pick<RedFlag, 'code' | 'whom'>,
): Contact | undefined {
  return calls?.[code] ?? calls?.[whom] ?? calls?.any;
}

/** The address that dials a number: digits and a leading + alone. */
export function telephoneLink(telephone: string): string {
  return `tel:${telephone.startsWith('+') ? '+' : ''}${telephone.replace(/\D/g, '')}`;
}

/** The limits of a pathway with a page's own choices, which go before them. */
export function withPathway<S extends FlagSettings>(own: FlagSettings | undefined, settings: S): S {
  if (!own) return settings;
  const { triage, pressures, compression } = own;
  return {
    ...settings,
    ...((triage ?? settings.triage) && { triage: triageSettings(triage, settings.triage) }),
    ...((pressures ?? settings.pressures) && { pressures: { ...pressures, ...settings.pressures } }),
    ...((compression ?? settings.compression) && {
      compression: { ...compression, ...settings.compression },
    }),
  };
}
