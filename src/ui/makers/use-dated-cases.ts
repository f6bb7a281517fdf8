import { useEffect, useState } from 'preact/hooks';
import { plainName } from '../../maker';
import { inWatchList } from '../in-watch-list';
import type { DatedCase } from './dated-cases';

/** The kept cases of a maker, by any of its names, that have a code and a date that something else settles. */
export function useDatedCases(names: readonly string[]): readonly DatedCase[] {
  const [all, setAll] = useState<readonly DatedCase[]>([]);
  useEffect(() => {
    let current = true;
    inWatchList((list) => list.rows()).then((rows) => {
      if (!current || !rows.ok) return;
      setAll(
        rows.value.flatMap((row) =>
          row.state === 'readable' && row.removedAt === null && row.dated && row.dated.code !== '' ? [row.dated] : [],
        ),
      );
    });
    return () => {
      current = false;
    };
  }, []);
  const wanted = new Set(names.map(plainName).filter((name) => name !== ''));
  return all.filter(({ maker }) => wanted.has(plainName(maker)));
}
