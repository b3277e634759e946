// What an engine cannot be told from outside. A test that needs it is counted apart: neither passed nor failed.

const BEYOND = 'cannot be driven here: ';

export function beyond(engine, what) {
  return new Error(`${BEYOND}${engine} has no ${what}`);
}

export function isBeyond(message = '') {
  return message.includes(BEYOND);
}

/** Settings of a reader that are all at rest ask for nothing. */
export function asksNothing({ media, features }) {
  return !media && features.every(({ value }) => value === '');
}

/** Actions of WebDriver for what real-input.ts asks for; `round` for an engine that takes whole numbers only. */
export function pointerActions(events, round = (n) => n) {
  const move = ({ x, y }) => ({ type: 'pointerMove', x: round(x), y: round(y), duration: 0 });
  return events.flatMap((event) => {
    const button = event.button === 'right' ? 2 : 0;
    if (event.type === 'move') return [move(event)];
    if (event.type === 'up') return [{ type: 'pointerUp', button }];
    return [move(event), { type: 'pointerDown', button }];
  });
}
