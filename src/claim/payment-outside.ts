import type { Listing } from '../listing/types';
import {
  aheadInClause,
  anyLanguage,
  anyOf,
  anyWithGaps,
  behindInClause,
  behindInSentence,
  foldWords,
  isDenial,
  isNegated,
  jointWords,
  phraseFinder,
  phrasePattern,
  phraseTest,
  sentenceAround,
  type Topic,
  tableWords,
  textPattern,
  topics,
  wordsOf,
} from '../text';
import { type ClaimDraft, type Passage, saidIn, saidInData } from './passage';

const ways = tableWords('payment');
/** Ways to pay or to talk outside the marketplace. */
const find = phraseFinder({
  transfer: [...ways['bank-transfer'], ...ways['by-post']],
  untraced: [...ways['gift-card'], ...ways.crypto],
  unprotected: wordsOf('pay-unprotected'),
  directly: wordsOf('pay-directly'),
  contact: wordsOf('contact-outside'),
});
type Way = ReturnType<typeof find>[number]['value'];
const address =
  /[\p{L}\p{N}._%+-]{1,64}(?:@|\s?\(at\)\s?|\s?\[at\]\s?)[\p{L}\p{N}-]{1,63}(?:\.|\s?\(dot\)\s?|\s?\[dot\]\s?)[\p{L}]{2,12}/gu;
const sourceOf = (...names: Topic[]) => phrasePattern(wordsOf(...names)).source;
const marketplaceWay = textPattern(
  `(?:${sourceOf('through')})\\s(?:(?:${sourceOf('article')})\\s)?(?:${sourceOf('market-site')})|(?:${anyOf(topics['market-site'].ja)})(?:${anyOf(topics.through.ja)})`,
);
const either = textPattern(
  `(?:^|\\s)(?:${anyWithGaps(jointWords.either)})\\s(?:\\p{L}{1,8}\\s){0,2}$|(?:${jointWords.either[6]})$`,
);
/** "Into my account instead of through the site". */
const instead = textPattern(`(?:${anyLanguage(jointWords.insteadOf)})\\s$`);
/** "By transfer through the site"; "by transfer or through the site" leaves the choice. */
function isThroughMarket(sentence: string): boolean {
  const way = marketplaceWay.exec(sentence);
  if (way === null) return false;
  const ahead = sentence.slice(0, way.index);
  return !either.test(ahead) && !instead.test(ahead);
}

/** "I never ask for bank transfers", "please do not pay any of it to me by …"; "do not pay here but by …" asks for it. */
const neverAsked = textPattern(
  `(?:(?:${sourceOf('negation')})\\s(?:[\\p{L}']+\\s){0,3}(?:${sourceOf('dealing')})|(?:${sourceOf('dealing')})\\s(?:[\\p{L}']+\\s)?(?:${sourceOf('negation')}))\\s(?:(?!(?:${sourceOf('but')}))[\\p{L}']+\\s){0,12}$`,
);

/** "By card or bank transfer": one of the ways that a shop takes, and not the only one. */
const byCard = phraseTest([...ways.card, ...ways.debit, ...wordsOf('card-bare')]);

const collected = textPattern(sourceOf('at-collection'));
const orElse = textPattern(`\\s(?:${anyWithGaps(jointWords.either)})\\s|${jointWords.either[6]}`);
/** Who pays at the door has seen the piece: "Überweisung nur, wenn Sie sie in der Hand haben", but not "transfer or in person". */
function isPaidAtCollection(text: string, end: number): boolean {
  const behind = behindInSentence(text, end).slice(0, longestCondition).split(orElse, 1)[0] as string;
  const found = collected.exec(behind);
  return found !== null && !isNegated(text, end + found.index, end + found.index + found[0].length);
}
const longestCondition = 60;

/** "If anybody asks you in my name to pay outside the site": what others may ask for. */
const askedByOthers = textPattern(sourceOf('asked-by-others'));

const accepting = phrasePattern(wordsOf('accepting')).source;
/** "Überweisung nehme ich nicht an", "bank transfer is not accepted": refused by what follows. */
const refusedBehind = textPattern(
  `^(?:[^\\p{L}]{1,3}[\\p{L}']{1,20}){0,3}?[^\\p{L}]{1,3}(?:${anyLanguage(jointWords.notBefore)})\\s(?:\\p{L}{1,12}\\s)?(?:${accepting})|^(?:[^\\p{L}]{1,3}[\\p{L}']{1,20}){0,2}?[^\\p{L}]{1,3}(?:${accepting})(?:\\s\\p{L}{1,10})?\\s(?:${anyWithGaps(jointWords.notBehind)})(?!\\p{L})|^.{0,4}(?:${accepting})[^。]{0,8}(?:${jointWords.notBehind[6]})|^.{0,3}不可`,
);
/** "Off the site? I won't", "… mache ich nicht, bitte nicht fragen": the sentence, or one of its clauses, closes so. */
const closesRefused = textPattern(`(?:${sourceOf('refused-behind')})(?=\\s?(?:[.!?;,)\\n]|$)|[^。]{0,8}(?:。|$))`);
/** "Je refuse les virements": nothing but a few words between. */
const refusesThis = textPattern(`(?:^|\\s)(?:${anyLanguage(jointWords.refuses)})\\s(?:[\\p{L}']+\\s){0,4}$`);
const isRefusedBehind = (text: string, start: number, end: number) =>
  refusedBehind.test(behindInClause(text, end)) ||
  closesRefused.test(behindInSentence(text, end)) ||
  refusesThis.test(aheadInClause(text, start));

/** Whether the way to pay is refused: "no bank transfer", "I do not accept crypto", or tied to the site itself. */
function isRefused(text: string, start: number, end: number, kind: Way): boolean {
  if (isNegated(text, start, end)) return kind !== 'unprotected' || !isDenial(text.slice(start, end));
  const sentence = sentenceAround(text, start, end);
  const whole = text.slice(sentence.start, sentence.end);
  if (neverAsked.test(text.slice(sentence.start, start))) return true;
  if (kind === 'transfer' && byCard.test(whole)) return true;
  if (kind === 'transfer' && isPaidAtCollection(text, end)) return true;
  if (askedByOthers.test(whole)) return true;
  return (kind === 'transfer' && isThroughMarket(whole)) || isRefusedBehind(text, start, end);
}

/** Asks to pay or to talk outside the marketplace, where a buyer has no protection. */
export function paymentOutsideClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const inText = passages.flatMap((from) => {
    const { text } = from.folded;
    const phrases = find(from.folded).filter((hit) => !isRefused(text, hit.foldedStart, hit.foldedEnd, hit.value));
    const addresses = [...from.text.matchAll(address)].map((match) => ({
      start: match.index,
      end: match.index + match[0].length,
      words: match[0],
    }));
    return [...phrases, ...addresses]
      .sort((a, b) => a.start - b.start)
      .map((hit): ClaimDraft => ({ kind: 'payment-outside', ...saidIn(from, hit, 0.8) }));
  });
  // What the seller's sentences say is judged where it stands, with what is said around it.
  const inProse = ({ value, origin }: Listing['payment'][number]) =>
    origin === 'visible' && passages.some(({ text }) => text.includes(value));
  // A shop's own terms name all the ways that it takes, each for itself.
  const takesCards = listing.payment.some(({ value }) => byCard.test(foldWords(value).text));
  const asksOutside = (words: string) => find(words).some(({ value }) => value !== 'transfer' || !takesCards);
  const data = listing.payment.filter((candidate) => asksOutside(candidate.value) && !inProse(candidate));
  return [
    ...inText,
    ...data.map(
      (candidate): ClaimDraft => ({ kind: 'payment-outside', ...saidInData(candidate.value, candidate.confidence) }),
    ),
  ];
}
