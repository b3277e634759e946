/** A derivation of an object that is replaced, never changed: made once for each. */
export function once<K extends object, V>(derive: (of: K) => V): (of: K) => V {
  const known = new WeakMap<K, V>();
  return (of) => {
    const found = known.get(of);
    if (found !== undefined) return found;
    const made = derive(of);
    known.set(of, made);
    return made;
  };
}
