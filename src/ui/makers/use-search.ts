import { useEffect, useState } from 'preact/hooks';
import type { Learned } from '../../code';
import { learnBeside } from './learn-beside';
import type { Asked } from './learned';

/** `here`: why the search runs on the page itself; null while it runs beside it. */
export type Search =
  | { state: 'idle' }
  | { state: 'busy'; asked: Asked; here: string | null }
  | { state: 'ended' }
  | { state: 'done'; asked: Asked; learned: Learned; here: string | null };

/** One search at a time, beside the page; another one, a change of what was asked, or leaving ends it. */
export function useSearch() {
  const [search, setSearch] = useState<Search>({ state: 'idle' });
  const asked = search.state === 'busy' ? search.asked : null;
  useEffect(() => {
    if (!asked) return;
    const ended = new AbortController();
    let here: string | null = null;
    const onHere = (why: string) => {
      here = why;
      setSearch({ state: 'busy', asked, here });
    };
    void learnBeside(asked.examples, { signal: ended.signal, onHere }).then((learned) => {
      if (learned) setSearch({ state: 'done', asked, learned, here });
    });
    return () => ended.abort();
  }, [asked]);
  return {
    search,
    begin: (next: Asked) => setSearch({ state: 'busy', asked: next, here: null }),
    /** What is asked for is no longer what stands there. */
    change: () => setSearch((present) => (present.state === 'busy' ? { state: 'ended' } : present)),
  };
}
