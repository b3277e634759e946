import { testSources } from '../bedside/index.js';
import type { BedsideTestId, Pressures } from '../examination/index.js';
import { type PressureSettings, pressureSources } from '../pressures/index.js';
import { stageSources, type StageScheme } from '../staging/index.js';
import { type FlagCode, flagSources } from '../triage/index.js';

/** A verdict that a clinician reads, as far as its sources depend on it. */
export type SourcedVerdict =
  | { readonly code: 'stage'; readonly scheme: StageScheme }
  | { readonly code: 'test'; readonly test: BedsideTestId; readonly limit?: number }
  | { readonly code: 'pressures'; readonly pressures: Pressures; readonly settings: PressureSettings }
  | { readonly code: 'flag'; readonly flag: FlagCode };

/** What a verdict rests on, as cited, each source once; what has no published source says so. */
export function sourcesOf(verdict: SourcedVerdict): readonly string[] {
  switch (verdict.code) {
    case 'stage':
      return stageSources(verdict.scheme);
    case 'test':
      return testSources(verdict.test, verdict.limit);
    case 'pressures':
      return pressureSources(verdict.pressures, verdict.settings);
    case 'flag':
      return flagSources(verdict.flag);
  }
}
