/** Where one photo stands on its way from the page into the case. Times are milliseconds of the session's clock. */
export type Way =
  | { at: 'unasked' }
  | { at: 'asked'; since: number }
  /** Its bytes are here, and it was not looked at yet. */
  | { at: 'here' }
  /** Glanced at, or looked at closer; `again` where reading it failed once for reasons of the reader's own. */
  | { at: 'seen'; likelihood: number; again: boolean; closer: boolean }
  /** Being looked at, or read; `alone` where nothing else may be at the same time. */
  | { at: 'work'; closer: boolean; alone: boolean }
  | { at: 'done'; closer: boolean };

/**
 * What the reader does next; `index` counts from 0. `busy`: nothing more until what it is at is done. `rest`: all that
 * answered is read, and what is missing is late.
 */
export type Step =
  | { do: 'glance'; index: number }
  | { do: 'look-closer'; index: number }
  | { do: 'read'; index: number }
  | { do: 'busy' }
  | { do: 'wait'; until: number }
  | { do: 'rest' }
  | { do: 'end' };

/** Photos on their way at once. Common practice: what a browser itself asks of one host at once. */
export const mostAtOnce = 6;
/** A photo that takes longer holds no place among those any more, and the reading does not wait for it to end. */
export const slowMs = 2_500;
/** After the last photo came, no more than so long is waited for slow ones before the reading says that it rests. */
const quietMs = 1_000;

/** How many more photos may be asked for now. */
export function placesLeft(ways: readonly Way[], now: number): number {
  return mostAtOnce - ways.filter((way) => way.at === 'asked' && now - way.since < slowMs).length;
}

/**
 * The reader's next step: every photo that is here is glanced at first, the likelier half is looked at closer, the
 * likeliest is read first, and what failed once comes last, alone, by a fresh reader. Pure, so that the order depends on
 * nothing but what is known of the photos.
 */
export function nextStep(ways: readonly Way[], now: number, lastArrival: number): Step {
  const isAtWork = ways.some(({ at }) => at === 'work');
  if (ways.some((way) => way.at === 'work' && way.alone)) return { do: 'busy' };
  const here = ways.findIndex(({ at }) => at === 'here');
  if (here >= 0) return { do: 'glance', index: here };
  const closer = nextCloser(ways);
  if (closer !== null) return { do: 'look-closer', index: closer };
  const best = likeliest(ways);
  const isAlone = best !== null && isAgain(ways[best]);
  if (best !== null && !(isAlone && isAtWork)) return { do: 'read', index: best };
  if (isAtWork) return { do: 'busy' };
  const asked = ways.flatMap((way) => (way.at === 'asked' ? [way.since] : []));
  if (asked.length === 0) return { do: 'end' };
  const fresh = asked.filter((since) => now - since < slowMs);
  if (fresh.length > 0) return { do: 'wait', until: Math.min(...fresh) + slowMs };
  const restAt = lastArrival + quietMs;
  return now < restAt ? { do: 'wait', until: restAt } : { do: 'rest' };
}

/**
 * The photo to look at closer: of half of the listing's photos, the likeliest first, as long as one may still pass those
 * that were looked at. Where only one would be, or nothing was seen, a second look tells no order.
 */
function nextCloser(ways: readonly Way[]): number | null {
  const half = Math.floor(ways.length / 2);
  const looked = ways.filter((way) => 'closer' in way && way.closer).length;
  if (half < 2 || looked >= half) return null;
  const seen = ways.flatMap((way, index) =>
    way.at === 'seen' && !way.closer && !way.again && way.likelihood > 0 ? [{ ...way, index }] : [],
  );
  seen.sort((a, b) => b.likelihood - a.likelihood || a.index - b.index);
  const [next] = seen;
  const first = Math.max(0, ...ways.map((way) => (way.at === 'seen' && way.closer && !way.again ? way.likelihood : 0)));
  // The most that both looks together can come to.
  return next && first < (next.likelihood + 1) / 2 ? next.index : null;
}

const isAgain = (way: Way | undefined): boolean => way?.at === 'seen' && way.again;

/** The photo to read next: what failed once comes last, and of equals the listing's first is read first. */
function likeliest(ways: readonly Way[]): number | null {
  const seen = ways.flatMap((way, index) => (way.at === 'seen' ? [{ ...way, index }] : []));
  seen.sort((a, b) => Number(a.again) - Number(b.again) || b.likelihood - a.likelihood || a.index - b.index);
  return seen[0]?.index ?? null;
}
