import { STAGING_SOURCES } from './sources.js';

/** Grades of infection: how many local signs make one, how far redness reaches, how many signs of the whole body. */
export const INFECTION_BOUNDS = {
  signs: 2,
  rednessOver: 0.5,
  moderateOver: 2,
  systemicSigns: 2,
  source: `${STAGING_SOURCES.mills2014}; systemic signs from memory`,
} as const;
