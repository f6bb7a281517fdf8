type Fields = Record<string, unknown>;
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

/** A finding as cases kept it before its sentences stood with the languages: they are shown as they were written. */
export function liftFinding(finding: unknown): unknown {
  if (!isFields(finding) || typeof finding.statement !== 'string') return finding;
  const { statement, basis, innocent, settles, ...rest } = finding;
  return { ...rest, data: { written: { statement, basis, innocent, settles } } };
}
