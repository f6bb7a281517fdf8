import { useEffect, useState } from 'preact/hooks';
import { hostPatterns, notGranted, requestHosts } from '../../browser/permissions';
import type { PhotoLink } from '../../listing/types';
import type { PhotoRead } from '../../photo/read-types';
import { addressToAsk } from '../../reader/photo/address';
import { strings } from '../../words';
import { isFullSize } from '../copies';
import type { PanelState } from './state';

/** Failures that the right to the photo's host would mend. */
const mendable = new Set([
  'photo-unreachable',
  'capture-failed',
  'capture-disturbed',
  'photo-not-shown',
  'photo-covered',
]);

/** Whether the right to a photo's host would bring it, or bring it larger. */
function wouldBeMended(read: PhotoRead): boolean {
  if (read.state === 'unread') return mendable.has(read.problem.code);
  return !isFullSize(read) && !(read.came?.way === 'capture' && read.came.ledOn);
}

interface Props {
  state: PanelState;
  onAllowed: () => void;
  /** Whether it tells of small copies now. */
  onTold?: (told: boolean) => void;
}

/**
 * Offers the right to the hosts of photos whose full size the page itself may not fetch, and of frames that hold a
 * part of the listing; after it, the listing is read again.
 */
export function AllowHosts({ state, onAllowed, onTold }: Props) {
  const { listing, views } = state;
  const [stays, setStays] = useState(false);
  const photos = (listing?.photos ?? []).flatMap((link) => {
    const read = views[link.id]?.read;
    return read && wouldBeMended(read) ? [{ link, read }] : [];
  });
  const frames = (listing?.problems ?? []).filter(({ code }) => code === 'frame-not-read');
  // What would not be asked even with the right to it is not offered.
  const asked = listing ? photos.flatMap(({ link }) => addressToAsk(link.url, listing.url) ?? []) : [];
  const patterns = useNotGranted(hostPatterns([...asked, ...frames.map(({ where }) => where)]));
  const copies = photos.filter(({ read }) => read.state === 'read');
  const tells = patterns.length > 0 && copies.length > 0 && !state.incognito && !stays;
  useEffect(() => onTold?.(tells), [tells]);
  if (patterns.length === 0) return null;
  // The browser keeps what is allowed in the profile, and the host's name with it.
  if (state.incognito) return <p class="muted">{strings.photos.noAllowing}</p>;
  const hosts = patterns.map((pattern) => new URL(pattern.replace('*', '')).hostname).join(', ');
  const button = (
    <button
      type="button"
      onClick={async () => {
        if (await requestHosts(patterns)) onAllowed();
      }}
    >
      {strings.photos.allow(hosts)}
    </button>
  );
  if (copies.length === 0) return button;
  if (stays)
    return (
      <p class="row">
        {strings.copies.stayed} {button}
      </p>
    );
  return (
    <section class="notice" aria-labelledby="copies-title">
      <h2 id="copies-title">{strings.copies.title(copies.length)}</h2>
      <p>{strings.copies.offer(hosts, widthsOf(copies))}</p>
      <p>
        {strings.photos.numbered(copies.map(({ link }) => numberIn(state, link.id)))}:{' '}
        {strings.copies.notJudged(copies.length)}
      </p>
      <div class="row">
        {button}
        <button type="button" onClick={() => setStays(true)}>
          {strings.copies.stay}
        </button>
      </div>
      <p class="muted hint">{strings.copies.limits}</p>
    </section>
  );
}

const numberIn = ({ listing }: PanelState, id: string): number =>
  (listing?.photos.findIndex((photo) => photo.id === id) ?? -1) + 1;

/** Leaves out what the user has granted meanwhile: a right that is there brings nothing more. */
function useNotGranted(patterns: string[]): string[] {
  const [granted, setGranted] = useState<readonly string[]>([]);
  const key = patterns.join(' ');
  useEffect(() => {
    let current = true;
    notGranted(patterns)
      .then((open) => current && setGranted(patterns.filter((pattern) => !open.includes(pattern))))
      .catch(() => {});
    return () => {
      current = false;
    };
  }, [key]);
  return patterns.filter((pattern) => !granted.includes(pattern));
}

/** Widths of the first copy whose full width is known, and of that copy. */
function widthsOf(copies: { link: PhotoLink; read: PhotoRead }[]): { largest: number; copy: number } | null {
  for (const { link, read } of copies) {
    if (read.state !== 'read') continue;
    const onPage = read.came?.way === 'capture' ? (read.came.largest?.width ?? 0) : 0;
    const largest = Math.max(onPage, link.width ?? 0);
    if (largest > read.width) return { largest, copy: read.width };
  }
  return null;
}
