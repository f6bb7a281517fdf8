import { fail, type Problem } from '../problem';
import { type Anew, judgeAnew } from './judge-anew';
import { caseOf, type SavedCase } from './saved-case';

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
export async function withReply(saved: SavedCase, text: string, anew: Anew) {
  const replies = caseOf(saved)?.replies ?? [];
  const said = text.trim().slice(0, mostCharacters);
  if (said === '' || replies.length >= mostReplies || replies.some((one) => one.text === said)) return fail(notKept);
  return judgeAnew(saved, () => ({ replies: [...replies, { at: anew.now, text: said }] }), anew);
}
