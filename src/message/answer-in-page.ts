import { answer, type Handlers } from './answer';
import type { PagePart } from './routes';

/**
 * Answers the messages to one of the scripts inside a web page until `signal` ends. No page can send to it, and the
 * sender is looked at, so the input is trusted: the schemas are too large for a page. Who asked checks what comes back.
 */
export function answerInPage<P extends PagePart>(part: P, handlers: Handlers<P>, signal: AbortSignal): void {
  const end = answer(part, handlers, (_, input) => ({ ok: true, value: input }));
  signal.addEventListener('abort', end);
}
