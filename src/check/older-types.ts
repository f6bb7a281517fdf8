/**
 * Findings, asks and reasons as cases kept them before their sentences stood with the languages: the sentences go
 * into the data, and are shown as they were written. Anything else is left as it is, for the schema to judge.
 */
type Fields = Record<string, unknown>;
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

export const liftReason = (why: unknown): unknown =>
  typeof why === 'string' ? { reason: 'as-written', data: { words: why } } : why;

export function liftAsk(ask: unknown): unknown {
  if (!isFields(ask) || typeof ask.words !== 'string') return ask;
  const { words, ...rest } = ask;
  return { ...rest, ask: 'as-written', data: { words } };
}

export function liftFinding(finding: unknown): unknown {
  if (!isFields(finding) || typeof finding.statement !== 'string') return finding;
  const { statement, basis, innocent, settles, asks, ...rest } = finding;
  return {
    ...rest,
    data: { written: { statement, basis, innocent, settles } },
    asks: Array.isArray(asks) ? asks.map(liftAsk) : asks,
  };
}

export function liftQuestion(question: unknown): unknown {
  if (!isFields(question) || typeof question.words !== 'string') return question;
  const { words, ...rest } = question;
  return { ...rest, asks: [{ ask: 'as-written', topic: rest.id, wants: rest.wants, data: { words } }] };
}
