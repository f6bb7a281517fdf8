/**
 * Evidence and reasoning as cases kept them before their sentences stood with the languages: the sentence of a piece
 * is shown as it was written, those of the reasoning are made anew. Anything else is left as it is, for the schema to judge.
 */
type Fields = Record<string, unknown>;
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

export function liftEvidence(piece: unknown): unknown {
  if (!isFields(piece) || typeof piece.statement !== 'string') return piece;
  const { statement, ...rest } = piece;
  return { ...rest, says: { kind: 'as-written', words: statement } };
}

/** What was found together, without its sentence. */
export function withoutStatement(found: unknown): unknown {
  if (!isFields(found) || typeof found.statement !== 'string') return found;
  const { statement: _, ...rest } = found;
  return rest;
}
