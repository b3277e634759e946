/* global addEventListener, MessageChannel, performance, requestAnimationFrame */
// In the page: how long from an event, or from now, until its effect is painted.

/** Resolves with the time at which the frame that is now due has been painted: a message sent from within it waits for that. */
export function painted() {
  return new Promise((done) => {
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        port1.close();
        done(performance.now());
      };
      port2.postMessage(undefined);
    });
  });
}

let awaited;
let happened;

/** Starts to wait for one event; `latency` then tells the ms from its hardware time to the painted frame. */
export function arm(type) {
  awaited = new Promise((done) => {
    const listener = (event) => {
      happened = event.timeStamp;
      void painted().then((at) => done(at - event.timeStamp));
    };
    addEventListener(type, listener, { capture: true, once: true });
  });
}

/**
 * @param undone whether the effect is still missing: an act that comes before its code is done once that is there, and counts until then
 */
export async function latency(undone = () => false) {
  let ms = await awaited;
  for (let frame = 0; frame < 100 && undone(); frame++) ms = (await painted()) - happened;
  return ms;
}
