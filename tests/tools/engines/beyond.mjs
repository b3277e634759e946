// What an engine cannot be told from outside. A test that needs it is counted apart: neither passed nor failed.

const BEYOND = 'cannot be driven here: ';

/** By engine: what tests ask for, and what is missing for it. DEVELOPERS.md shows this table. */
export const LIMITS = {
  firefox: {
    'swipe that scrolls': 'touches of input.performActions reach the page alone, not what scrolls it',
    'tagged PDF': 'its PDF has no tags',
  },
  webkit: {
    'finger or pen': 'its WebDriver moves a mouse for a finger and refuses a pen',
    'forced colours': 'WebKit knows no such mode: the media feature is always none',
    'page as it prints': 'WebDriver Classic has no command for the kind of media',
    'accessibility tree': 'WebDriver Classic has no command for it',
    'tagged PDF': 'its PDF has no tags',
  },
};

export function beyond(engine, what) {
  if (!LIMITS[engine]?.[what]) throw new Error(`Found "${what}" for ${engine}, which has no line in LIMITS`);
  return new Error(`${BEYOND}${engine} has no ${what}`);
}

export function isBeyond(message = '') {
  return message.includes(BEYOND);
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
