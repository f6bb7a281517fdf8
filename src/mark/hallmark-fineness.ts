import { sinceSpan } from '../span';
import { defineMark, type MarkFound, rowSource } from './define';
import { finenessOf, hallmarkSource, type Metal } from './hallmarks';

/** The number needs its metal beside it: a lone "925" is as likely a date code. */
const patterns = [
  /\b(?<metal>sterling|silver|gold|platinum|palladium)\b[\s,:(]{0,3}(?:\.|0[.,])?(?<parts>375|500|585|750|800|850|900|916|925|950|958|990|999)\b/giu,
  /(?<![\d.,])(?:\.|0[.,])?(?<parts>375|500|585|750|800|850|900|916|925|950|958|990|999)\b[\s,:)]{0,3}(?<metal>sterling|silver|gold|platinum|palladium)\b/giu,
];
const ofUkHallmark =
  /\b(?:UK|British|English|London|Birmingham|Sheffield|Edinburgh|U\.K\.)\b[^.\n]{0,40}\bhallmark|\bhallmark\w*\b[^.\n]{0,40}\b(?:UK|British|English|London|Birmingham|Sheffield|Edinburgh|U\.K\.)\b/iu;
const reach = 60;
/** From memory; compulsory since 1 January 2010. */
const palladiumSince = '2009-07-01';
const palladiumSource = rowSource('Hallmarking Act 1973 as extended to palladium, 2009', false);

/** A claim of fineness. It dates a piece only inside a UK hallmark, and only where the number was new in 1999. */
export const hallmarkFineness = defineMark({
  id: 'hallmark-fineness',
  find: (text) => {
    const matches = patterns.flatMap((pattern) => [...text.matchAll(pattern)]).sort((a, b) => a.index - b.index);
    return matches.map((match): MarkFound => {
      const word = match.groups!.metal!.toLowerCase();
      const metal = (word === 'sterling' ? 'silver' : word) as Metal;
      const parts = Number(match.groups!.parts);
      const [start, end] = [match.index, match.index + match[0].length];
      const inHallmark = ofUkHallmark.test(text.slice(Math.max(0, start - reach), end + reach));
      const since = inHallmark ? finenessOf(metal, parts).ukSince : null;
      const at = { start, end, verified: true, source: rowSource(hallmarkSource, true) };
      if (since) {
        return {
          ...at,
          spans: [sinceSpan(since)],
          strength: 'hard',
          says: { kind: 'new-fineness', metal, parts },
          cautions: [{ kind: 'dates-metal' }],
        };
      }
      if (inHallmark && metal === 'palladium') {
        return {
          ...at,
          spans: [sinceSpan(palladiumSince)],
          strength: 'soft',
          verified: false,
          source: palladiumSource,
          says: { kind: 'palladium-hallmark' },
        };
      }
      const says = { kind: 'fineness' as const, metal, parts };
      return { ...at, spans: [], strength: 'soft', says, cautions: [{ kind: 'no-hallmark-alone' }] };
    });
  },
});
