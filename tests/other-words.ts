const word = /[\p{L}\p{N}][\p{L}\p{N}'’-]*/gu;

/**
 * What an answer is when one word of a sentence is another: longer by a letter in front or behind, or left out. One line
 * for each change that the answer notices; words that it takes for what they only contain show here.
 */
export function otherWordsOf(sentence: string, answer: (sentence: string) => string): string[] {
  const plain = answer(sentence);
  return [...sentence.matchAll(word)].flatMap(({ 0: own, index }) => {
    const [before, behind] = [sentence.slice(0, index), sentence.slice(index + own.length)];
    const changed = { [`v${own}`]: `v${own}`, [`${own}v`]: `${own}v`, [`without ${own}`]: '' };
    return Object.entries(changed).flatMap(([name, other]) => {
      const is = answer(before + other + behind);
      return is === plain ? [] : [`${name}: ${is}`];
    });
  });
}
