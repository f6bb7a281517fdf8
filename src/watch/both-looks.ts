import type { Reply } from '../case';
import { fail } from '../problem';
import type { WatchDatabase } from './database';
import { type Anew, judgeAnew } from './judge-anew';
import { listingKey } from './listing-key';
import { readLook } from './look';
import { byName, type PartsByName, partsIn } from './parts-by-name';
import type { Packing } from './ports';
import { sentOf } from './read-saved';
import { mostReplies, notKept } from './reply';
import type { SavedCase } from './saved-case';
import { type BroughtPhoto, changedSent } from './sent';
import { joinChanges, removedOf } from './sent-changes';
import { openStored } from './store';
import type { ReadExport } from './transfer';
import type { LookName } from './types';

/*
 * One look that two machines went on from, each with replies and photos of its own: the one judged last stands, and gets
 * what only the other one has. A photo that was taken out on one of them stays out, unless it was brought again later.
 */

/** What came of a piece after its page was read. */
interface CameLater {
  replies: Reply[];
  sent: BroughtPhoto[];
}

/** What a look holds beside its page, out of a database or a file; null where the look cannot be read. */
async function cameLater(latest: LookName, parts: PartsByName, packing: Packing): Promise<CameLater | null> {
  const content = await readLook(parts, latest.look, packing);
  if (content.state !== 'readable') return null;
  return { replies: content.look.replies, sent: await sentOf(content.look, latest, parts, packing) };
}

/**
 * What came later of the looks that a file and the list both have and that each went on from, by the record's id; nothing
 * of those of which only a photo was taken out on either side, whichever look of them stands.
 */
export async function whatCameLater(database: WatchDatabase, { records }: ReadExport, packing: Packing) {
  const sides = new Map<string, CameLater[]>();
  for (const one of records) {
    if (!('record' in one)) continue;
    const [theirs] = one.record.looks;
    if (!theirs) continue;
    for (const { id } of await database.getAllFromIndex('rows', 'byKey', listingKey(one.record.shown.address))) {
      const own = openStored(await database.get('cases', id));
      const ours = own.ok ? own.value.looks[0] : undefined;
      if (!own.ok || !ours || ours.look === theirs.look) continue;
      const known = sides.get(id) ?? [];
      if (Date.parse(ours.readAt) === Date.parse(theirs.readAt)) {
        const both = [
          await cameLater(ours, partsIn(database), packing),
          await cameLater(theirs, byName(one.parts), packing),
        ];
        sides.set(id, [...known, ...both.flatMap((side) => side ?? [])]);
      } else if (removedOf(joinChanges(own.value.sentChanges, one.record.sentChanges)).size > 0) sides.set(id, known);
    }
  }
  return sides;
}

/**
 * The latest look of a case with all that either side has and without the photos that its record says were taken out, judged
 * anew as of now; a problem where it is so already.
 */
export async function withBoth(saved: SavedCase, sides: readonly CameLater[], anew: Anew) {
  const [latest] = saved.looks;
  // What the import left in the bin stays there as it is.
  if (latest?.state !== 'readable' || saved.record.removedAt !== null) return fail(notKept);
  const { replies, sent } = latest.look;
  const removed = removedOf(saved.record.sentChanges);
  const gone = new Set(sent.flatMap(({ id }) => (removed.has(id) ? [id] : [])));
  const known = new Set([...replies.map(({ text }) => text), ...sent.map(({ id }) => id)]);
  const isNew = (name: string) => !known.has(name) && known.add(name);
  const moreReplies = sides.flatMap((side) => side.replies.filter(({ text }) => isNew(text)));
  const moreSent = sides.flatMap((side) => side.sent.filter(({ photo }) => !removed.has(photo.id) && isNew(photo.id)));
  if (moreReplies.length + moreSent.length + gone.size === 0) return fail(notKept);
  const all = [...replies, ...moreReplies].sort((a, b) => Date.parse(a.at) - Date.parse(b.at)).slice(0, mostReplies);
  return judgeAnew(
    saved,
    (look, kept, whole) => ({ replies: all, ...changedSent(look, kept, whole, moreSent, gone) }),
    anew,
  );
}
