/** Memoizes the last call, so that results can be compared by reference. */
export function memoizeLast<A extends readonly unknown[], R>(make: (...args: A) => R): (...args: A) => R {
  let last: { readonly args: A; readonly result: R } | undefined;
  return (...args) => {
    if (!last || args.some((arg, i) => arg !== last?.args[i])) last = { args, result: make(...args) };
    return last.result;
  };
}
