import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Some browsers require permission to read the device orientation. */
interface AskingOrientation {
  requestPermission?: () => Promise<'granted' | 'denied'>;
}

export type SensorTrouble = 'sensorRefused' | 'sensorMissing';

/** The angle of the device's long edge above the level, in degrees from 0 to 90, whichever end is up. */
function tiltOf(beta: number): number {
  const steep = Math.abs(beta) % 180;
  return Math.round(steep > 90 ? 180 - steep : steep);
}

/** Asks for the sensor where the browser wants to be asked. */
async function isAllowed(): Promise<boolean> {
  const asking = DeviceOrientationEvent as unknown as AskingOrientation;
  try {
    return ((await asking.requestPermission?.()) ?? 'granted') === 'granted';
  } catch {
    return false;
  }
}

/**
 * Reads the angle of a phone laid along the shin. Active only while switched on by the user, on devices that have the
 * sensor and grant access.
 */
export class ShinSensor implements ReactiveController {
  on = false;
  trouble: SensorTrouble | undefined;
  #heard = false;
  /** Counts what a person asked for, and removals: an answer to an earlier request for the sensor comes too late. */
  #turn = 0;
  readonly #turned = ({ beta }: DeviceOrientationEvent): void => {
    if (beta === null) {
      this.#fail('sensorMissing');
      return;
    }
    this.#heard = true;
    this.angle(tiltOf(beta));
  };

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly angle: (degrees: number) => void,
  ) {
    host.addController(this);
  }

  /** Offered on handheld devices with the sensor. */
  get offered(): boolean {
    return 'DeviceOrientationEvent' in globalThis && (matchMedia('(pointer: coarse)').matches || this.on);
  }

  hostDisconnected(): void {
    this.#stop();
  }

  toggle(): void {
    if (this.on) this.#stop();
    else void this.#start();
  }

  async #start(): Promise<void> {
    const turn = ++this.#turn;
    const allowed = await isAllowed();
    if (turn !== this.#turn) return;
    this.#heard = false;
    if (!allowed) return this.#fail('sensorRefused');
    this.trouble = undefined;
    this.on = true;
    addEventListener('deviceorientation', this.#turned);
    this.host.requestUpdate();
  }

  #fail(trouble: SensorTrouble): void {
    if (this.#heard) return;
    this.#stop();
    this.trouble = trouble;
    this.host.requestUpdate();
  }

  #stop(): void {
    this.#turn++;
    removeEventListener('deviceorientation', this.#turned);
    this.on = false;
    this.host.requestUpdate();
  }
}
