import { type Limb, limbKey, SIDES } from '../anatomy/index.js';
import type { Json, RecordPath } from '../examination/index.js';
import { isEmptyRecord } from '../examination/index.js';
import { type IndexReading, pressureSettings, readPressures } from '../pressures/index.js';
import { type LimbRule, readByRule } from '../localisation/rule.js';
import { stageArm, stageLeg, type WifiReading } from '../staging/index.js';
import { everywhereLead, type LeadStatement, limbLead, ruleLeads } from '../statements/index.js';
import { redFlags } from '../triage/index.js';
import { SNOMED, SYSTEMS } from './codes.js';
import type { Context } from './context.js';
import { frame } from './observation.js';
import { bodySite } from './places.js';
import { concept, type Element, element, legible } from './resource.js';
import { quantity } from './values.js';

/*
 * What follows from the record: told to those who read no Pulse Map, never read back.
 */

interface Member {
  readonly path: RecordPath;
  readonly resource: Element;
}

interface Made {
  readonly code: string;
  readonly limb?: Limb;
  readonly title: string;
  readonly value: Element;
  readonly from: (path: RecordPath) => boolean;
  readonly snomed?: string;
}

function indexMade(
  { language }: Context,
  { kind, side, value, numerator, denominator }: IndexReading,
): readonly Made[] {
  if (value === undefined) return [];
  const used = [...(numerator ? [numerator] : []), ...(denominator?.from ?? [])];
  return [
    {
      code: `index.${kind}`,
      limb: { side, kind: kind === 'ankle' || kind === 'toe' ? 'leg' : 'arm' },
      title: `${language.parts.exchange.index}: ${language.parts.pressures.kinds[kind]}`,
      value: { valueQuantity: quantity(value, '{ratio}') },
      from: (path) =>
        used.some((one) => path[0] === 'pressures' && path[1] === one.site && path[2] === one.side),
      ...(kind === 'ankle' && { snomed: SNOMED.ankleIndex }),
    },
  ];
}

/** A stage that is settled, or those that are open. */
interface Stage {
  readonly candidates: readonly (string | number)[];
}

/** Grades of each part of WIfI, and its stages. */
const MOST_WIFI = 4;

function stageMade(
  { language }: Context,
  kind: 'leg' | 'arm',
  side: 'right' | 'left',
  scheme: string,
  stage: unknown,
): readonly Made[] {
  const { candidates } = stage as Stage;
  if (!Array.isArray(candidates) || candidates.length === 0) return [];
  const { staging, exchange } = language.parts;
  const only = candidates.length === 1 ? candidates[0] : undefined;
  return [
    {
      code: `stage.${kind}.${scheme}`,
      limb: { side, kind },
      title: exchange.stage(staging.schemes[scheme as 'acute']),
      value: {
        valueString: legible(
          only === undefined
            ? `${exchange.stageOpen}: ${staging.open(scheme as 'acute', candidates)}`
            : staging.stage(scheme as 'acute', only),
        ),
      },
      from: ([part]) => part === 'history' || part === 'inspection' || part === 'pressures',
    },
  ];
}

/** Parts of WIfI that the findings say something of; one that may be anything says nothing. */
function wifiMade(context: Context, side: 'right' | 'left', reading: WifiReading): readonly Made[] {
  const { applies, wound, ischaemia, infection, stage } = reading;
  if (!applies) return [];
  const parts = { wound, ischaemia, infection, wifi: stage };
  return Object.entries(parts).flatMap(([scheme, derived]) =>
    derived.candidates.length < MOST_WIFI ? stageMade(context, 'leg', side, scheme, derived) : [],
  );
}

function stagesMade(context: Context): readonly Made[] {
  const { examination } = context;
  return SIDES.flatMap((side) => {
    const { acute, fontaine, rutherford, wifi } = stageLeg(examination, side);
    const schemes = { acute, fontaine, rutherford };
    const leg = [
      ...Object.entries(schemes).flatMap(([scheme, stage]) => stageMade(context, 'leg', side, scheme, stage)),
      ...wifiMade(context, side, wifi),
    ];
    const arm = stageArm(examination, side);
    return [...leg, ...(arm ? stageMade(context, 'arm', side, 'acute', arm) : [])];
  });
}

function flagsMade({ examination, language }: Context): readonly Made[] {
  const { flags, exchange } = language.parts;
  return redFlags(examination).map((flag) => ({
    code: `flag.${flag.code}`,
    ...(flag.limb && { limb: flag.limb }),
    title: exchange.flag,
    value: { valueString: legible(`${flags.heading(flag)}. ${flags.when(flag)}`) },
    from: () => true,
  }));
}

/** What the bedside rule says of the pulses: of each limb in which it finds something, or else of all of them. */
function readingMade({ examination, language: { map, parts } }: Context): readonly Made[] {
  const reading = readByRule(examination);
  const said = (lead: LeadStatement, rule?: LimbRule): Made => ({
    code: 'reading.rule',
    ...(rule && { limb: rule.limb }),
    title: parts.exchange.reading,
    value: { valueString: legible(map.rule.lead(lead)) },
    from: ([part]) => part === 'pulses',
  });
  const diseased = Object.values(reading).filter(({ outcome }) => outcome === 'lesion');
  if (diseased.length && !everywhereLead(reading)) return diseased.map((rule) => said(limbLead(rule), rule));
  return ruleLeads(reading).map((lead) => said(lead));
}

/** Everything that follows from a record. */
function allMade(context: Context): readonly Made[] {
  const { examination } = context;
  const { indices } = readPressures(examination.pressures, pressureSettings(examination.method));
  return [
    ...indices.flatMap((index) => indexMade(context, index)),
    ...stagesMade(context),
    ...flagsMade(context),
    ...readingMade(context),
  ];
}

/** The Observations of what follows from the record, each with those that it follows from. */
export function derivedObservations(
  context: Context,
  members: readonly Member[],
  reference: (resource: Element) => Json,
): readonly Element[] {
  const { examination, language, options } = context;
  if (isEmptyRecord(examination)) return [];
  return allMade(context).map(({ code, limb, title, value, from, snomed }, i) => {
    const place = limb && language.map.anatomy.limbs[limbKey(limb)];
    const named = place ? `${title}, ${place}` : title;
    const codings = [
      ...(snomed && options.snomed ? [{ system: SYSTEMS.snomed, code: snomed }] : []),
      { system: SYSTEMS.derived, code },
    ];
    const text = value.valueString ?? String((value.valueQuantity as { value?: number }).value);
    return element({
      ...frame(context, `derived ${code} ${limb?.side ?? ''} ${i}`, `${named}: ${String(text)}`, [
        language.parts.exchange.caution,
      ]),
      category: [concept([{ system: SYSTEMS.category, code: 'exam' }])],
      code: concept(codings, named),
      bodySite:
        limb && place
          ? bodySite(
              `inspection.${limb.kind}`,
              limb.side,
              { place, side: language.map.anatomy.sides[limb.side] },
              { snomed: options.snomed === true },
            )
          : undefined,
      ...value,
      note: [{ text: language.parts.exchange.caution }],
      derivedFrom: members.filter(({ path }) => from(path)).map(({ resource }) => reference(resource)),
    });
  });
}
