/**
 * Arrays that one network after another is worked out in: to make new ones for each would cost more than the arithmetic. A
 * network is stale once the next one has moved in.
 */
export class Room {
  tenant?: object;
  up = new Float64Array(0);
  clear = new Float64Array(0);
  shut = new Float64Array(0);
  sound = new Float64Array(0);
  local = new Float64Array(0);

  /** Lets a network in: twice its points, since what-ifs take the second half of each array. */
  let(tenant: object, points: number, states: number, locals: number): void {
    this.tenant = tenant;
    if (this.clear.length < 2 * points) this.#make(points, states);
    if (this.local.length < 2 * locals) this.local = new Float64Array(2 * locals);
    this.up.fill(1, 0, points * states);
    this.local.fill(1, 0, locals);
  }

  /** Makes room for more points of the same network, whose first ones stay. */
  grow(from: number, points: number, states: number): void {
    if (this.clear.length >= 2 * points) return;
    const { up, clear, shut, sound } = this;
    this.#make(points, states);
    this.up.set(up.subarray(0, from * states));
    this.clear.set(clear.subarray(0, from));
    this.shut.set(shut.subarray(0, from));
    this.sound.set(sound.subarray(0, from));
  }

  #make(points: number, states: number): void {
    this.up = new Float64Array(2 * points * states);
    this.clear = new Float64Array(2 * points);
    this.shut = new Float64Array(2 * points);
    this.sound = new Float64Array(2 * points);
  }
}
