/**
 * An object whose members are those of `current()` at the time they are asked for, and so on inwards: what a module keeps
 * of it when it is loaded follows a later choice of language. Strings and functions are given as they stand.
 */
export function live<T extends object>(current: () => T): T {
  const parts = new Map<PropertyKey, object>();
  return new Proxy(Array.isArray(current()) ? [] : {}, {
    get(_, name) {
      const value = Reflect.get(current(), name);
      if (typeof value !== 'object' || value === null) return value;
      if (!parts.has(name))
        parts.set(
          name,
          live(() => Reflect.get(current(), name) as object),
        );
      return parts.get(name);
    },
    has: (_, name) => Reflect.has(current(), name),
    ownKeys: () => Reflect.ownKeys(current()),
    getOwnPropertyDescriptor(target, name) {
      const found = Reflect.getOwnPropertyDescriptor(current(), name);
      if (!found || Reflect.getOwnPropertyDescriptor(target, name)?.configurable === false)
        return found && { ...found, configurable: false };
      return { ...found, configurable: true };
    },
  }) as T;
}
