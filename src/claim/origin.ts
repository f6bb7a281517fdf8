import { findPlaces, findTownsOfMaking, isOfOnePart, rightBehind } from '../text';
import { isBeforeYear } from './country-and-year';
import { isOfCompanion } from './goods';
import { type ClaimDraft, foldedRange, type Passage, saidIn } from './passage';
import { isMakingOfOther } from './subject';
import { isUnsaid } from './unsaid';

/** "ベルギー製のレザー" is said of the leather. */
const ofMaterial = /^製の?(?:レザー|革|牛革|本革|生地|金具|素材|ファスナー|布|糸)/u;

/** Countries, and towns where no country is named: "made in London, England" is said once. */
function placesIn(text: string) {
  const countries = findPlaces(text);
  return countries.some(({ form }) => form === 'made-in') ? countries : [...countries, ...findTownsOfMaking(text)];
}

/** "Made in …" claims; a country that is only named ("ships from France", "Italian calf") claims no origin. */
export function originClaims(passages: Passage[]): ClaimDraft[] {
  return passages.flatMap((from) =>
    placesIn(from.text.replaceAll('：', ':'))
      .filter((place) => {
        const [start, nameEnd] = foldedRange(from, place);
        if (place.form === 'name') return isBeforeYear(from.folded.text, start, nameEnd);
        if (place.form !== 'made-in') return false;
        const end = from.folded.text[nameEnd] === '製' ? nameEnd + 1 : nameEnd;
        if (ofMaterial.test(rightBehind(from.folded.text, nameEnd))) return false;
        const { text } = from.folded;
        if (isMakingOfOther(text, start, from.title) || isOfOnePart(text, start, nameEnd)) return false;
        return !isUnsaid(text, start, end) && !isOfCompanion(text, start, end);
      })
      .map((place): ClaimDraft => ({ kind: 'origin', place: place.place, ...saidIn(from, place, 0.9) })),
  );
}
