import {
  ACUTE_CLASSES,
  type AcuteClass,
  type Examination,
  type Movement,
  type Sensation,
  type VenousSignal,
} from '../examination/index.js';
import { type Derived, derive, given, ground, type Ground, type NoteCode } from './derived.js';
import type { LimbFindings } from './findings.js';
import { STAGING_SOURCES } from './sources.js';

interface AcuteRow {
  readonly class: AcuteClass;
  readonly sensation: readonly Sensation[];
  readonly movement: readonly Movement[];
  readonly arterial: readonly ('audible' | 'inaudible')[];
  readonly venous: readonly VenousSignal[];
}

/** The four classes as printed: what each allows. The class tells whether the limb is threatened and how soon. */
export const ACUTE_ROWS: { readonly rows: readonly AcuteRow[]; readonly source: string } = {
  rows: [
    { class: 'I', sensation: ['normal'], movement: ['normal'], arterial: ['audible'], venous: ['audible'] },
    {
      class: 'IIa',
      sensation: ['normal', 'digits'],
      movement: ['normal'],
      arterial: ['audible', 'inaudible'],
      venous: ['audible'],
    },
    {
      class: 'IIb',
      sensation: ['beyond-digits'],
      movement: ['weak'],
      arterial: ['audible', 'inaudible'],
      venous: ['audible'],
    },
    {
      class: 'III',
      sensation: ['lost'],
      movement: ['paralysed'],
      arterial: ['inaudible'],
      venous: ['inaudible'],
    },
  ],
  source: STAGING_SOURCES.rutherford1997,
};

/** Within how many hours blood flow should be restored, by class. `null`: primary amputation is considered. */
export const ACUTE_TIMING: Readonly<
  Record<AcuteClass, { hours: readonly [number, number] | null; source: string }>
> = {
  I: { hours: [6, 24], source: STAGING_SOURCES.guideline2016 },
  IIa: { hours: [0, 6], source: `${STAGING_SOURCES.guideline2016} (from memory)` },
  IIb: { hours: [0, 6], source: STAGING_SOURCES.guideline2016 },
  III: { hours: null, source: STAGING_SOURCES.guideline2016 },
};

export interface AcuteSettings {
  /**
   * Whether rest pain alone raises an acute limb to at least IIb. The printed rows name it beside sensory loss beyond
   * the toes only; some teach it as a sign of its own.
   */
  readonly restPainRaises: boolean;
}
export const DEFAULT_ACUTE_SETTINGS: AcuteSettings = { restPainRaises: false };

/** The class of an acutely ischaemic limb. */
export interface AcuteStage extends Derived<AcuteClass> {
  /** Whether the limb is acutely affected at all; `unknown` while nobody said how long it has been so. */
  readonly applies: 'yes' | 'no' | 'unknown';
  /** The least class the findings allow, where any finding speaks. */
  readonly atLeast?: AcuteClass;
}

const SIGNS = ['sensation', 'movement', 'arterial', 'venous'] as const;

/** The rows every stated finding fits; a finding not stated fits all. */
function fitting(findings: LimbFindings): AcuteClass[] {
  return ACUTE_ROWS.rows
    .filter((row) =>
      SIGNS.every((sign) => {
        const value = findings[sign];
        return value === undefined || (row[sign] as readonly string[]).includes(value);
      }),
    )
    .map((row) => row.class);
}

/** Sensory loss beyond the toes, any weakness, and by choice rest pain, each mean at least IIb. */
function raised(findings: LimbFindings, settings: AcuteSettings): boolean {
  const { sensation, movement, symptom } = findings;
  return (
    sensation === 'beyond-digits' ||
    sensation === 'lost' ||
    movement === 'weak' ||
    movement === 'paralysed' ||
    (settings.restPainRaises && symptom === 'rest-pain')
  );
}

/**
 * The class of a limb by feeling, power, arterial and venous signal. Findings that fit no printed row give no class but
 * the least that they allow. Class III asks for all four, since taking a limb for lost needs every sign of it.
 */
export function acuteStage(
  findings: LimbFindings,
  settings: AcuteSettings = DEFAULT_ACUTE_SETTINGS,
): AcuteStage {
  const { acute: applies } = findings;
  const missing = SIGNS.filter((sign) => findings[sign] === undefined);
  if (applies === 'no' || missing.length === SIGNS.length) {
    return { applies, ...derive<AcuteClass>([], { missing: applies === 'no' ? [] : missing }) };
  }
  const grounds = SIGNS.flatMap((sign): Ground[] => {
    const value = findings[sign];
    return value === undefined ? [] : [ground(sign, { value })];
  });
  if (findings.history.hours !== undefined) {
    grounds.push(ground('hours', { hours: findings.history.hours }));
  }
  const notes: NoteCode[] = [
    ...given(findings.inspection.colour === 'fixed-mottled', 'fixed-mottling'),
    ...given(findings.kind === 'arm', 'described-for-leg'),
  ];
  const rows = fitting(findings);
  const isRaised = raised(findings, settings);
  let candidates = isRaised ? rows.filter((row) => row === 'IIb' || row === 'III') : rows;
  // An audible artery with feeling and power intact parts a viable limb from a marginally threatened one.
  if (findings.arterial === 'audible' && findings.sensation === 'normal' && candidates.includes('I')) {
    candidates = candidates.filter((row) => row !== 'IIa');
  }
  if (candidates.includes('III') && missing.length > 0) {
    candidates = ACUTE_CLASSES.filter((row) => row === 'IIb' || candidates.includes(row));
  }
  if (candidates.length === 0) {
    return {
      applies,
      ...derive<AcuteClass>([], { grounds, missing, notes: ['no-single-class', ...notes] }),
      ...(isRaised && { atLeast: 'IIb' as const }),
    };
  }
  const [atLeast] = candidates;
  return { applies, ...derive(candidates, { grounds, missing, notes }), ...(atLeast && { atLeast }) };
}

/** The acute class of a limb with the clinician's own beside it. */
export function acuteStageOf(
  examination: Examination,
  findings: LimbFindings,
  settings: AcuteSettings = DEFAULT_ACUTE_SETTINGS,
): AcuteStage {
  const overrule = examination.staging?.[findings.kind]?.[findings.side]?.acute;
  return { ...acuteStage(findings, settings), ...(overrule && { overrule }) };
}
