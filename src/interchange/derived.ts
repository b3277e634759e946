import { SIDES } from '../anatomy/index.js';
import type { Json, RecordPath } from '../examination/index.js';
import { isEmptyRecord } from '../examination/index.js';
import { type IndexReading, pressureSettings, readPressures } from '../pressures/index.js';
import { stageArm, stageLeg } from '../staging/index.js';
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
  readonly side?: 'right' | 'left';
  /** The part of the record that its place is named after. */
  readonly place?: string;
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
      side,
      place: kind === 'ankle' || kind === 'toe' ? 'inspection.leg' : 'inspection.arm',
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
      side,
      place: `inspection.${kind}`,
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

function stagesMade(context: Context): readonly Made[] {
  const { examination } = context;
  return SIDES.flatMap((side) => {
    const leg = Object.entries(stageLeg(examination, side)).flatMap(([scheme, stage]) =>
      scheme in context.language.parts.staging.schemes ? stageMade(context, 'leg', side, scheme, stage) : [],
    );
    const arm = stageArm(examination, side);
    return [...leg, ...(arm ? stageMade(context, 'arm', side, 'acute', arm) : [])];
  });
}

function flagsMade({ examination, language }: Context): readonly Made[] {
  const { flags, exchange } = language.parts;
  return redFlags(examination).map((flag) => ({
    code: `flag.${flag.code}`,
    ...(flag.limb && { side: flag.limb.side, place: `inspection.${flag.limb.kind}` }),
    title: exchange.flag,
    value: { valueString: legible(`${flags.heading(flag)}. ${flags.when(flag)}`) },
    from: () => true,
  }));
}

/** Everything that follows from a record. */
function allMade(context: Context): readonly Made[] {
  const { examination } = context;
  const { indices } = readPressures(examination.pressures, pressureSettings(examination.method));
  return [
    ...indices.flatMap((index) => indexMade(context, index)),
    ...stagesMade(context),
    ...flagsMade(context),
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
  return allMade(context).map(({ code, side, place, title, value, from, snomed }, i) => {
    const limb =
      side && place
        ? language.map.anatomy.limbs[`${side} ${place.endsWith('leg') ? 'leg' : 'arm'}`]
        : undefined;
    const named = limb ? `${title}, ${limb}` : title;
    const codings = [
      ...(snomed && options.snomed ? [{ system: SYSTEMS.snomed, code: snomed }] : []),
      { system: SYSTEMS.derived, code },
    ];
    const text = value.valueString ?? String((value.valueQuantity as { value?: number }).value);
    return element({
      ...frame(context, `derived ${code} ${side ?? ''} ${i}`, `${named}: ${String(text)}`, [
        language.parts.exchange.caution,
      ]),
      category: [concept([{ system: SYSTEMS.category, code: 'exam' }])],
      code: concept(codings, named),
      bodySite:
        side && place && limb
          ? bodySite(
              place,
              side,
              { place: limb, side: language.map.anatomy.sides[side] },
              { snomed: options.snomed === true },
            )
          : undefined,
      ...value,
      note: [{ text: language.parts.exchange.caution }],
      derivedFrom: members.filter(({ path }) => from(path)).map(({ resource }) => reference(resource)),
    });
  });
}
