import { fail, problem } from '../problem';
import { type Anew, judgeAnew } from './judge-anew';
import type { SavedCase } from './saved-case';

/** A mail of more characters is not kept whole. */
const mostCharacters = 20_000;
export const mostReplies = 50;

export const notKept = problem('record-refused', 'watch list', { reply: true });

/** The latest look of a case with one more reply of the seller, judged anew as of now. */
export async function withReply(saved: SavedCase, text: string, anew: Anew) {
  const [latest] = saved.looks;
  const replies = latest?.state === 'readable' ? latest.look.replies : [];
  const said = text.trim().slice(0, mostCharacters);
  if (said === '' || replies.length >= mostReplies || replies.some((one) => one.text === said)) return fail(notKept);
  return judgeAnew(saved, () => ({ replies: [...replies, { at: anew.now, text: said }] }), anew);
}
