import type { Json, RecordPath } from '../examination/index.js';
import type { UnreadCode } from '../statements/index.js';

/** Something of a bundle that was not read, where it stands, and why. */
export interface Unread {
  /** As FHIRPath: `entry[3].resource.valueQuantity`. */
  readonly path: string;
  readonly why: UnreadCode;
}

/** A value for a place of the record, and where in the bundle it stands. */
export interface Found {
  readonly path: RecordPath;
  readonly value: Json;
  readonly at: string;
}

/** What one Observation holds. */
export interface Reading {
  readonly found: readonly Found[];
  readonly unread: readonly Unread[];
}

export const unread = (path: string, why: UnreadCode): Reading => ({ found: [], unread: [{ path, why }] });

/** Several readings as one. */
export function joined(readings: readonly Reading[]): Reading {
  return { found: readings.flatMap((one) => one.found), unread: readings.flatMap((one) => one.unread) };
}
