/**
 * Ends the copy of a script that was put into the page before, and gives the signal of this one: an extension that was
 * reloaded, or a page that is read again, would otherwise be answered twice.
 */
export function replaceEarlier(script: string): AbortSignal {
  const name = Symbol.for(`tellstamp.${script}`);
  const scope = globalThis as typeof globalThis & { [name: symbol]: AbortController | undefined };
  scope[name]?.abort();
  const running = new AbortController();
  scope[name] = running;
  return running.signal;
}
