/** What is still to be worked out for an object, or was; on the object under a symbol that nobody lists. */
const KEPT = Symbol('worked out when asked for');

interface Kept {
  readonly make: Record<string, () => unknown>;
  readonly made: Record<string, unknown>;
}

type Holder = object & { [KEPT]?: Kept };

const GETTERS = new Map<string, (this: Holder) => unknown>();

/** One getter for a name, shared by all objects, so that they keep one shape and stay fast. */
function getterOf(key: string): (this: Holder) => unknown {
  let getter = GETTERS.get(key);
  if (!getter) {
    getter = function (this: Holder): unknown {
      const { make, made } = this[KEPT]!;
      if (!(key in made)) made[key] = make[key]!();
      return made[key];
    };
    GETTERS.set(key, getter);
  }
  return getter;
}

/** Adds a property that is worked out when it is first asked for, and kept. */
export function lazily<T extends object, K extends string, V>(
  target: T,
  key: K,
  make: () => V,
): T & Record<K, V> {
  const holder = target as Holder;
  if (!holder[KEPT]) Object.defineProperty(holder, KEPT, { value: { make: {}, made: {} } });
  holder[KEPT]!.make[key] = make;
  Object.defineProperty(target, key, { enumerable: true, configurable: true, get: getterOf(key) });
  return target as T & Record<K, V>;
}
