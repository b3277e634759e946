/** A patient of the invented clinic. */
export interface Patient {
  readonly id: string;
  readonly name: string;
  /** ISO date. */
  readonly born: string;
  readonly number: string;
  /** One line of history for the list. */
  readonly summary: string;
}

/** The name under which the form submits the examination. */
export const EXAMINATION_NAME = 'pulses';

/** The name of the clinic's own choice between the map alone and the whole examination. */
export const EXTENT_NAME = 'extent';
export type Extent = 'pulses' | 'whole';

/** The name under which the form keeps the visit that it starts from. */
export const FROM_NAME = 'from';

/** What a visit's examination is shown and entered with. */
export function extentOf(fields: Readonly<Record<string, string>>): Extent {
  return fields[EXTENT_NAME] === 'whole' ? 'whole' : 'pulses';
}

/** The fields of the visit form by their names, as `FormData` gives them. `pulses` is opaque to the clinic: text in, text out. */
export type VisitFields = Readonly<Record<string, string>>;

export interface Visit {
  readonly id: string;
  readonly patientId: string;
  readonly fields: VisitFields;
  /** When it was saved last, ISO 8601. */
  readonly savedAt: string;
  /** How often it was saved; none before it is. A save from another number than the one kept would overwrite what nobody saw. */
  readonly revision?: number;
}

/** An identifier for a visit that nothing kept has yet. */
export function newId(): string {
  return [...crypto.getRandomValues(new Uint8Array(12))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
}

/** A form somebody began and has not saved. One per patient for a new visit, one per visit for an amendment. */
export interface Draft {
  readonly key: string;
  readonly patientId: string;
  readonly fields: VisitFields;
  /** What stood in the examination and could not be taken yet, as the element told it. */
  readonly unfinished?: unknown;
  readonly keptAt: string;
}

/** The key of the draft of a visit, or of a patient's next visit. */
export function draftKey(patientId: string, visitId?: string): string {
  return visitId ? `visit ${visitId}` : `new ${patientId}`;
}
