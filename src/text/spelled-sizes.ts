import { anyLanguage } from './each-language';
import { type Folded, foldText, foldWords } from './fold';
import { tableWords } from './lexicon';
import { numberWordsOf } from './number-words';
import { phrasePattern, textPattern } from './phrases';
import { aboutLength, asCross, unitWords } from './unit-words';

/*
 * "Thirty centimetres wide", "Höhe fünfundzwanzig", "treinta por veinte": sizes in words. Number words mean other things
 * as well ("neuf" is new, "sei" you are): they count beside a unit, beside the name of a side, and across from a number.
 */

const { width, height, depth } = tableWords('dimension');
const sides = phrasePattern([...width, ...height, ...depth]).source;
const units = foldWords(
  anyLanguage(...Object.values(unitWords))
    .replaceAll('[eè]', 'e')
    .replaceAll('[ií]', 'i'),
).text;
const cross = `(?:x|×|${anyLanguage(asCross)})`;
const behind = textPattern(
  `^[\\s-]{0,2}(?:(?:in|de|di)\\s)?(?:(?:${units})(?!\\p{L})|${sides}|${cross}\\s(?=\\p{L}|\\d))`,
);
const ahead = textPattern(
  `(?:${sides}|\\d\\s${cross})(?:\\s(?:is|ist|est|es|di|de|von|of|van))?[\\s:=]{1,2}(?:(?:${anyLanguage(aboutLength)})\\s)?$`,
);
const reach = 32;
/** No side of a bag is less; "one", "a pair" count other things. */
const least = 2;

/**
 * A text folded by `foldText`, with sizes in words written in digits; each stands at the place of its words. `language`
 * is the text's.
 */
export function sizesInDigits(text: string, language: string | null): Folded {
  const folded = foldText(text);
  const plain = foldWords(folded.text).text;
  const { values, source } = numberWordsOf(language);
  const words = new RegExp(language?.startsWith('ja') ? source : `(?<![\\p{L}\\d-])(?:${source})(?![\\p{L}\\d])`, 'gu');
  const placeOf = (index: number) => (folded.at ? (folded.at[index] as number) : index);
  const at: number[] = [];
  let [digits, from] = ['', 0];
  const keepUpTo = (end: number) => {
    for (let index = from; index < end; index += 1) at.push(placeOf(index));
    digits += folded.text.slice(from, end);
  };
  for (const { index, 0: said } of plain.matchAll(words)) {
    const [value, end] = [values.get(said.replace(/\s/g, ' ')) ?? 0, index + said.length];
    // What stands ahead may be written in digits by now.
    const before = digits.slice(-reach) + plain.slice(Math.max(from, index - reach), index);
    if (value < least || !(behind.test(plain.slice(end, end + reach)) || ahead.test(foldWords(before).text))) continue;
    keepUpTo(index);
    const number = String(value);
    for (let digit = 0; digit < number.length; digit += 1)
      at.push(placeOf(digit === number.length - 1 ? end - 1 : index));
    digits += number;
    from = end;
  }
  if (from === 0) return folded;
  keepUpTo(folded.text.length);
  return { source: folded.source, text: digits, at: Uint32Array.from(at) };
}
