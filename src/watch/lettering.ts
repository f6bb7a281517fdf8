import type { HandMark, HandMeasure } from '../photo';
import type { WatchDatabase } from './database';
import { readLook } from './look';
import { partsIn } from './parts-by-name';
import type { Packing } from './ports';
import { knownCorrections } from './saved-case';
import { openStored } from './store';

/** A line of characters that the buyer measured in a kept case. */
export interface KeptLettering {
  id: string;
  title: string;
  /** By which maker's file the case was judged; null where by none. */
  maker: string | null;
  mark: HandMark;
  measured: readonly HandMeasure[];
}

/** The measured lines of all cases but that of one listing, as they were looked at last; what is in the bin counts for nothing. */
export async function findLettering(
  database: WatchDatabase,
  packing: Packing,
  except: string,
): Promise<KeptLettering[]> {
  const found: KeptLettering[] = [];
  for (const row of await database.getAll('rows')) {
    if (row.state !== 'readable' || row.removedAt !== null || row.key === except) continue;
    const opened = openStored(await database.get('cases', row.id));
    const latest = opened.ok ? opened.value.looks[0] : undefined;
    if (!latest) continue;
    const lines = knownCorrections(latest).flatMap((one) =>
      one.of === 'mark' && one.mark.kind === 'lettering' ? [one] : [],
    );
    if (lines.length === 0) continue;
    const content = await readLook(partsIn(database), latest.look, packing);
    const maker = content.state === 'readable' ? (content.look.judged.maker?.name ?? null) : null;
    for (const { mark, measured } of lines) found.push({ id: row.id, title: row.title, maker, mark, measured });
  }
  return found;
}
