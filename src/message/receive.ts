import { fail, succeed } from '../problem';
import { answer, type Handlers, refusal } from './answer';
import { protocol } from './protocol';
import type { PagePart, Part } from './routes';

/** Answers the messages of one of the extension's own parts, whose input is checked. Returns what ends it. */
export const receive = <P extends Exclude<Part, PagePart>>(part: P, handlers: Handlers<P>): (() => void) =>
  answer(part, handlers, (name, value) => {
    const input = protocol[name].input.safeParse(value);
    return input.success ? succeed(input.data) : fail(refusal(name, 'malformed', input.error.issues[0]?.message ?? ''));
  });
