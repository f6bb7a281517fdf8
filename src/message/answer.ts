import { browser } from '../browser/api';
import type { Problem, ProblemData, Result, Told } from '../problem';
import { isEnvelope, type Reply, unforeseen } from './envelope';
import type { InputOf, OutputOf } from './protocol';
import { type HandledBy, type MessageName, type Part, routes } from './routes';
import { partOf, type Sender } from './sender';

/** What a part does with each message that it handles: exactly these, so that a missing or misspelt one does not compile. */
export type Handlers<P extends Part> = { [N in HandledBy<P>]: Handler<N> };
type Handler<N extends MessageName> = (input: InputOf<N>) => Promise<Result<OutputOf<N>>>;

/** Looks at what came in before a handler sees it. */
export type CheckInput = (name: MessageName, input: unknown) => Result<unknown>;

/**
 * Answers the messages of one part. Call it synchronously at start. Returns what ends it. Free of zod: the scripts
 * inside the page use it as it is.
 */
export function answer<P extends Part>(part: P, handlers: Handlers<P>, check: CheckInput): () => void {
  const listener = (value: unknown, sender: Sender, reply: (answer: Reply) => void): true | undefined => {
    if (!isEnvelope(value) || value.to !== part) return undefined;
    const { name, input } = value;
    respond(part, handlers, { name, input, sender }, check)
      .catch((error: unknown): Reply => ({ ok: false, problem: unforeseen(name, error) }))
      .then(reply);
    return true;
  };
  browser.runtime.onMessage.addListener(listener);
  return () => browser.runtime.onMessage.removeListener(listener);
}

interface Received {
  name: string;
  input: unknown;
  sender: Sender;
}

async function respond<P extends Part>(
  part: P,
  handlers: Handlers<P>,
  { name, input, sender }: Received,
  check: CheckInput,
): Promise<Reply> {
  if (!isHandled(part, handlers, name)) return refuse(name, 'no-handler', part);
  const allowed: readonly Part[] = routes[name].sentBy;
  const from = partOf(sender);
  if (from === null) return refuse(name, 'from-nowhere', allowed.join(', '));
  if (!allowed.includes(from)) return refuse(name, 'not-from', `${from}: ${allowed.join(', ')}`);
  const checked = check(name, input);
  if (!checked.ok) return checked;
  const handler = handlers[name] as (input: unknown) => Promise<Reply>;
  return handler(checked.value);
}

const isHandled = <P extends Part>(part: P, handlers: Handlers<P>, name: string): name is HandledBy<P> =>
  Object.hasOwn(routes, name) && routes[name as MessageName].handledBy === part && Object.hasOwn(handlers, name);

type Why = ProblemData['message-refused']['why'];

const refuse = (name: string, why: Why, said: string): Reply => ({ ok: false, problem: refusal(name, why, said) });

/** `said`: names of parts, or what was wrong with the content; for a report. */
export const refusal = (name: string, why: Why, said: string): Problem =>
  ({ code: 'message-refused', where: name, data: { why, said } }) satisfies Told;
