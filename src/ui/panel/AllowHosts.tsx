import { hostPatterns, requestHosts } from '../../bridge/permissions';
import { strings } from '../strings';
import type { PanelState } from './state';

/** Failures that the right to the photo's host would mend. */
const mendable = new Set(['photo-unreachable', 'capture-failed', 'photo-not-shown']);

/**
 * Offers the right to the hosts of photos that the page itself may not fetch, and of frames that hold a part of the
 * listing; after it, the listing is read again.
 */
export function AllowHosts({ state, onAllowed }: { state: PanelState; onAllowed: () => void }) {
  const { listing, views } = state;
  if (!listing) return null;
  const unread = listing.photos.filter(({ id }) => {
    const read = views[id]?.read;
    return read?.state === 'unread' && mendable.has(read.problem.code);
  });
  const frames = listing.problems.filter(({ code }) => code === 'frame-not-read');
  const patterns = hostPatterns([...unread.map(({ url }) => url), ...frames.map(({ where }) => where)]);
  if (patterns.length === 0) return null;
  const hosts = patterns.map((pattern) => new URL(pattern.replace('*', '')).hostname).join(', ');
  return (
    <button
      type="button"
      onClick={async () => {
        if (await requestHosts(patterns)) onAllowed();
      }}
    >
      {strings.photos.allow(hosts)}
    </button>
  );
}
