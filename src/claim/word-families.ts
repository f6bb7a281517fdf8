import {
  aheadInClause,
  anyLanguage,
  behindInClause,
  behindInSentence,
  jointWords,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  sentenceAround,
  type Topic,
  tableWords,
  textPattern,
  topicFinder,
  wordsOf,
} from '../text';
import { detailsOf } from './event-details';
import { isDriedLeather } from './leather-as-subject';
import { isBesideLeather } from './leather-with-other';
import { isLikened, isOnlyLook } from './look';
import { partDescribed } from './material-part';
import { notVouched } from './not-vouched';
import { partBeside } from './parts';
import { type ClaimDraft, foldedRange, type Passage } from './passage';
import { saidWords } from './said-words';
import { isBeforeAccessory, isHeadedByPart } from './subject';

/*
 * Families of words that sellers use, one claim for each place where such words stand. What a family means to a buyer
 * is no business of this file.
 */

type PlainKind = 'grade-of-copy' | 'not-this-piece' | 'remade' | 'packaging-only' | 'assurance' | 'wear' | 'fresh-part';
type PlainDraft = Extract<ClaimDraft, { kind: PlainKind }>;
/** A family of one topic whose claims say no more than their words. */
function plainFamily(kind: PlainKind, topic: Topic) {
  const find = topicFinder(topic);
  return (from: Passage): PlainDraft[] =>
    saidWords(from, find).map(({ polarity, said }): PlainDraft => ({ kind, polarity, ...said }));
}

const copies = plainFamily('grade-of-copy', 'copy-grade');
/** "This is a replica", "I offer a replica". */
const saysThisIs = phraseTest(wordsOf('is', 'offering', 'this-one', 'bag', 'piece'));
const oneOf = textPattern(`(?<!\\p{L})(?:${phrasePattern(wordsOf('an')).source})\\s(?:\\p{L}{1,12}\\s)?$`);
/** "Une copie parfaite" by itself is this piece; behind other words it is one that they tell of. */
const isOneToldOf = (ahead: string): boolean => {
  const one = oneOf.exec(ahead);
  return one !== null && /\p{L}/u.test(ahead.slice(0, one.index)) && !saysThisIs.test(ahead);
};
const bought = phrasePattern(wordsOf('bought')).source;
const japaneseBought = textPattern(`^(?:品)?を(?:${bought}|買|掴|つか)`);
const ofPhoto = textPattern(`^[\\s-]?(?:${phrasePattern(wordsOf('photograph')).source})`);

/** Where a claim's words stand in the folded text, and what its clause says before and behind them. */
function clauseOf(from: Passage, { at: { start, end } }: ClaimDraft) {
  const { text } = from.folded;
  const [opens, closes] = foldedRange(from, { start, end });
  return { text, opens, closes, ahead: aheadInClause(text, opens), behind: behindInClause(text, closes) };
}

/** "I once bought a replica", "handle copied by the cobbler", "the 1:1 photo": no word of the piece itself. */
const gradesOfCopy = (from: Passage): ClaimDraft[] =>
  copies(from).filter((draft) => {
    if (draft.polarity === 'is-not') return true;
    const { text, opens, closes, ahead } = clauseOf(from, draft);
    const behind = rightBehind(text, closes);
    if (isOneToldOf(ahead) || japaneseBought.test(behind) || ofPhoto.test(behind)) return false;
    return !isHeadedByPart(text, opens, from.title);
  });

const onlyPackaging = plainFamily('packaging-only', 'packaging-only');
const toldOfBox = phraseTest(wordsOf('lost', 'is-missing', 'goes-along', 'comes-with-it'));
const goesOnOfBox = textPattern(
  `^\\s(?:${phrasePattern(wordsOf('is')).source})\\s(?!${phrasePattern(wordsOf('offering')).source})`,
);
/** "Only the box is missing", "the empty box goes with it", "nur der Karton ist noch neu": the clause tells of the box, and not of the offer. */
const packaging = (from: Passage): ClaimDraft[] =>
  onlyPackaging(from).filter((draft) => {
    const { ahead, behind } = clauseOf(from, draft);
    return !toldOfBox.test(`${ahead} ${behind}`) && !goesOnOfBox.test(behind);
  });

const freshParts = plainFamily('fresh-part', 'fresh-parts');
const hasDarkened = textPattern(`(?:^|[^\\p{L}])(?:${anyLanguage(jointWords.darkened)})`);
/** "The pale handles have darkened": fresh they were. */
const stillFresh = (from: Passage): ClaimDraft[] =>
  freshParts(from).filter((draft) => {
    const { text, closes } = clauseOf(from, draft);
    return !hasDarkened.test(behindInSentence(text, closes));
  });

const plainWear = plainFamily('wear', 'wear');
const lying = phraseTest(wordsOf('from-lying'));
/** "A dent from storage", "保管時の小傷": no sign of use. */
const wearIn = (from: Passage): ClaimDraft[] =>
  plainWear(from).map((draft): ClaimDraft => {
    const { ahead, behind } = clauseOf(from, draft);
    return draft.kind === 'wear' && lying.test(`${ahead} ${behind}`) ? { ...draft, fromLying: true } : draft;
  });

const findHurry = topicFinder('hurry');
/** "There are no silly questions" invites them. */
const exist = textPattern(`(?:${phrasePattern(wordsOf('there-are')).source})\\s$`);
const goesBack = phraseTest([...wordsOf('sent-back'), ...tableWords('returns').accepted]);
/** "30 days to send it back, no questions": what a shop does not ask. */
function isOfReturn({ folded: { text } }: Passage, start: number, end: number): boolean {
  const sentence = sentenceAround(text, start, end);
  return goesBack.test(text.slice(sentence.start, sentence.end));
}
/** "Today only must go today": each stands for itself, and none takes back the next. */
const hurry = (from: Passage): ClaimDraft[] =>
  saidWords(from, findHurry)
    .filter(({ hit: { foldedStart } }) => !exist.test(rightAhead(from.folded.text, foldedStart)))
    .filter(({ hit: { foldedStart, foldedEnd } }) => !isOfReturn(from, foldedStart, foldedEnd))
    .map(({ said }): ClaimDraft => ({ kind: 'hurry', ...said }));

const findLeather = topicFinder('leather', 'leather-like');
function leather(from: Passage): ClaimDraft[] {
  const { text } = from.folded;
  const found = saidWords(from, findLeather)
    .filter(({ hit }) => !isBeforeAccessory(text, hit.foldedEnd, from.title))
    .filter(({ hit }) => !isLikened(text, hit.foldedStart, hit.foldedEnd));
  const stated = found.flatMap(({ hit, polarity }) => (polarity === 'is' ? [hit] : []));
  return found.map(({ hit, polarity, said }): ClaimDraft => {
    const of = partDescribed(from, hit.foldedStart, hit.foldedEnd);
    const real = hit.value === 'leather';
    const inPart = !real && polarity === 'is' && isBesideLeather(text, hit, stated);
    return { kind: 'leather', real, of, ...(inPart ? { inPart } : {}), polarity, ...said };
  });
}

const metals = {
  'gold-solid': { metal: 'gold', solid: true },
  'gold-surface': { metal: 'gold', solid: false },
  'silver-solid': { metal: 'silver', solid: true },
  'silver-surface': { metal: 'silver', solid: false },
  'brass-solid': { metal: 'brass', solid: true },
  'brass-surface': { metal: 'brass', solid: false },
  'zinc-alloy': { metal: 'zinc', solid: false },
} as const;
const findMetal = topicFinder(...(Object.keys(metals) as (keyof typeof metals)[]));
const metal = (from: Passage): ClaimDraft[] =>
  saidWords(from, findMetal).map(({ hit, polarity, said }): ClaimDraft => {
    const part = partBeside(from.text, hit.start, hit.end);
    return { kind: 'metal', ...metals[hit.value], of: part?.words.toLowerCase() ?? null, polarity, ...said };
  });

const findAge = topicFinder('vintage', 'antique');
/** "A vintage fair": said of where it was bought. */
const place = textPattern(`^[\\s-]{0,2}(?:${phrasePattern(wordsOf('market-place')).source})`);
const ageWords = (from: Passage): ClaimDraft[] =>
  saidWords(from, findAge)
    .filter(({ hit: { foldedStart, foldedEnd } }) => {
      const { text } = from.folded;
      return !isOnlyLook(text, foldedStart, foldedEnd) && !place.test(rightBehind(text, foldedEnd));
    })
    .map(({ hit, polarity, said }): ClaimDraft => ({ kind: 'age-word', word: hit.value, polarity, ...said }));

const findDried = topicFinder('dried');
const driedLeather = (from: Passage): ClaimDraft[] =>
  saidWords(from, findDried)
    .filter(({ hit }) => isDriedLeather(from.folded.text, hit.foldedStart))
    .map(({ said }): ClaimDraft => ({ kind: 'wear', polarity: 'is', ...said }));

/** "傷なし", "kratzfrei": a denial in one word. */
const findNoWear = topicFinder('no-wear');
/** "目立つ傷はありません": small ones may be. */
const noticeable = textPattern(`(?:${phrasePattern(wordsOf('noticeable')).source})\\s?$`);
const noWear = (from: Passage): ClaimDraft[] =>
  saidWords(from, findNoWear)
    .filter(({ hit }) => !noticeable.test(rightAhead(from.folded.text, hit.foldedStart)))
    .map(({ said }): ClaimDraft => ({ kind: 'wear', polarity: 'is-not', ...said }));

const findInStock = topicFinder('in-stock');
/** More than a shop has of one bag: a count of something else, or a year. */
const mostInStock = 999;
const inStock = (from: Passage): ClaimDraft[] =>
  saidWords(from, findInStock).flatMap(({ hit, polarity, said }): ClaimDraft[] => {
    const number = /\d+/.exec(hit.words)?.[0];
    const count = number === undefined ? null : Number(number);
    // "1 available" is the piece itself.
    if (polarity === 'is-not' || (count !== null && (count < 2 || count > mostInStock))) return [];
    return [{ kind: 'in-stock', count, ...said }];
  });

const findStored = topicFinder('stored');
/** "In the cupboard since 1999". */
const stored = (from: Passage, readAt: string): ClaimDraft[] =>
  saidWords(from, findStored).map(({ hit, polarity, said }): ClaimDraft => {
    const { span } = detailsOf(from, hit.foldedStart, hit.foldedEnd, readAt);
    return { kind: 'stored', polarity, ...(span ? { span } : {}), ...said };
  });

const families: ((from: Passage, readAt: string) => ClaimDraft[])[] = [
  gradesOfCopy,
  plainFamily('not-this-piece', 'not-this-piece'),
  inStock,
  plainFamily('remade', 'remade'),
  notVouched,
  packaging,
  plainFamily('assurance', 'assurance'),
  hurry,
  wearIn,
  driedLeather,
  noWear,
  leather,
  metal,
  stillFresh,
  stored,
  ageWords,
];

/** Every family in every passage: the passages also hold what the page shows beside title and description. */
export const familyClaims = (passages: readonly Passage[], readAt: string): ClaimDraft[] =>
  families.flatMap((find) => passages.flatMap((from) => find(from, readAt)));
