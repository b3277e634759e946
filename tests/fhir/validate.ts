import { Fhir } from 'fhir';
import fhirpath from 'fhirpath';
import r4Model from 'fhirpath/fhir-context/r4';
import r5Model from 'fhirpath/fhir-context/r5';
import definitions from './r5-definitions.json' with { type: 'json' };

/*
 * What outside programs say of a bundle. R4: the package `fhir`, invariants by FHIRPath, and what both miss. R5: the same invariants and
 * those of the published definitions, with elements, cardinalities, types and required codes checked against these definitions.
 */

type Resource = { readonly [name: string]: unknown };
const isObject = (value: unknown): value is Resource =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const fhir = new Fhir();

/** By what a good bundle holds; `descendants()` reaches what stands in its entries. */
const INVARIANTS = {
  'obs-6': 'Bundle.entry.resource.ofType(Observation).all(dataAbsentReason.empty() or value.empty())',
  'bdl-7': "(Bundle.type = 'history') or Bundle.entry.fullUrl.isDistinct()",
  'bdl-9':
    "Bundle.type = 'document' implies (Bundle.identifier.system.exists() and Bundle.identifier.value.exists())",
  'bdl-10': "Bundle.type = 'document' implies Bundle.timestamp.exists()",
  'bdl-11': "Bundle.type = 'document' implies Bundle.entry.first().resource.is(Composition)",
  'ext-1': 'Bundle.descendants().extension.all(extension.exists() != value.exists())',
  'dom-6': 'Bundle.entry.resource.all(text.`div`.exists())',
} as const;
const COMPILED = {
  R4: Object.entries(INVARIANTS).map(([key, rule]) => [key, fhirpath.compile(rule, r4Model)] as const),
  R5: Object.entries(INVARIANTS).map(([key, rule]) => [key, fhirpath.compile(rule, r5Model)] as const),
};
/** Of one Observation: it compares its components with itself. */
const OBS_7 =
  'value.empty() or component.code.where(coding.intersect(%resource.code.coding).exists()).empty()';
const COMPILED_OBS_7 = {
  R4: fhirpath.compile({ base: 'Observation', expression: OBS_7 }, r4Model),
  R5: fhirpath.compile({ base: 'Observation', expression: OBS_7 }, r5Model),
};

const PATTERNS: Readonly<Record<string, RegExp>> = {
  id: /^[A-Za-z0-9\-.]{1,64}$/,
  code: /^\S+( \S+)*$/,
  // As in the specification: with seconds and an offset wherever there is a time of day.
  dateTime:
    /^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\d|3[01])(T([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(\.\d{1,9})?(Z|[+-]((0\d|1[0-3]):[0-5]\d|14:00)))?)?)?$/,
  uri: /^\S+$/,
};

/** What neither package looks at: one value[x] only, ids, times, no empty lists or objects, references within the bundle, safe XHTML. */
function ownFaults(value: unknown, path: string, urls: ReadonlySet<string>): readonly string[] {
  if (Array.isArray(value))
    return value.length
      ? value.flatMap((one, i) => ownFaults(one, `${path}[${i}]`, urls))
      : [`${path}: empty list`];
  if (!isObject(value)) return value === null ? [`${path}: null`] : [];
  const names = Object.keys(value);
  const faults = names.length ? [] : [`${path}: empty object`];
  for (const of of ['value', 'effective']) {
    const given = new Set(
      names.filter((name) => new RegExp(`^_?${of}[A-Z]`).test(name)).map((name) => name.replace('_', '')),
    );
    if (given.size > 1) faults.push(`${path}: several ${of}[x]`);
  }
  const { id, reference, div } = value;
  if (id !== undefined && !(typeof id === 'string' && PATTERNS.id?.test(id)))
    faults.push(`${path}.id: bad id`);
  if (typeof reference === 'string' && reference.startsWith('urn:uuid:') && !urls.has(reference))
    faults.push(`${path}.reference: leads nowhere`);
  if (
    typeof div === 'string' &&
    /<(?!\/?(div|p)[\s>])|\son\w+=|javascript:|&(?!(amp|lt|gt|quot|#39);)/i.test(div)
  )
    faults.push(`${path}.div: unsafe`);
  for (const name of ['effectiveDateTime', 'valueDateTime', 'date', 'timestamp'])
    if (typeof value[name] === 'string' && !PATTERNS.dateTime?.test(value[name]))
      faults.push(`${path}.${name}: bad time`);
  return [...faults, ...names.flatMap((name) => ownFaults(value[name], `${path}.${name}`, urls))];
}

type Definition = readonly [min: number, max: string, types: readonly string[], codes?: readonly string[]];
const TYPES = definitions.types as unknown as Readonly<Record<string, Readonly<Record<string, Definition>>>>;
const RULES = Object.entries(
  definitions.rules as unknown as Readonly<Record<string, readonly (readonly [string, string, string])[]>>,
).flatMap(([type, rules]) =>
  rules.map(([key, path, rule]) => ({
    type,
    key,
    path,
    rule: fhirpath.compile({ base: path, expression: rule }, r5Model),
  })),
);

const PRIMITIVES: Readonly<Record<string, (value: unknown) => boolean>> = {
  boolean: (value) => typeof value === 'boolean',
  integer: (value) => Number.isSafeInteger(value),
  positiveInt: (value) => Number.isSafeInteger(value) && Number(value) > 0,
  unsignedInt: (value) => Number.isSafeInteger(value) && Number(value) >= 0,
  decimal: (value) => typeof value === 'number' && Number.isFinite(value),
};

/** The element of a type that a JSON name stands for, and its type. */
function elementFor(
  type: string,
  name: string,
): { readonly definition: Definition; readonly of: string; readonly key: string } | undefined {
  const elements = TYPES[type] ?? {};
  const plain = elements[name];
  if (plain) return { definition: plain, of: plain[2][0] ?? '', key: name };
  for (const [key, definition] of Object.entries(elements).filter(([one]) => one.endsWith('[x]'))) {
    const of = definition[2].find(
      (one) => name === `${key.slice(0, -3)}${one.charAt(0).toUpperCase()}${one.slice(1)}`,
    );
    if (of) return { definition, of, key };
  }
  return undefined;
}

function valueFaults(
  value: unknown,
  of: string,
  path: string,
  codes: readonly string[] | undefined,
): readonly string[] {
  if (of === 'Resource')
    return isObject(value)
      ? structureFaults(value, String(value.resourceType), path)
      : [`${path}: no resource`];
  if (TYPES[of]) return isObject(value) ? structureFaults(value, of, path) : [`${path}: no ${of}`];
  const isRight = PRIMITIVES[of] ?? ((one: unknown) => typeof one === 'string' && one !== '');
  if (!isRight(value)) return [`${path}: no ${of}`];
  if (PATTERNS[of] && !PATTERNS[of].test(String(value))) return [`${path}: bad ${of}`];
  return codes && !codes.includes(String(value)) ? [`${path}: no such code`] : [];
}

/** Elements, cardinalities, types and required codes by the definitions. */
function structureFaults(value: Resource, type: string, path: string): readonly string[] {
  const elements = TYPES[type];
  if (!elements) return [`${path}: unknown type ${type}`];
  const faults: string[] = [];
  const seen = new Set<string>();
  for (const [name, inner] of Object.entries(value)) {
    if (name === 'resourceType') continue;
    const found = elementFor(type, name.replace(/^_/, ''));
    if (!found) {
      faults.push(`${path}.${name}: unexpected`);
      continue;
    }
    const { definition, of, key } = found;
    seen.add(key);
    if (name.startsWith('_')) continue;
    const [, max, , codes] = definition;
    if (Array.isArray(inner) !== (max !== '1'))
      faults.push(`${path}.${name}: ${max === '1' ? 'a' : 'no'} list`);
    else
      for (const one of Array.isArray(inner) ? (inner as unknown[]) : [inner])
        faults.push(...valueFaults(one, of, `${path}.${name}`, codes));
  }
  for (const [key, [min]] of Object.entries(elements))
    if (min > 0 && !seen.has(key)) faults.push(`${path}.${key}: missing`);
  return faults;
}

/** The rules of the definitions, each at every place that it is about. */
function ruleFaults(bundle: Resource): readonly string[] {
  const entries = Array.isArray(bundle.entry) ? (bundle.entry as unknown[]) : [];
  const resources = [
    bundle,
    ...entries.flatMap((entry) => (isObject(entry) && isObject(entry.resource) ? [entry.resource] : [])),
  ];
  return resources.flatMap((resource) =>
    RULES.filter(({ type }) => type === resource.resourceType).flatMap(({ key, path, rule }) => {
      let at: unknown[] = [resource];
      for (const name of path.split('.').slice(1))
        at = at.flatMap((one) => (isObject(one) ? (one[name] ?? []) : []) as unknown[]);
      return at.some((one) => (rule(one, { resource }) as unknown[])[0] === false) ? [`${path}: ${key}`] : [];
    }),
  );
}

/** Everything wrong with a bundle; empty for a good one. */
export function faultsOf(bundle: unknown, version: 'R4' | 'R5'): readonly string[] {
  if (!isObject(bundle)) return ['no object'];
  const entries = Array.isArray(bundle.entry) ? (bundle.entry as unknown[]) : [];
  const urls = new Set(
    entries.flatMap((entry) => (isObject(entry) && typeof entry.fullUrl === 'string' ? [entry.fullUrl] : [])),
  );
  const own = ownFaults(bundle, 'Bundle', urls);
  const invariants = COMPILED[version].flatMap(([key, rule]) =>
    (rule(bundle) as unknown[])[0] === false ? [key] : [],
  );
  const structure =
    version === 'R5'
      ? [...structureFaults(bundle, 'Bundle', 'Bundle'), ...ruleFaults(bundle)]
      : fhir
          .validate(bundle, { errorOnUnexpected: true })
          .messages.filter(({ severity }) => severity === 'error' || severity === 'fatal')
          .map(({ location, message }) => `${location}: ${message}`);
  const repeated = entries.flatMap((entry, i) => {
    const resource = isObject(entry) && isObject(entry.resource) ? entry.resource : {};
    if (resource.resourceType !== 'Observation') return [];
    return (COMPILED_OBS_7[version](resource, { resource }) as unknown[])[0] === false
      ? [`entry[${i}]: obs-7`]
      : [];
  });
  return [...own, ...invariants, ...repeated, ...structure];
}
