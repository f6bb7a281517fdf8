/**
 * A pure function that works once for each object, as long as all else that it is given is the same: while photos come in
 * one by one a case is judged after each, and most of it is as it was. What it gives is shared, so nobody may change it.
 */
export function madeOnce<S extends object, R extends readonly unknown[], V>(
  make: (of: S, ...rest: R) => V,
): (of: S, ...rest: R) => V {
  const known = new WeakMap<S, { rest: R; value: V }>();
  return (of, ...rest) => {
    const before = known.get(of);
    if (before?.rest.every((value, at) => isSame(value, rest[at]))) return before.value;
    const value = make(of, ...rest);
    known.set(of, { rest, value });
    return value;
  };
}

/** Lists are made anew each time; what stands in them is not. */
const isSame = (one: unknown, other: unknown): boolean =>
  Array.isArray(one) && Array.isArray(other)
    ? one.length === other.length && one.every((value, at) => value === other[at])
    : one === other;
