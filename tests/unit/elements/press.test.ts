import fc from 'fast-check';
import type { ReactiveControllerHost } from 'lit';
import { describe, expect, it } from 'vitest';
import { Hand, type Press, type Tool } from '../../../src/elements/pulse-map/hand/press.js';
import type { SiteFinder } from '../../../src/elements/pulse-map/hand/site-finder.js';

/** While a pen was seen within this many ms, touches are the palm. */
const PALM_MS = 3000;
const SLOP = 5;

/** A tool that writes down what it is told. */
class Diary implements Tool {
  readonly said: string[] = [];
  readonly presses: Press[] = [];
  erases = false;
  draws = false;
  slop = (): number => SLOP;
  hover(): void {
    // Hovering is no press.
  }
  begin(press: Press): void {
    this.said.push('begin');
    this.presses.push(press);
  }
  captures(): boolean {
    return false;
  }
  reach(): void {
    this.said.push('reach');
  }
  show(): void {
    this.said.push('show');
  }
  tap(): void {
    this.said.push('tap');
  }
  stroke(): void {
    this.said.push('stroke');
  }
  erase(): void {
    this.said.push('erase');
  }
  end(): void {
    this.said.push('end');
  }
  activate(): void {
    this.said.push('activate');
  }
}

function handWith(tool: Tool): Hand {
  const host = { addController: () => undefined } as unknown as ReactiveControllerHost;
  const finder = {
    surface: null,
    point: ({ clientX, clientY }: PointerEvent) => ({ x: clientX, y: clientY }),
  } as unknown as SiteFinder;
  return new Hand(host, finder, tool);
}

const KINDS = ['down', 'move', 'up', 'cancel', 'leave'] as const;
type Kind = (typeof KINDS)[number];

interface Made {
  readonly kind: Kind;
  readonly pointerType: 'mouse' | 'pen' | 'touch';
  readonly pointerId: number;
  readonly x: number;
  readonly y: number;
  /** Time since the event before, in ms. */
  readonly after: number;
  readonly button?: number;
  readonly buttons?: number;
}

let clock = 0;

function send(hand: Hand, { kind, x, y, after, button = 0, buttons = 1, ...more }: Made): PointerEvent {
  clock += after;
  const event = {
    ...more,
    type: kind === 'cancel' ? 'pointercancel' : `pointer${kind}`,
    timeStamp: clock,
    button,
    buttons,
    clientX: x,
    clientY: y,
    isTrusted: false,
    getCoalescedEvents: () => [],
  } as unknown as PointerEvent;
  hand[kind](event);
  return event;
}

const made = fc.record({
  kind: fc.constantFrom(...KINDS),
  pointerType: fc.constantFrom('mouse' as const, 'pen' as const, 'touch' as const),
  pointerId: fc.integer({ min: 1, max: 3 }),
  x: fc.integer({ min: 0, max: 40 }),
  y: fc.integer({ min: 0, max: 40 }),
  after: fc.constantFrom(1, 16, 400, 4000),
  button: fc.constantFrom(0, 0, 0, 1, 2, 5),
  buttons: fc.constantFrom(0, 1, 2, 32),
}) as fc.Arbitrary<Made>;

const begin = { pointerType: 'touch', pointerId: 1, x: 0, y: 0, after: 10_000 } as const;

describe('any sequence of pointer events', () => {
  it('makes presses that begin once, act at most once, and end once, one after the other', () => {
    fc.assert(
      fc.property(fc.array(made, { maxLength: 40 }), (events) => {
        const diary = new Diary();
        const hand = handWith(diary);
        for (const event of events) send(hand, event);
        hand.stop();
        const story = diary.said.filter((said) => said !== 'show').join(' ');
        expect(story).toMatch(/^((begin( reach)*( tap| stroke| erase)? end) ?)*$/);
        expect(story, 'a tap has not moved').not.toMatch(/reach tap/);
        expect(hand.stop(), 'nothing is left').toBe(false);
      }),
      { numRuns: 1000 },
    );
  });

  it('begins none with a touch beside a pen, nor with a button that neither draws nor erases', () => {
    fc.assert(
      fc.property(fc.array(made, { maxLength: 40 }), (events) => {
        const diary = new Diary();
        const hand = handWith(diary);
        let pen = -Infinity;
        for (const event of events) {
          const before = diary.presses.length;
          const { timeStamp } = send(hand, event);
          if (event.pointerType === 'pen' && (event.kind === 'down' || event.kind === 'move'))
            pen = timeStamp;
          if (diary.presses.length === before) continue;
          if (event.pointerType === 'touch') expect(timeStamp - pen).toBeGreaterThanOrEqual(PALM_MS);
          if (event.pointerType !== 'pen') expect(event.button).toBe(0);
          else expect([0, 2, 5].includes(event.button ?? 0) || event.buttons === 32).toBe(true);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('never acts for a press that was cancelled', () => {
    fc.assert(
      fc.property(fc.array(made, { maxLength: 20 }), (between) => {
        const diary = new Diary();
        const hand = handWith(diary);
        send(hand, { ...begin, kind: 'down' });
        for (const event of between)
          if (event.pointerId !== 1 && event.pointerType === 'mouse') send(hand, event);
        send(hand, { ...begin, kind: 'cancel', after: 1 });
        send(hand, { ...begin, kind: 'up', after: 1 });
        expect(diary.said).toEqual(['begin', 'end']);
      }),
    );
  });
});

describe('a second contact', () => {
  const second = { ...begin, pointerId: 2, x: 100, after: 1 } as const;

  it('drops a stroke of a finger: two fingers are for the page', () => {
    const diary = new Diary();
    const hand = handWith(diary);
    send(hand, { ...begin, kind: 'down' });
    send(hand, { ...begin, kind: 'move', x: 20, after: 1 });
    send(hand, { ...second, kind: 'down' });
    send(hand, { ...begin, kind: 'up', x: 20, after: 1 });
    expect(diary.said).toEqual(['begin', 'reach', 'show', 'end']);
  });

  it('leaves a finger that has not moved its tap, and lets it draw nothing', () => {
    for (const [x, last] of [
      [0, 'tap'],
      [20, 'begin'],
    ] as const) {
      const diary = new Diary();
      const hand = handWith(diary);
      send(hand, { ...begin, kind: 'down' });
      send(hand, { ...second, kind: 'down' });
      send(hand, { ...begin, kind: 'move', x, after: 1 });
      send(hand, { ...begin, kind: 'up', x, after: 1 });
      expect(diary.said).toEqual([...new Set(['begin', last]), 'end']);
    }
  });

  it('does not stop the page from being zoomed by two fingers, though the tool draws', () => {
    const diary = new Diary();
    diary.draws = true;
    const hand = handWith(diary);
    let prevented = 0;
    const touch = { cancelable: true, preventDefault: () => prevented++, timeStamp: 0 } as unknown as Event;
    send(hand, { ...begin, kind: 'down' });
    hand.touchMove(touch);
    expect(prevented, 'one finger draws').toBe(1);
    send(hand, { ...second, kind: 'down' });
    hand.touchMove(touch);
    expect(prevented, 'two are for the page').toBe(1);
  });

  it('goes before a palm that touched first, when it is a pen', () => {
    const diary = new Diary();
    const hand = handWith(diary);
    send(hand, { ...begin, kind: 'down' });
    send(hand, { ...second, pointerType: 'pen', kind: 'down' });
    send(hand, { ...second, pointerType: 'pen', kind: 'up' });
    expect(diary.said).toEqual(['begin', 'end', 'begin', 'tap', 'end']);
    expect(diary.presses.at(-1)?.type).toBe('pen');
  });
});

describe('a tool taken up', () => {
  it('gives up what is under way, and does not hear its end', () => {
    const [bare, pen] = [new Diary(), new Diary()];
    const hand = handWith(bare);
    send(hand, { ...begin, kind: 'down' });
    hand.hold(pen);
    send(hand, { ...begin, kind: 'up', after: 1 });
    expect([bare.said, pen.said]).toEqual([['begin', 'end'], []]);
  });

  it('knows of a pen that the bare hand saw: the palm beside it draws nothing', () => {
    const [bare, tool] = [new Diary(), new Diary()];
    const hand = handWith(bare);
    send(hand, { ...begin, pointerType: 'pen', kind: 'move' });
    hand.hold(tool);
    send(hand, { ...begin, kind: 'down', after: 1000 });
    expect(tool.said).toEqual([]);
    hand.hold(undefined);
    send(hand, { ...begin, kind: 'down', after: 1000 });
    expect(bare.said).toEqual([]);
    send(hand, { ...begin, kind: 'down', after: 1001 });
    expect(bare.said, 'some seconds later a finger counts again').toEqual(['begin']);
  });
});
