import { browser } from './browser';
import { isEnvelope, type Reply, unforeseen } from './envelope';

type Answer = (input: never) => Promise<Reply>;

/**
 * Answers the background's messages inside a web page until `signal` ends. A content script hears its own extension
 * only, so the input is trusted; the background parses what comes back.
 */
export function answerInPage(answers: Record<string, Answer>, signal: AbortSignal): void {
  const listener = (
    value: unknown,
    sender: chrome.runtime.MessageSender,
    answer: (reply: Reply) => void,
  ): true | undefined => {
    if (!isEnvelope(value) || value.to !== 'page' || sender.id !== browser.runtime.id) return undefined;
    const handler = Object.hasOwn(answers, value.name) ? answers[value.name] : undefined;
    if (!handler) return undefined;
    handler(value.input as never)
      .catch((error: unknown): Reply => ({ ok: false, problem: unforeseen(value.name, error) }))
      .then(answer);
    return true;
  };
  browser.runtime.onMessage.addListener(listener);
  signal.addEventListener('abort', () => browser.runtime.onMessage.removeListener(listener));
}
