/** A function that answers the same question from memory. */
export function once<Given extends readonly unknown[], Answer>(
  of: (...given: Given) => Answer,
): (...given: Given) => Answer {
  const known = new Map<string, { answer: Answer }>();
  return (...given) => {
    const key = JSON.stringify(given);
    const told = known.get(key) ?? { answer: of(...given) };
    known.set(key, told);
    return told.answer;
  };
}
