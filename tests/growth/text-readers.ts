import { findClaims } from '../../src/claim';
import { readStated } from '../../src/code';
import { tidyCode } from '../../src/code/typed';
import { comparableAddress, webAddress } from '../../src/listing/page/address';
import { titleWords, wordLikeness } from '../../src/listing/page/area';
import { languageOfText } from '../../src/listing/page-language';
import { photoKey, widthFromAddress } from '../../src/listing/photos/image-size';
import { addressesInJson, fromAttribute } from '../../src/listing/photos/image-sources';
import { isPlaceholder, namesNoPhoto } from '../../src/listing/photos/not-photo';
import { parseSrcset } from '../../src/listing/photos/srcset';
import { cleanJson } from '../../src/listing/structured/clean-json';
import { dataPrice } from '../../src/listing/structured/data-price';
import { decodeEntities, plainText, tidyText } from '../../src/listing/structured/entities';
import { parseJsonLd } from '../../src/listing/structured/json-ld';
import { availabilityOf } from '../../src/listing/structured/offer-facts';
import { conditionOf, termName } from '../../src/listing/structured/terms';
import { readTolerantJson } from '../../src/listing/structured/tolerant-json';
import { sellerName } from '../../src/listing/visible/labelled';
import { leadingLabel } from '../../src/listing/visible/leading-label';
import { placeLine } from '../../src/listing/visible/place-line';
import { titleWithoutSite } from '../../src/listing/visible/title';
import { readConditionWords, readDate, readRatingWords, readReturnsWords } from '../../src/listing/visible/words';
import { isWantedAd } from '../../src/listing/wanted';
import { builtInMakers, plainName } from '../../src/maker';
import { findMarks, marks } from '../../src/mark';
import { type Proposal, pageOfText } from '../../src/take';
import { splitEntry } from '../../src/take/entry';
import { systemOfHead } from '../../src/take/entry-system';
import { makersNamed } from '../../src/take/name';
import { carrierOf } from '../../src/take/prose/carriers';
import { codesNamed, writesOneLetter } from '../../src/take/prose/codes-named';
import { constructionIn } from '../../src/take/prose/construction';
import { lettersIn } from '../../src/take/prose/letters';
import { modelsIn, pricesIn } from '../../src/take/prose/models';
import { deniedIn, plantsIn } from '../../src/take/prose/plants';
import { plantsInTurn } from '../../src/take/prose/plants-in-turn';
import { isAsked, sentencesOf } from '../../src/take/prose/sentences';
import { stampedSince } from '../../src/take/prose/stamped';
import { systemsIn } from '../../src/take/prose/systems';
import { namesCarrier } from '../../src/take/said/carrier';
import { plantCodes } from '../../src/take/said/code';
import { readExamples } from '../../src/take/said/example';
import { formerAmounts, formerIn } from '../../src/take/said/former-money';
import { rolesNamed } from '../../src/take/said/label';
import { readLegend, readNotation } from '../../src/take/said/layout';
import { readLayoutWords, withLettersAdded } from '../../src/take/said/layout-words';
import { monthLetter } from '../../src/take/said/letter-slots';
import { plainMaterial } from '../../src/take/said/material';
import { monthLettersTold } from '../../src/take/said/month-letters';
import { readCounts } from '../../src/take/said/number';
import { partNamed } from '../../src/take/said/part';
import { readPeriods } from '../../src/take/said/period';
import { readPlace } from '../../src/take/said/place';
import { readAmount, readAmounts } from '../../src/take/said/price';
import { readSizes } from '../../src/take/said/size';
import { isOnPiece, opensPlaceOnPiece, readWhere } from '../../src/take/said/where';
import * as text from '../../src/text';
import { findPlaces } from '../../src/text';
import { labelOf } from '../../src/text/label';
import { plainLabel, splitLabelled } from '../../src/text/label-words';
import { readCount } from '../../src/text/said-number';
import { readKnownRows } from '../../src/ui/makers/known-codes';
import { takeHtml } from '../take-pages/score';
import { listingOf } from '../unit/claim/listing-of';

export type TextReader = (text: string) => unknown;

const now = '2026-11-25';
const base = 'https://attic-arcade.example/item/1';
const hints = { language: 'en', now };
/** A page's path, without the halves of characters that no address can hold. */
const addressOf = (source: string) => `https://attic-arcade.example/${encodeURI(source.replace(/\p{Cs}/gu, ''))}`;

/** Readers of words: what a page, a label or a seller says. */
const ofWords: Record<string, TextReader> = {
  foldText: text.foldText,
  foldWords: text.foldWords,
  writtenOut: (said) => text.writtenOut(text.foldWords(said), 'de'),
  parsePrices: (said) => text.parsePrices(said, hints),
  parsePriceText: (said) => text.parsePriceText(said, said),
  parseMeasures: (said) => text.parseMeasures(said, null),
  parseDates: (said) => text.parseDates(said, hints),
  findRatings: text.findRatings,
  findConditions: (said) => text.findConditions(said),
  findReturns: text.findReturns,
  findShipping: text.findShipping,
  findPayment: text.findPayment,
  findMemberSince: (said) => text.findMemberSince(said, hints),
  findTraders: text.findTraders,
  sellersOwn: text.sellersOwn,
  sellersAnswers: text.sellersAnswers,
  withoutLegends: text.withoutLegends,
  namesAnothersPiece: text.namesAnothersPiece,
  findSalesCounts: text.findSalesCounts,
  findWatchers: text.findWatchers,
  findBids: text.findBids,
  findAvailability: text.findAvailability,
  findItemCodes: text.findItemCodes,
  readCount,
  clauseAround: (said) => text.clauseAround(said, said.length >> 1, (said.length >> 1) + 1),
  sentenceAround: (said) => text.sentenceAround(said, said.length >> 1, (said.length >> 1) + 1),
  isNegated: (said) => text.isNegated(said, said.length >> 1, (said.length >> 1) + 1),
  isOfFormerPart: (said) => text.isOfFormerPart(said, said.length >> 1, (said.length >> 1) + 1),
  isLeftOpen: (said) => text.isLeftOpen(said, said.length >> 1, (said.length >> 1) + 1),
  polarityOf: (said) => text.polarityOf(said, said.length >> 1, (said.length >> 1) + 1),
  isAboutAnother: (said) => text.isAboutAnother(said, said.length >> 1, (said.length >> 1) + 1),
  titleWithoutSite: (said) => titleWithoutSite(said, 'Attic & Arcade'),
  sellerName,
  plainLabel,
  splitLabelled,
  labelOf,
  leadingLabel,
  placeLine,
  readConditionWords,
  readDate: (said) => readDate(said, hints),
  readRatingWords,
  readReturnsWords,
  titleWords,
  wordLikeness: (said) => wordLikeness(said, said),
  languageOfText,
  isWantedAd: (words: string) => {
    const said = [{ value: words, origin: 'visible' as const, where: 'here', confidence: 1 }];
    return isWantedAd({ title: said, description: said }, []);
  },
  plainName,
  tidyCode,
  readStated,
  readKnownRows,
  findPlaces,
};

/** Readers of what stands in a page's source: data, attributes, addresses. */
const ofSource: Record<string, TextReader> = {
  cleanJson,
  parseJsonLd,
  readTolerantJson: (source) => readTolerantJson(source, 64),
  plainText: (source) => plainText(source, source.length),
  decodeEntities,
  tidyText,
  termName,
  conditionOf,
  availabilityOf,
  dataPrice: (source) => dataPrice(source, 'EUR', 'sale', hints),
  webAddress: (source) => webAddress(source, base),
  comparableAddress: (source) => comparableAddress(source, base),
  photoKey: (source) => photoKey(addressOf(source)),
  widthFromAddress: (source) => widthFromAddress(addressOf(source)),
  isPlaceholder,
  namesNoPhoto: (source) => namesNoPhoto(source, null),
  parseSrcset,
  addressesInJson: (source) => addressesInJson(source, base),
  fromAttribute: (source) => fromAttribute('data-src', source, base),
};

/** Each public mark by itself, and all of them with the limit that `findMarks` sets. */
const ofMarks: Record<string, TextReader> = {
  ...Object.fromEntries(
    marks.flatMap((mark): [string, TextReader][] => [
      [`mark ${mark.id} in print`, (print) => mark.find(print, { foundIn: 'photo', photoId: 'photo-1' })],
      [`mark ${mark.id} in a listing`, (said) => mark.find(said, { foundIn: 'listing', photoId: null })],
    ]),
  ),
  findMarks: (said) => findMarks(said, { foundIn: 'listing', photoId: null }),
};

const inline = (said: string) => ({ text: said, struck: [], marks: [], selector: 'p' });
const makers = ['Ondrasse', 'Tessaro Vell'];
const escaped = (said: string) => said.replace(/[<&]/g, ' ');

/** Readers of what pages tell of makers, and the whole of them over one long paragraph. */
const ofTelling: Record<string, TextReader> = {
  splitEntry: (said) => splitEntry(inline(said)),
  makersNamed: (said) => makersNamed([{ kind: 'heading', text: said.slice(0, 200) }], said, 'Ondrasse'),
  constructionIn,
  lettersIn,
  plantsInTurn,
  monthLettersTold,
  deniedIn: (said) => deniedIn(said, true),
  modelsIn: (said) => modelsIn(said, null, makers),
  pricesIn: (said) => pricesIn(said, null, makers, null),
  plantsIn: (said) => plantsIn(said, { oneLetter: true, confessed: false, takenBack: 'K' }),
  codesNamed: (said) => codesNamed(said, true),
  writesOneLetter,
  isAsked,
  carrierOf: (said) => carrierOf(said, true, makers),
  systemOfHead: (said) => systemOfHead(said, said, now, (own) => own as Proposal, null),
  sentencesOf,
  systemsIn: (said) => systemsIn(sentencesOf(said), now),
  plantCodes,
  readExamples: (said) => readExamples(said, now),
  readLegend,
  readNotation: (said) => readNotation(said, new Map()),
  readLayoutWords: (said) => readLayoutWords(said, []),
  monthLetter,
  withLettersAdded: (said) =>
    withLettersAdded(said, { layout: [{ year: 2 }], fits: true, by: 'words', units: ['year'] }),
  formerAmounts,
  formerIn: (said) => formerIn(said, said),
  pageOfText,
  plainMaterial,
  stampedSince: (said) => stampedSince(said, now),
  readCounts,
  partNamed,
  readPeriods,
  readPlace,
  readAmount: (said) => readAmount(said),
  readAmounts,
  readSizes,
  opensPlaceOnPiece,
  readWhere: (said) => readWhere(said, true),
  isOnPiece,
  namesCarrier,
  rolesNamed,
  takeFromPage: (said) => takeHtml(`<h1>Ondrasse date codes</h1><p>${escaped(said)}</p>`),
};

/** Everything that is handed text which a page, a photo or a seller controls. */
export const textReaders: Record<string, TextReader> = {
  ...ofWords,
  ...ofSource,
  ...ofMarks,
  ...ofTelling,
  findClaims: (said) => findClaims(listingOf(said.slice(0, 200), said), builtInMakers),
};
