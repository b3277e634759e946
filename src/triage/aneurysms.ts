import { placeKey, type PlaceKey, type PulseSiteId, SIDES, type Side } from '../anatomy/index.js';
import { foundGangrene, foundUlcer, pulseAt, type SymptomElsewhere } from '../examination/index.js';
import type { Case, Raised } from './flag.js';
import { given, type Ground } from './ground.js';
import { isAcutelyIschaemic, type LimbState } from './limb.js';
import {
  contextOf,
  elsewhereOf,
  inShock,
  inspectionOf,
  isIschaemicColour,
  type StagedLimb,
} from './record.js';
import { hasGraftAt } from './grafts.js';
import { injuryOf } from './injury-place.js';

const RUPTURE_SYMPTOMS: readonly SymptomElsewhere[] = [
  'abdominal-pain',
  'back-pain',
  'loin-pain',
  'collapse',
  'sudden-chest-or-back-pain',
];

const expansileAt = ({ examination }: Case, site: PulseSiteId, side: Side | 'midline'): boolean =>
  pulseAt(examination, { site, side })?.expansile === true;

/** Source: NICE NG156; not asked: common practice. */
function aorta(known: Case): Raised[] {
  const { examination, settings } = known;
  const wide = expansileAt(known, 'abdominal-aorta', 'midline');
  const { aneurysms } = contextOf(examination);
  const aware = aneurysms?.some(({ place }) => place === 'abdominal-aorta') === true;
  const risk = examination.history?.risks?.includes('known-aneurysm') === true && !aneurysms?.length;
  const asked = elsewhereOf(examination);
  const symptoms = (asked ?? []).filter((symptom) => RUPTURE_SYMPTOMS.includes(symptom));
  const shock = inShock(examination);
  const base: Ground[] = [
    ...given(wide, { code: 'expansile', places: ['midline abdominal-aorta'] } as const),
    ...given(aware, { code: 'known-aneurysm', place: 'abdominal-aorta' } as const),
    ...given(risk, { code: 'known-aneurysm' } as const),
  ];
  if (!base.length) return [];
  const acuteLegs = known.limbs.filter((state) => state.limb.kind === 'leg' && isAcutelyIschaemic(state));
  const limb: Raised[] =
    acuteLegs.length && (wide || aware)
      ? [
          {
            code: 'aneurysm-with-acute-limb',
            urgency: 'now',
            because: [...base, { code: 'limbs', limbs: acuteLegs.map((state) => state.limb) }],
          },
        ]
      : [];
  if (symptoms.length || shock) {
    const because: Ground[] = [
      ...base,
      ...given(symptoms.length, { code: 'elsewhere', symptoms } as const),
      ...given(shock, { code: 'shock' } as const),
    ];
    return [{ code: 'aneurysm-symptomatic', urgency: 'now', because }, ...limb];
  }
  if (!wide) return limb;
  return [
    ...limb,
    asked
      ? { code: 'aneurysm-possible', urgency: 'soon', because: base }
      : {
          code: 'aneurysm-possible',
          urgency: settings.aortaUnasked,
          because: base,
          ask: ['abdominal-or-back-pain'],
        },
  ];
}

/** An expansile or unusually easy popliteal pulse, or a known aneurysm there; a pulse that bounds everywhere is left out. */
export function popliteals({ examination }: Case): Ground[] {
  const grade = (site: PulseSiteId, side: Side) => pulseAt(examination, { site, side })?.grade;
  const highOutput = SIDES.some((side) => grade('radial', side) === 'bounding');
  const at = (holds: (side: Side) => boolean): PlaceKey[] =>
    SIDES.filter(holds).map((side) => placeKey({ site: 'popliteal', side }));
  const wide = at((side) => pulseAt(examination, { site: 'popliteal', side })?.expansile === true);
  const easy = at(
    (side) =>
      grade('popliteal', side) === 'bounding' && !(highOutput && grade('femoral', side) === 'bounding'),
  ).filter((key) => !wide.includes(key));
  const aware = (contextOf(examination).aneurysms ?? []).filter(({ place }) => place === 'popliteal');
  return [
    ...given(wide.length, { code: 'expansile', places: wide } as const),
    ...given(easy.length, { code: 'bounding', places: easy } as const),
    ...aware.map(({ side }) => ({ code: 'known-aneurysm', place: 'popliteal', side }) as const),
  ];
}

/** Source: regional referral guidance. A known aneurysm alone is no news. */
function popliteal(known: Case): Raised[] {
  const because = popliteals(known);
  const acute = known.limbs.some((state) => state.limb.kind === 'leg' && isAcutelyIschaemic(state));
  if (acute || !because.some(({ code }) => code !== 'known-aneurysm')) return [];
  return [
    {
      code: 'popliteal-aneurysm-possible',
      urgency: known.settings.poplitealAneurysm,
      because,
      ask: ['other-popliteal-and-aorta'],
    },
  ];
}

/** A hand that an aneurysm above it may have sent emboli to. */
const hasEmbolised = ({ facts: { inspection } }: LimbState): boolean =>
  isIschaemicColour(inspection) || foundUlcer(inspection) || foundGangrene(inspection);

/** Where a false aneurysm is thought of: at a puncture, an operation or a graft. */
function isPunctured(known: Case, limb: StagedLimb, site: PulseSiteId): boolean {
  const place = injuryOf(known.examination, limb)?.place;
  const at: Partial<Record<PulseSiteId, readonly string[]>> = {
    femoral: ['groin', 'pelvis', 'thigh'],
    popliteal: ['knee'],
    axillary: ['shoulder'],
    brachial: ['upper-arm', 'elbow'],
    radial: ['forearm', 'wrist-hand'],
    ulnar: ['forearm', 'wrist-hand'],
  };
  const lined = contextOf(known.examination).devices?.some(
    ({ limb: kind, side, kind: device }) =>
      kind === limb.kind &&
      side === limb.side &&
      (device === 'femoral-sheath' ? site === 'femoral' : site === 'radial'),
  );
  return (
    (place !== undefined && at[site]?.includes(place) === true) ||
    lined === true ||
    (site !== 'popliteal' && hasGraftAt(known.examination, limb))
  );
}

/** Sources: teaching pages on false aneurysm; other places: common practice. */
function ofLimb(known: Case, state: LimbState): Raised[] {
  const { limb, facts, circulation } = state;
  const { falseAneurysmSigns: signs = [], systemic } = inspectionOf(known.examination, limb);
  const wide = facts.pulses.filter(({ expansile }) => expansile);
  const punctured = wide.filter(({ site }) => isPunctured(known, limb, site));
  const other = wide.filter((pulse) => !punctured.includes(pulse) && pulse.site !== 'popliteal');
  const places = (list: typeof wide) => list.map(({ key }) => key);
  const flags: Raised[] = [];
  if (punctured.length || signs.length) {
    const urgent =
      signs.length > 0 || circulation >= known.settings.poorFrom.falseAneurysm || (systemic?.length ?? 0) > 0;
    flags.push({
      code: 'false-aneurysm',
      urgency: urgent ? 'now' : 'today',
      limb,
      because: [
        ...given(punctured.length, { code: 'expansile', places: places(punctured) } as const),
        ...given(signs.length, { code: 'false-aneurysm-signs', signs } as const),
      ],
    });
  }
  if (other.length) {
    flags.push({
      code: 'aneurysm-possible',
      urgency: limb.kind === 'arm' && hasEmbolised(state) ? 'today' : 'soon',
      limb,
      because: [{ code: 'expansile', places: places(other) }],
    });
  }
  return flags;
}

/** An expansile pulse of the neck or head. Common practice, no source. */
function ofHead(known: Case): Raised[] {
  const sites = ['carotid', 'superficial-temporal'] as const;
  const places = sites.flatMap((site) =>
    SIDES.filter((side) => expansileAt(known, site, side)).map((side) => placeKey({ site, side })),
  );
  return given(places.length, {
    code: 'aneurysm-possible',
    urgency: 'soon',
    because: [{ code: 'expansile', places }],
  } as const);
}

/** Flags of aneurysms, true and false. */
export function aneurysmFlags(known: Case): Raised[] {
  return [
    ...aorta(known),
    ...popliteal(known),
    ...known.limbs.flatMap((state) => ofLimb(known, state)),
    ...ofHead(known),
  ];
}
