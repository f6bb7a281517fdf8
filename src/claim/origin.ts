import { isAboutAnother, isNegated } from '../listing/text';
import { findPlaces } from '../place';
import { type ClaimDraft, foldedRange, type Passage, saidIn } from './passage';

/** "Made in …" claims; a country that is only named ("ships from France", "Italian calf") claims no origin. */
export function originClaims(passages: Passage[]): ClaimDraft[] {
  return passages.flatMap((from) =>
    findPlaces(from.text.replaceAll('：', ':'))
      .filter((place) => place.form === 'made-in')
      .filter((place) => {
        const [start, nameEnd] = foldedRange(from, place);
        const end = from.folded.text[nameEnd] === '製' ? nameEnd + 1 : nameEnd;
        return !isNegated(from.folded.text, start, end) && !isAboutAnother(from.folded.text, start, end);
      })
      .map((place): ClaimDraft => ({ kind: 'origin', place: place.place, ...saidIn(from, place, 0.9) })),
  );
}
