import type { Laterality, LimbKey, Side, Vessel } from '../anatomy/index.js';
import type {
  AgeBand,
  AneurysmPlace,
  ArmAmputation,
  ArmClaudication,
  BirthAbsent,
  DialysisAccess,
  InjuryPlace,
  LegAmputation,
  LegClaudication,
  Mechanism,
  Medicine,
  Revascularisation,
  RevascularisedArtery,
  Smoking,
} from '../examination/index.js';
import type { ContextStatement } from '../statements/index.js';
import { sentence } from './phrases.js';
import { render, type Renderings } from './render.js';
import type { SignWords } from './sign-words.js';
import { together } from './terms.js';
import { eachWord, type Of, wordFor, without, type YesNo } from './words.js';

type Around = (is: string) => string;
/** A phrase about something on one side. */
type Sided = (side: Side, is: string) => string;

/** The words of what is known before a pulse is felt. */
export interface ContextTable {
  readonly title: string;
  readonly age: string;
  readonly ages: Of<AgeBand>;
  readonly diabetes: string;
  readonly smoked: string;
  readonly smoking: Of<Smoking>;
  readonly mechanism: string;
  readonly mechanisms: Of<Mechanism>;
  readonly anywhere: string;
  readonly injury: string;
  readonly injuries: Of<InjuryPlace>;
  readonly amputation: string;
  readonly legAmputations: Of<LegAmputation>;
  readonly armAmputations: Of<ArmAmputation>;
  readonly missing: string;
  readonly missingOptions: Of<BirthAbsent>;
  readonly harvested: string;
  readonly harvestedOption: string;
  readonly nothingOf: string;
  readonly repaired: string;
  readonly noRepairs: string;
  readonly repairs: Of<Revascularisation>;
  readonly repairKind: string;
  readonly repairSide: string;
  readonly repairArtery: string;
  readonly sides: Of<Laterality>;
  readonly choose: string;
  readonly add: string;
  /** An earlier repair, as it is listed. */
  readonly repairOf: Readonly<Record<Revascularisation, (vessel: string) => string>>;
  remove(one: string): string;
  readonly removeShort: string;
  readonly aneurysms: string;
  /** A known aneurysm that lies nowhere of the list. */
  readonly aneurysmElsewhere: string;
  readonly noAneurysm: string;
  readonly access: string;
  readonly accessKinds: Of<DialysisAccess['kind']>;
  readonly accessSigns: string;
  readonly devices: string;
  readonly coldInjury: string;
  readonly coldInjuryThere: string;
  readonly coldHours: string;
  readonly medicines: string;
  readonly medicineNames: Of<Medicine>;
  readonly noMedicines: string;
  readonly repairRoute: string;
  readonly ownCourse: string;
  readonly graftPulse: string;
  readonly graftPulses: Of<NonNullable<RevascularisedArtery['graftPulse']>>;
  readonly graftSigns: string;
  readonly noSigns: string;
  /** What stands in place of an empty list. */
  readonly none: string;
  /** What is known, as a phrase. */
  readonly said: {
    readonly age: Around;
    readonly diabetes: YesNo;
    readonly smoking: Around;
    readonly mechanism: Around;
    readonly legHurts: Sided;
    readonly armTires: Readonly<Record<'yes' | 'no', (side: Side) => string>>;
    readonly injury: Sided;
    readonly legAmputated: Sided;
    readonly armAmputated: Sided;
    neverThere(side: Side, sites: readonly string[]): string;
    harvested(side: Side): string;
    readonly noRepairs: string;
    readonly graftPulse: Around;
    readonly graftInfection: Around;
    aneurysm(place: string, side: Side | undefined): string;
    readonly noAneurysm: string;
    readonly access: Sided;
    readonly accessSigns: Sided;
    readonly noAccess: string;
    readonly noDevice: string;
    coldInjury(limb: string, hours: string | undefined): string;
    readonly medicines: Around;
    readonly noMedicines: string;
  };
}

/** What other areas of a language lend to it. */
interface Lent {
  readonly anatomy: {
    readonly limbs: Readonly<Record<LimbKey, string>>;
    vessel(vessel: Vessel): string;
  };
  readonly muscles: Readonly<Record<LegClaudication | ArmClaudication, string>>;
  readonly recorded: Pick<SignWords, 'aneurysms' | 'access' | 'devices' | 'graft' | 'routes'>;
  decimal(value: number): string;
}

/** The words of what is known before a pulse is felt, for controls and for what is said of a record. */
export function contextFrom(table: ContextTable, { anatomy, muscles, recorded, decimal }: Lent) {
  const words = without(table, 'said', 'repairOf', 'aneurysmElsewhere', 'medicineNames');
  const { said, repairOf, medicineNames } = table;
  const places = Object.keys(recorded.aneurysms) as Exclude<AneurysmPlace, 'other'>[];
  const aneurysms = wordFor<AneurysmPlace>([...places, 'other'], (place) =>
    place === 'other' ? table.aneurysmElsewhere : recorded.aneurysms[place],
  );
  const listed = <K extends string>(found: readonly K[], of: Readonly<Record<K, string>>): string =>
    found.map((one) => of[one]).join(', ');
  const signs = <K extends string>(found: readonly K[], of: Readonly<Record<K, string>>): string =>
    listed(found, of) || words.none;
  const repair = (kind: Revascularisation, vessel: string): string => repairOf[kind](vessel);
  const statements: Renderings<ContextStatement> = {
    ageBand: ({ value }) => said.age(words.ages[value]),
    diabetes: () => said.diabetes.yes,
    'no-diabetes': () => said.diabetes.no,
    smoking: ({ value }) => said.smoking(words.smoking[value]),
    mechanism: ({ value }) => said.mechanism(words.mechanisms[value]),
    'leg-claudication': ({ side, muscle }) => said.legHurts(side, muscles[muscle]),
    'arm-tires': ({ side }) => said.armTires.yes(side),
    'arm-does-not-tire': ({ side }) => said.armTires.no(side),
    injury: ({ side, place }) => said.injury(side, words.injuries[place]),
    'leg-amputated': ({ side, at }) => said.legAmputated(side, words.legAmputations[at]),
    'arm-amputated': ({ side, at }) => said.armAmputated(side, words.armAmputations[at]),
    'never-there': ({ side, sites }) =>
      said.neverThere(
        side,
        sites.map((site) => words.missingOptions[site]),
      ),
    'radial-harvested': ({ side }) => said.harvested(side),
    repair: ({ kind, route, vessel }) =>
      `${repair(kind, anatomy.vessel(vessel))}${route ? `, ${recorded.routes[route]}` : ''}`,
    'no-repairs': () => said.noRepairs,
    'graft-pulse': ({ pulse }) => said.graftPulse(words.graftPulses[pulse]),
    'graft-infection': ({ signs: found }) => said.graftInfection(signs(found, recorded.graft)),
    aneurysm: ({ place, side }) => said.aneurysm(aneurysms[place], side),
    'no-aneurysm': () => said.noAneurysm,
    access: ({ side, kind }) => said.access(side, words.accessKinds[kind]),
    'access-signs': ({ side, signs: found }) => said.accessSigns(side, signs(found, recorded.access)),
    'no-access': () => said.noAccess,
    device: ({ limb, kind }) => `${recorded.devices[kind]}, ${anatomy.limbs[limb]}`,
    'no-device': () => said.noDevice,
    'cold-injury': ({ limb, hours }) =>
      said.coldInjury(anatomy.limbs[limb], hours === undefined ? undefined : decimal(hours)),
    medicines: ({ medicines: taken }) => said.medicines(listed(taken, medicineNames)),
    'no-medicines': () => said.noMedicines,
  };
  return together(words, {
    repair,
    hoursUnit: 'h',
    aneurysmOptions: eachWord(aneurysms, sentence),
    accessSignOptions: recorded.access,
    deviceOptions: recorded.devices,
    medicineOptions: eachWord(medicineNames, sentence),
    routes: recorded.routes,
    graftSignOptions: recorded.graft,
    said: (statement: ContextStatement): string => render(statements, statement),
  });
}
export type ContextWords = ReturnType<typeof contextFrom>;
