export * as PRESSURE_SOURCES from './published.js';

/** A published figure and where it stands. */
export interface Figure<T = number> {
  readonly value: T;
  readonly source: string;
}
