import { type Parsed, parseWith } from '../examination/index.js';
import { type Patient, type PatientInput, patientOf } from './patient.js';
import { patientSchema } from './schema.js';

/**
 * Reads an unknown value as a patient and fills in every default. Never throws.
 * @param input plain data, for instance from `JSON.parse`
 * @returns the patient, or every fault with its path, what was found and what was expected
 */
export function parsePatient(input: unknown): Parsed<Patient> {
  const parsed = parseWith(patientSchema, input, { strict: true });
  return parsed.ok ? { ok: true, value: patientOf(parsed.value as PatientInput) } : parsed;
}
