import type * as z from 'zod';
import { browser } from '../browser/api';
import { fail, problem, type Result, succeed } from '../problem';
import type { Envelope, Reply } from './envelope';
import { unforeseen } from './envelope';
import { type InputOf, type OutputOf, protocol } from './protocol';
import { type HandledBy, type MessageName, type PagePart, type Part, routes } from './routes';

/** What the browser says when a worker was stopped in the middle, or is just starting: every message may be repeated. */
const partWasNotThere = /Receiving end does not exist|message (port|channel) (is )?closed|channel closed/i;
const attempts = 4;

/** Sends a message to another part of the extension and checks the answer. Never throws. */
export const send = <N extends HandledBy<Exclude<Part, PagePart>>>(
  name: N,
  input: InputOf<N>,
): Promise<Result<OutputOf<N>>> => post(name, input, (envelope) => browser.runtime.sendMessage(envelope));

/** Sends a message to a script inside a tab's page (top frame). */
export const sendToPage = <N extends HandledBy<PagePart>>(
  tabId: number,
  name: N,
  input: InputOf<N>,
): Promise<Result<OutputOf<N>>> =>
  post(name, input, (envelope) => browser.tabs.sendMessage(tabId, envelope, { frameId: 0 }));

async function post<N extends MessageName>(
  name: N,
  input: InputOf<N>,
  deliver: (envelope: Envelope) => Promise<unknown>,
): Promise<Result<OutputOf<N>>> {
  const { output } = protocol[name];
  const envelope: Envelope = { tellstamp: 1, to: routes[name].handledBy, name, input };
  for (let attempt = 1; ; attempt++) {
    try {
      const reply = (await deliver(envelope)) as Reply | undefined;
      if (reply) return checkReply(name, reply, output as unknown as z.ZodType<OutputOf<N>>);
      if (attempt >= attempts) return fail(noAnswer(name));
    } catch (error) {
      if (!partWasNotThere.test(String(error))) return fail(unforeseen(name, error));
      if (attempt >= attempts) return fail(noAnswer(name));
    }
    // A part that is starting needs a moment; the browser tells nobody when its listener stands.
    await new Promise((wake) => setTimeout(wake, 60 * attempt));
  }
}

function checkReply<O>(name: MessageName, reply: Reply, output: z.ZodType<O>): Result<O> {
  if (!reply.ok) return reply;
  const parsed = output.safeParse(reply.value);
  if (parsed.success) return succeed(parsed.data);
  const first = parsed.error.issues[0];
  const where = `${name} ${first?.path.join('.') ?? ''}`.trim();
  return fail(problem('reply-malformed', where, { said: first?.message ?? '' }));
}

const noAnswer = (name: string) => problem('no-answer', name);
