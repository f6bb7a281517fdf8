import { useEffect, useRef, useState } from 'preact/hooks';
import type { Case, NewCorrection } from '../../case';
import type { ByHand } from '../parts/by-hand';

/*
 * A photo lives in the document that read it, and a case in that document's session. A bench in a tab of its own borrows
 * both from there: the extension's own pages hear each other by a channel of the browser, and no other page does.
 */
const channelName = 'bench';

type Wish = { ask: true } | { correct: NewCorrection } | { undo: string };
type Loan = { kase: Case; photoId: string; photo?: Blob } | { ended: true };
type ToDesk = { to: 'desk'; key: string } & Wish;
type ToBench = { to: 'bench'; key: string } & Loan;

interface Lending {
  kase: Case;
  /** Addresses of the photos inside this document, by photo id. */
  files: Readonly<Record<string, string>>;
  byHand: ByHand;
}

/** Lends this document's photos to benches in other tabs, as long as it stands; gives the key to one of them. */
export function useLending({ kase, files, byHand }: Lending): (photoId: string) => string {
  const [desk] = useState(() => crypto.randomUUID());
  const now = useRef({ kase, files, byHand });
  now.current = { kase, files, byHand };
  /** Which photos are lent, each with the file that it had: another page's photos have the same ids. */
  const lent = useRef(new Map<string, string>());
  const channel = useRef<BroadcastChannel | null>(null);
  const say = (photoId: string, said: Loan) =>
    channel.current?.postMessage({ to: 'bench', key: keyOf(desk, photoId), ...said } satisfies ToBench);

  useEffect(() => {
    const opened = new BroadcastChannel(channelName);
    channel.current = opened;
    opened.onmessage = async ({ data }: MessageEvent<ToDesk | ToBench>) => {
      if (data.to !== 'desk' || !data.key.startsWith(`${desk}.`)) return;
      const photoId = data.key.slice(desk.length + 1);
      const { kase, files, byHand } = now.current;
      const file = files[photoId];
      if (file === undefined) return say(photoId, { ended: true });
      if ('ask' in data) {
        const photo = await (await fetch(file)).blob();
        lent.current.set(photoId, file);
        say(photoId, { kase: now.current.kase, photoId, photo });
      } else if (lent.current.get(photoId) !== file) say(photoId, { ended: true });
      else if ('correct' in data) byHand.correct(data.correct);
      else if (kase.corrections.some(({ id }) => id === data.undo)) byHand.undo(data.undo);
    };
    const end = () => {
      for (const photoId of lent.current.keys()) say(photoId, { ended: true });
      lent.current.clear();
    };
    addEventListener('pagehide', end);
    return () => {
      removeEventListener('pagehide', end);
      end();
      opened.close();
      channel.current = null;
    };
  }, [desk]);

  useEffect(() => {
    for (const [photoId, file] of lent.current) {
      if (files[photoId] === file) say(photoId, { kase, photoId });
      else {
        say(photoId, { ended: true });
        lent.current.delete(photoId);
      }
    }
  }, [kase, files]);

  return (photoId) => keyOf(desk, photoId);
}

const keyOf = (desk: string, photoId: string): string => `${desk}.${photoId}`;

export type Borrowed =
  | { state: 'waiting' | 'gone' }
  | { state: 'here' | 'lost'; kase: Case; photoId: string; photo: Blob; byHand: ByHand };

/** A desk that has not answered by then, milliseconds, is closed. */
const patience = 4000;

/** A photo of another document of this extension, with its case, as long as that document stands. */
export function useBorrowed(key: string | null): Borrowed {
  const [borrowed, setBorrowed] = useState<Borrowed>({ state: 'waiting' });
  useEffect(() => {
    setBorrowed({ state: 'waiting' });
    if (key === null) return;
    const channel = new BroadcastChannel(channelName);
    const say = (said: Wish) => channel.postMessage({ to: 'desk', key, ...said } satisfies ToDesk);
    const byHand: ByHand = {
      type: () => undefined,
      correct: (correct) => say({ correct }),
      undo: (undo) => say({ undo }),
    };
    channel.onmessage = ({ data }: MessageEvent<ToDesk | ToBench>) => {
      if (data.to !== 'bench' || data.key !== key) return;
      setBorrowed((before) => {
        const had = 'photo' in before ? before : null;
        if ('ended' in data) return had ? { ...had, state: 'lost' } : { state: 'gone' };
        const photo = had?.photo ?? data.photo;
        return photo ? { state: 'here', kase: data.kase, photoId: data.photoId, photo, byHand } : before;
      });
    };
    say({ ask: true });
    const timer = setTimeout(
      () => setBorrowed((before) => (before.state === 'waiting' ? { state: 'gone' } : before)),
      patience,
    );
    return () => {
      clearTimeout(timer);
      channel.close();
    };
  }, [key]);
  return borrowed;
}
