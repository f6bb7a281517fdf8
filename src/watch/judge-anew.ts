import { buildCase, type Case } from '../case';
import { fail, problem } from '../problem';
import type { Judges } from './look';
import type { Packing } from './ports';
import { caseInputOf, latestLookOf, type SavedCase } from './saved-case';
import type { KeptFile, KeptPicture, Look } from './types';

/** What else came of a piece since its latest look: each stands for what that look has. */
type Brought = Partial<Pick<Look, 'replies' | 'sent' | 'photos'>> & {
  pictures?: readonly KeptPicture[];
  files?: readonly KeptFile[];
};

export interface Anew {
  now: string;
  judges: Judges;
  packing: Packing;
}

/** The latest look of a case with what else came of it, judged anew as of now. */
export async function judgeAnew(
  saved: SavedCase,
  bring: (look: Look, pictures: readonly KeptPicture[], files: readonly KeptFile[]) => Brought,
  { now, judges, packing }: Anew,
) {
  const [latest] = saved.looks;
  const input = caseInputOf(saved);
  if (!input || latest?.state !== 'readable') return fail(problem('look-spoilt', 'watch list'));
  const {
    pictures = latest.pictures,
    files = latest.files,
    ...brought
  } = bring(latest.look, latest.pictures, latest.files);
  const judged = buildCase({ ...input, ...brought, now });
  return latestLookOf(judged, standing(judged, pictures), judges, packing, files);
}

/** Pictures of lines are kept where the line counts as a code, as when a case is kept first. */
function standing({ decodings }: Case, pictures: readonly KeptPicture[]): KeptPicture[] {
  const lines = new Set(decodings.flatMap(({ from }) => (from.kind === 'photo' ? [from.lineId] : [])));
  return pictures.filter(({ lineId }) => lineId === null || lines.has(lineId));
}
