import { buildCase } from '../case';
import { fail, type Problem, type Result } from '../problem';
import type { Judges } from './look';
import type { Packing } from './ports';
import { problemOf } from './record/standing';
import { caseOf, latestLookOf, type SavedCase } from './saved-case';

/** A mail of more characters is not kept whole. */
const mostCharacters = 20_000;
const mostReplies = 50;

const notKept: Problem = {
  code: 'record-refused',
  where: 'watch list',
  what: 'the reply is empty, or kept already, or one too many',
  remedy: 'Nothing was changed.',
};

/** The latest look of a case with one more reply of the seller, judged anew as of now. */
export async function withReply(
  saved: SavedCase,
  text: string,
  now: string,
  judges: Judges,
  packing: Packing,
): Promise<Awaited<ReturnType<typeof latestLookOf>> | Result<never>> {
  const [latest] = saved.looks;
  const kase = caseOf(saved);
  if (!kase || latest?.state !== 'readable') return fail(problemOf('look-spoilt', 'its latest look is not readable'));
  const { listing, photos, corrections, previous, replies = [] } = kase;
  const said = text.trim().slice(0, mostCharacters);
  if (said === '' || replies.length >= mostReplies || replies.some((one) => one.text === said)) return fail(notKept);
  const judged = buildCase({
    listing,
    photos,
    corrections,
    makers: saved.makers,
    replies: [...replies, { at: now, text: said }],
    now,
    previous,
  });
  return latestLookOf(judged, latest.pictures, judges, packing);
}
