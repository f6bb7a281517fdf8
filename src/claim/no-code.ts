import {
  anyOf,
  behindInSentence,
  phraseFinder,
  phrasePattern,
  phraseTest,
  rightBehind,
  sourceRange,
  textPattern,
  topics,
  wordsOf,
} from '../text';
import { type ClaimDraft, type Passage, saidIn } from './passage';

const languages = Object.keys(topics['code-noun']) as (keyof (typeof topics)['code-noun'])[];
/** "No date code", "without a stamp" …: what is lacking, with its word; in Japanese the word comes first. */
const missing = phraseFinder({
  'no-code': languages.flatMap((language) => [
    ...topics['code-noun'][language].flatMap((noun) =>
      topics.lacking[language].map((lacks) => (language === 'ja' ? `${noun}${lacks}` : `${lacks} ${noun}`)),
    ),
    ...topics['nothing-stamped'][language],
  ]),
});
/** "Code: none", "製造番号は？ 見当たりません": the field's own no. */
const noneInField = textPattern(
  `^は?:\\s{0,6}(?:${anyOf([...wordsOf('refused-in-field'), ...topics.lacking.ja.map((words) => words.replace(/^[はが]/, ''))])})(?=$|[\\s.,;。])`,
);
const thing = phrasePattern(wordsOf('code-noun'));
/** A code that was there and cannot be read. */
const lost = phraseTest(wordsOf('unreadable'));

/** Further behind a code its state is not told. */
const longestState = 48;

/** Says of the seller that the piece shows no code, or none that can be read. */
export function noCodeClaims(passages: Passage[]): ClaimDraft[] {
  return passages.flatMap((from) => {
    const { text } = from.folded;
    const found = missing(from.folded).map((hit) => ({ start: hit.foldedStart, end: hit.foldedEnd }));
    for (const noun of text.matchAll(thing)) {
      const end = noun.index + noun[0].length;
      const none = noneInField.exec(rightBehind(text, end));
      if (none) found.push({ start: noun.index, end: end + none[0].length });
      const state = lost.exec(behindInSentence(text, end).slice(0, longestState).split(/,\s/)[0] as string);
      if (state && !/\d{2}/.test(text.slice(end, end + state.index)))
        found.push({ start: noun.index, end: end + state.index + state[0].length });
    }
    return merged(found).map(
      ({ start, end }): ClaimDraft => ({
        kind: 'no-code',
        ...saidIn(from, sourceRange(from.folded, start, end), 0.85),
      }),
    );
  });
}

/** Overlapping ranges as one. */
function merged(ranges: { start: number; end: number }[]): { start: number; end: number }[] {
  const result: { start: number; end: number }[] = [];
  for (const range of [...ranges].sort((a, b) => a.start - b.start)) {
    const last = result[result.length - 1];
    if (last && range.start < last.end) last.end = Math.max(last.end, range.end);
    else result.push({ ...range });
  }
  return result;
}
