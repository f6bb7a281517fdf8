/**
 * How much rarer a text is for one change between a letter and a digit beside it: codes are runs of letters and runs of
 * digits. Common practice, no source; of the layouts that the training writes, one in sixteen has a lone letter in a run
 * of digits.
 */
const changeShare = 0.12;
/**
 * Codes have up to five runs: in what has more, letters and digits come as they like, and a further change is no rarer.
 * Common practice, no source.
 */
const mostChanges = 4;
/**
 * How much rarer an I, an O or a Q is in such a text: who mixes letters and digits shuns the letters that look like digits.
 * ISO 3779 leaves these three out of vehicle numbers; the share is our own estimate.
 */
const lookalikeShare = 0.1;
/**
 * How much rarer a run of three or more letters is that ends in O, I or Q with digits in the text, and a lone Q after a
 * digit: plants are written with one to three letters, and makers who mix letters and digits shun those that look like
 * digits. Common practice, no source; ISO 3779 leaves the same three out of vehicle numbers.
 */
const zeroAtEndShare = 0.1;

/**
 * Texts of one line weighed by their runs, likeliest first; their probabilities keep their sum. An O between two digits
 * has to look much more like an O than like a 0 to be read as one.
 */
export function weighRuns<Text extends { text: string; probability: number }>(texts: readonly Text[]): Text[] {
  const weights = texts.map(({ text, probability }) => probability * shareOf(text));
  const before = texts.reduce((sum, { probability }) => sum + probability, 0);
  const after = weights.reduce((sum, weight) => sum + weight, 0);
  if (!(after > 0)) return [...texts];
  return texts
    .map((text, at) => ({ ...text, probability: (weights[at]! / after) * before }))
    .sort((a, b) => b.probability - a.probability);
}

function shareOf(text: string): number {
  const changes = changesIn(text);
  const lookalikes = changes < mostChanges ? 0 : (text.match(/[IOQ]/g)?.length ?? 0);
  return (
    changeShare ** Math.min(changes, mostChanges) * lookalikeShare ** lookalikes * zeroAtEndShare ** zerosAtEnds(text)
  );
}

const zerosAtEnds = (text: string): number =>
  /[0-9]/.test(text) ? (text.match(/[A-Z]{2}[OIQ](?![A-Z])|(?<=[0-9])Q(?![A-Z])/g)?.length ?? 0) : 0;

function changesIn(text: string): number {
  let changes = 0;
  for (let at = 1; at < text.length; at++) {
    const pair = text.slice(at - 1, at + 1);
    if (/^(?:[A-Z][0-9]|[0-9][A-Z])$/.test(pair)) changes++;
  }
  return changes;
}
