type Fields = Record<string, unknown>;
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

/** A finding as cases kept it before its sentences stood with the languages: they are shown as they were written. */
export function liftFinding(finding: unknown): unknown {
  if (!isFields(finding)) return finding;
  if (typeof finding.statement !== 'string') return { ...finding, data: liftData(finding.data) };
  const { statement, basis, innocent, settles, ...rest } = finding;
  return { ...rest, data: { written: { statement, basis, innocent, settles } } };
}

const asWritten = (words: string) => ({ kind: 'as-written', words });

/** What a value of a code should have been, and what tells a near code from it, once stood as words in the data. */
function liftData(data: unknown): unknown {
  if (!isFields(data)) return data;
  const lifted = typeof data.expected === 'string' ? { ...data, expected: asWritten(data.expected) } : data;
  if (!isFields(data.near) || !('change' in data.near)) return lifted;
  const { change, ...near } = data.near;
  const differences = typeof change === 'string' ? [change].filter(Boolean).map(asWritten) : null;
  return { ...lifted, near: { ...near, differences } };
}
