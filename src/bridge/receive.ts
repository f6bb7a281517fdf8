import { fail, type Result } from '../problem';
import { browser } from './browser';
import { type Envelope, isEnvelope, type Reply, unforeseen } from './envelope';
import { type HandledBy, type InputOf, type MessageName, type OutputOf, type Part, protocol } from './protocol';

export type Handlers<P extends Part> = {
  [N in HandledBy<P>]: (input: InputOf<N>, sender: chrome.runtime.MessageSender) => Promise<Result<OutputOf<N>>>;
};

type AnyHandler = (input: unknown, sender: chrome.runtime.MessageSender) => Promise<Result<unknown>>;

/** Answers the messages of one part. Call it synchronously at start. Returns what ends it. */
export function receive<P extends Part>(part: P, handlers: Handlers<P>): () => void {
  const listener = (
    value: unknown,
    sender: chrome.runtime.MessageSender,
    answer: (reply: Reply) => void,
  ): true | undefined => {
    if (!isEnvelope(value) || value.to !== part) return undefined;
    respond(part, handlers as unknown as Record<string, AnyHandler>, value, sender).then(answer);
    return true;
  };
  browser.runtime.onMessage.addListener(listener);
  return () => browser.runtime.onMessage.removeListener(listener);
}

async function respond(
  part: Part,
  handlers: Record<string, AnyHandler>,
  envelope: Envelope,
  sender: chrome.runtime.MessageSender,
): Promise<Reply> {
  const definition = Object.hasOwn(protocol, envelope.name) ? protocol[envelope.name as MessageName] : undefined;
  const handler = Object.hasOwn(handlers, envelope.name) ? handlers[envelope.name] : undefined;
  if (!definition || !handler || definition.handledBy !== part) {
    return fail(refused(envelope.name, 'unknown message'));
  }
  // Only the extension's own pages and worker send to these parts: a web page's script never does.
  if (sender.id !== browser.runtime.id || !isOwnPage(sender)) return fail(refused(envelope.name, 'sender not allowed'));
  const input = definition.input.safeParse(envelope.input);
  if (!input.success) return fail(refused(envelope.name, input.error.issues[0]?.message ?? 'malformed'));
  try {
    return await handler(input.data, sender);
  } catch (error) {
    return fail(unforeseen(envelope.name, error));
  }
}

/** Whether the sender runs at the extension's own address. A background worker gives no address at all. */
export function isOwnPage(sender: { url?: string; origin?: string; tab?: unknown }): boolean {
  const address = sender.url ?? sender.origin;
  if (address === undefined) return sender.tab === undefined;
  return address.startsWith(browser.runtime.getURL(''));
}

const refused = (name: string, what: string) => ({
  code: 'message-refused',
  where: name,
  what,
  remedy: 'Reload the extension if this stays.',
});
