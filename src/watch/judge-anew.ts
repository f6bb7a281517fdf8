import { buildCase, type Case, type Reply, type SentPhoto } from '../case';
import type { PhotoRead } from '../photo/read-types';
import { fail, problem } from '../problem';
import type { Judges } from './look';
import type { Packing } from './ports';
import { caseOf, latestLookOf, type SavedCase } from './saved-case';
import type { KeptPicture } from './types';

/** What else came of a piece since its latest look: each stands for what that look has. */
interface Brought {
  replies?: readonly Reply[];
  sent?: readonly SentPhoto[];
  photos?: PhotoRead[];
  pictures?: readonly KeptPicture[];
}

export interface Anew {
  now: string;
  judges: Judges;
  packing: Packing;
}

/** The latest look of a case with what else came of it, judged anew as of now. */
export async function judgeAnew(
  saved: SavedCase,
  bring: (kase: Case, pictures: readonly KeptPicture[]) => Brought,
  { now, judges, packing }: Anew,
) {
  const [latest] = saved.looks;
  const kase = caseOf(saved);
  if (!kase || latest?.state !== 'readable') return fail(problem('look-spoilt', 'watch list'));
  const { listing, photos, corrections, previous, replies, sent } = kase;
  const brought = bring(kase, latest.pictures);
  const judged = buildCase({
    listing,
    photos: brought.photos ?? photos,
    corrections,
    makers: saved.makers,
    replies: brought.replies ?? replies,
    sent: brought.sent ?? sent,
    now,
    previous,
  });
  return latestLookOf(judged, standing(judged, brought.pictures ?? latest.pictures), judges, packing);
}

/** Pictures of lines are kept where the line counts as a code, as when a case is kept first. */
function standing({ decodings }: Case, pictures: readonly KeptPicture[]): KeptPicture[] {
  const lines = new Set(decodings.flatMap(({ from }) => (from.kind === 'photo' ? [from.lineId] : [])));
  return pictures.filter(({ lineId }) => lineId === null || lines.has(lineId));
}
