import type { Result } from '../../problem';

interface Ports<T> {
  read(tabId: number): Promise<Result<T>>;
  /** Whether the tab's page still shows what was read of it. */
  stands(tabId: number): Promise<boolean>;
  /** Milliseconds from some beginning. */
  now(): number;
}

/** A panel that a click opens asks sooner than this: what is older was begun for nobody. */
export const mostAgeMs = 10_000;

/**
 * Readings that a click on the toolbar began, while the browser was still opening the panel. The panel that asks next
 * takes one, once, and only where the page still shows what was read; else the page is read when it is asked for. A
 * worker that was stopped in between has forgotten them, which costs a second reading and nothing else.
 */
export function keepBegunReadings<T>({ read, stands, now }: Ports<T>) {
  const begun = new Map<number, { reading: Promise<Result<T>>; at: number }>();
  return {
    begin(tabId: number): void {
      begun.set(tabId, { reading: read(tabId), at: now() });
    },
    async take(tabId: number): Promise<Result<T>> {
      const ahead = begun.get(tabId);
      begun.delete(tabId);
      if (!ahead || now() - ahead.at > mostAgeMs) return read(tabId);
      const reading = await ahead.reading;
      return reading.ok && (await stands(tabId)) ? reading : read(tabId);
    },
    drop: (tabId: number): boolean => begun.delete(tabId),
  };
}
