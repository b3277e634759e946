// A bedside test on a page whose wall clock stands still until it is moved.
import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import 'pulse-map/elements/bedside-test/define';
import type { BedsideTest } from 'pulse-map/elements/bedside-test';
import type { BedsideTestId } from 'pulse-map/core';
import { clock } from '../../../src/elements/common/clock.js';
import { click, press, type } from '../../tools/real-input.js';
import { drawn, field } from './limbs.js';
import { byRole } from './perceive.js';

let now = 0;
const { steady } = clock;

/** Stops the clock for every test of a file, and starts each with no watch kept. */
export function withStandingClock(): void {
  beforeEach(() => {
    now = Date.UTC(2026, 2, 1, 9);
    clock.steady = () => now;
    sessionStorage.clear();
  });
  afterEach(() => {
    clock.steady = steady;
  });
}

/** Lets time pass, as in sleep: no timer fires for it. */
export const pass = (seconds: number): void => void (now += seconds * 1000);

export async function openTest(test: BedsideTestId, more: Partial<BedsideTest> = {}): Promise<BedsideTest> {
  const box = await fixture<HTMLElement>(
    html`<main lang="en"><bedside-test test=${test} side="left" name="test"></bedside-test></main>`,
  );
  const control = box.querySelector('bedside-test') as BedsideTest;
  Object.assign(control, more);
  await drawn(control);
  return control;
}

/** Presses something by its words. */
export async function tap(control: Element, name: string | RegExp, role = 'button'): Promise<void> {
  await click(byRole(control, role, name));
  await drawn(control);
}

/** Types into a field in place of what stands there, and leaves it. */
export async function enter(control: Element, label: string, text: string): Promise<void> {
  const input = field(control, label);
  input.focus();
  input.select();
  await type(text);
  await press('Tab');
  await drawn(control);
}
