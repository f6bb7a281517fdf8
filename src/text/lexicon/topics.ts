import about from './about.json' with { type: 'json' };
import acceptedInField from './accepted-in-field.json' with { type: 'json' };
import accepting from './accepting.json' with { type: 'json' };
import adType from './ad-type.json' with { type: 'json' };
import ageBehind from './age-behind.json' with { type: 'json' };
import allowed from './allowed.json' with { type: 'json' };
import an from './an.json' with { type: 'json' };
import andWords from './and.json' with { type: 'json' };
import announcesCode from './announces-code.json' with { type: 'json' };
import anotherPiece from './another-piece.json' with { type: 'json' };
import anothersPiece from './anothers-piece.json' with { type: 'json' };
import antique from './antique.json' with { type: 'json' };
import appraised from './appraised.json' with { type: 'json' };
import article from './article.json' with { type: 'json' };
import askedByOthers from './asked-by-others.json' with { type: 'json' };
import assurance from './assurance.json' with { type: 'json' };
import atCollection from './at-collection.json' with { type: 'json' };
import average from './average.json' with { type: 'json' };
import bag from './bag.json' with { type: 'json' };
import because from './because.json' with { type: 'json' };
import beforeSold from './before-sold.json' with { type: 'json' };
import behindNew from './behind-new.json' with { type: 'json' };
import behindSold from './behind-sold.json' with { type: 'json' };
import besideMakerName from './beside-maker-name.json' with { type: 'json' };
import besideMaterial from './beside-material.json' with { type: 'json' };
import besideThePiece from './beside-the-piece.json' with { type: 'json' };
import bidders from './bidders.json' with { type: 'json' };
import bids from './bids.json' with { type: 'json' };
import bidsNone from './bids-none.json' with { type: 'json' };
import bought from './bought.json' with { type: 'json' };
import brassSolid from './brass-solid.json' with { type: 'json' };
import brassSurface from './brass-surface.json' with { type: 'json' };
import but from './but.json' with { type: 'json' };
import buyOrBid from './buy-or-bid.json' with { type: 'json' };
import byMe from './by-me.json' with { type: 'json' };
import byTheMaker from './by-the-maker.json' with { type: 'json' };
import can from './can.json' with { type: 'json' };
import cannotSay from './cannot-say.json' with { type: 'json' };
import cardBare from './card-bare.json' with { type: 'json' };
import codeCue from './code-cue.json' with { type: 'json' };
import codeLabel from './code-label.json' with { type: 'json' };
import codeNoun from './code-noun.json' with { type: 'json' };
import comesAlong from './comes-along.json' with { type: 'json' };
import comesWithIt from './comes-with-it.json' with { type: 'json' };
import conditionBefore from './condition-before.json' with { type: 'json' };
import contactOutside from './contact-outside.json' with { type: 'json' };
import copyGrade from './copy-grade.json' with { type: 'json' };
import corner from './corner.json' with { type: 'json' };
import costWhen from './cost-when.json' with { type: 'json' };
import costsNew from './costs-new.json' with { type: 'json' };
import dateOfElse from './date-of-else.json' with { type: 'json' };
import datesFrom from './dates-from.json' with { type: 'json' };
import days from './days.json' with { type: 'json' };
import dealing from './dealing.json' with { type: 'json' };
import degree from './degree.json' with { type: 'json' };
import deniedBehind from './denied-behind.json' with { type: 'json' };
import discount from './discount.json' with { type: 'json' };
import done from './done.json' with { type: 'json' };
import dried from './dried.json' with { type: 'json' };
import dyed from './dyed.json' with { type: 'json' };
import family from './family.json' with { type: 'json' };
import feels from './feels.json' with { type: 'json' };
import firstPerson from './first-person.json' with { type: 'json' };
import forATime from './for-a-time.json' with { type: 'json' };
import formerOne from './former-one.json' with { type: 'json' };
import freshParts from './fresh-parts.json' with { type: 'json' };
import fromLying from './from-lying.json' with { type: 'json' };
import gifted from './gifted.json' with { type: 'json' };
import goesAlong from './goes-along.json' with { type: 'json' };
import goesInside from './goes-inside.json' with { type: 'json' };
import goldSolid from './gold-solid.json' with { type: 'json' };
import goldSurface from './gold-surface.json' with { type: 'json' };
import gotThen from './got-then.json' with { type: 'json' };
import gradeLegend from './grade-legend.json' with { type: 'json' };
import hasOrStays from './has-or-stays.json' with { type: 'json' };
import hasRoom from './has-room.json' with { type: 'json' };
import heard from './heard.json' with { type: 'json' };
import hearsay from './hearsay.json' with { type: 'json' };
import hedgeBeforeName from './hedge-before-name.json' with { type: 'json' };
import hedgeBehindName from './hedge-behind-name.json' with { type: 'json' };
import hurry from './hurry.json' with { type: 'json' };
import inStock from './in-stock.json' with { type: 'json' };
import inTheLookOf from './in-the-look-of.json' with { type: 'json' };
import insideThePiece from './inside-the-piece.json' with { type: 'json' };
import inspiredBy from './inspired-by.json' with { type: 'json' };
import invoice from './invoice.json' with { type: 'json' };
import isWords from './is.json' with { type: 'json' };
import isMissing from './is-missing.json' with { type: 'json' };
import itFollows from './it-follows.json' with { type: 'json' };
import jointInMaterial from './joint-in-material.json' with { type: 'json' };
import kindOfPiece from './kind-of-piece.json' with { type: 'json' };
import lacking from './lacking.json' with { type: 'json' };
import laterOnes from './later-ones.json' with { type: 'json' };
import leather from './leather.json' with { type: 'json' };
import leatherLike from './leather-like.json' with { type: 'json' };
import likened from './likened.json' with { type: 'json' };
import limitedEdition from './limited-edition.json' with { type: 'json' };
import linkToMaterial from './link-to-material.json' with { type: 'json' };
import look from './look.json' with { type: 'json' };
import looksLike from './looks-like.json' with { type: 'json' };
import lost from './lost.json' with { type: 'json' };
import lot from './lot.json' with { type: 'json' };
import made from './made.json' with { type: 'json' };
import madeBy from './made-by.json' with { type: 'json' };
import madeOf from './made-of.json' with { type: 'json' };
import madeVerb from './made-verb.json' with { type: 'json' };
import marketPlace from './market-place.json' with { type: 'json' };
import marketSite from './market-site.json' with { type: 'json' };
import matching from './matching.json' with { type: 'json' };
import meantFor from './meant-for.json' with { type: 'json' };
import measuredAgainst from './measured-against.json' with { type: 'json' };
import measuredThing from './measured-thing.json' with { type: 'json' };
import memberSince from './member-since.json' with { type: 'json' };
import menu from './menu.json' with { type: 'json' };
import mine from './mine.json' with { type: 'json' };
import misreadBefore from './misread-before.json' with { type: 'json' };
import modelNoun from './model-noun.json' with { type: 'json' };
import modelRun from './model-run.json' with { type: 'json' };
import namesNobody from './names-nobody.json' with { type: 'json' };
import negation from './negation.json' with { type: 'json' };
import newBare from './new-bare.json' with { type: 'json' };
import newBeforePart from './new-before-part.json' with { type: 'json' };
import newBehindPart from './new-behind-part.json' with { type: 'json' };
import noCondition from './no-condition.json' with { type: 'json' };
import noNegation from './no-negation.json' with { type: 'json' };
import noWear from './no-wear.json' with { type: 'json' };
import notMuch from './not-much.json' with { type: 'json' };
import notOffered from './not-offered.json' with { type: 'json' };
import notThisPiece from './not-this-piece.json' with { type: 'json' };
import notVouched from './not-vouched.json' with { type: 'json' };
import notYet from './not-yet.json' with { type: 'json' };
import nothing from './nothing.json' with { type: 'json' };
import nothingElse from './nothing-else.json' with { type: 'json' };
import nothingStamped from './nothing-stamped.json' with { type: 'json' };
import noticeable from './noticeable.json' with { type: 'json' };
import numberOfBids from './number-of-bids.json' with { type: 'json' };
import numberOfSales from './number-of-sales.json' with { type: 'json' };
import objectPronoun from './object-pronoun.json' with { type: 'json' };
import ofYear from './of-year.json' with { type: 'json' };
import offerControl from './offer-control.json' with { type: 'json' };
import offering from './offering.json' with { type: 'json' };
import oldOne from './old-one.json' with { type: 'json' };
import onceThought from './once-thought.json' with { type: 'json' };
import opensHouseName from './opens-house-name.json' with { type: 'json' };
import otherCode from './other-code.json' with { type: 'json' };
import otherHand from './other-hand.json' with { type: 'json' };
import otherListings from './other-listings.json' with { type: 'json' };
import otherOne from './other-one.json' with { type: 'json' };
import otherVoices from './other-voices.json' with { type: 'json' };
import otherWork from './other-work.json' with { type: 'json' };
import othersKin from './others-kin.json' with { type: 'json' };
import outOf from './out-of.json' with { type: 'json' };
import outlet from './outlet.json' with { type: 'json' };
import ownHouse from './own-house.json' with { type: 'json' };
import packagingOnly from './packaging-only.json' with { type: 'json' };
import paperOrKey from './paper-or-key.json' with { type: 'json' };
import parcel from './parcel.json' with { type: 'json' };
import payDirectly from './pay-directly.json' with { type: 'json' };
import payUnprotected from './pay-unprotected.json' with { type: 'json' };
import people from './people.json' with { type: 'json' };
import peopleCounted from './people-counted.json' with { type: 'json' };
import photograph from './photograph.json' with { type: 'json' };
import piece from './piece.json' with { type: 'json' };
import plainWord from './plain-word.json' with { type: 'json' };
import positive from './positive.json' with { type: 'json' };
import possessive from './possessive.json' with { type: 'json' };
import previousOne from './previous-one.json' with { type: 'json' };
import questionsHeading from './questions-heading.json' with { type: 'json' };
import rangeOpens from './range-opens.json' with { type: 'json' };
import ratingLabel from './rating-label.json' with { type: 'json' };
import ratingsCounted from './ratings-counted.json' with { type: 'json' };
import reDyed from './re-dyed.json' with { type: 'json' };
import reIssue from './re-issue.json' with { type: 'json' };
import readsThere from './reads-there.json' with { type: 'json' };
import refusedBehind from './refused-behind.json' with { type: 'json' };
import refusedInField from './refused-in-field.json' with { type: 'json' };
import remade from './remade.json' with { type: 'json' };
import repairNoun from './repair-noun.json' with { type: 'json' };
import replaced from './replaced.json' with { type: 'json' };
import restored from './restored.json' with { type: 'json' };
import returnNoun from './return-noun.json' with { type: 'json' };
import returnsLabel from './returns-label.json' with { type: 'json' };
import runEnded from './run-ended.json' with { type: 'json' };
import saidWrongly from './said-wrongly.json' with { type: 'json' };
import sales from './sales.json' with { type: 'json' };
import salesNone from './sales-none.json' with { type: 'json' };
import sampleSale from './sample-sale.json' with { type: 'json' };
import scaleThing from './scale-thing.json' with { type: 'json' };
import searchWords from './search-words.json' with { type: 'json' };
import seconds from './seconds.json' with { type: 'json' };
import sellerLabel from './seller-label.json' with { type: 'json' };
import sellersPart from './sellers-part.json' with { type: 'json' };
import sentBack from './sent-back.json' with { type: 'json' };
import shipping from './shipping.json' with { type: 'json' };
import shop from './shop.json' with { type: 'json' };
import silverSolid from './silver-solid.json' with { type: 'json' };
import silverSurface from './silver-surface.json' with { type: 'json' };
import since from './since.json' with { type: 'json' };
import smallThing from './small-thing.json' with { type: 'json' };
import soldSoFar from './sold-so-far.json' with { type: 'json' };
import somebody from './somebody.json' with { type: 'json' };
import stampedBehind from './stamped-behind.json' with { type: 'json' };
import stars from './stars.json' with { type: 'json' };
import stored from './stored.json' with { type: 'json' };
import supposed from './supposed.json' with { type: 'json' };
import takenFrom from './taken-from.json' with { type: 'json' };
import thereAre from './there-are.json' with { type: 'json' };
import thisOne from './this-one.json' with { type: 'json' };
import thoseWhoSell from './those-who-sell.json' with { type: 'json' };
import through from './through.json' with { type: 'json' };
import toldMe from './told-me.json' with { type: 'json' };
import unreadable from './unreadable.json' with { type: 'json' };
import variant from './variant.json' with { type: 'json' };
import vintage from './vintage.json' with { type: 'json' };
import wanted from './wanted.json' with { type: 'json' };
import wantedAsks from './wanted-asks.json' with { type: 'json' };
import wantedBehind from './wanted-behind.json' with { type: 'json' };
import wantedBy from './wanted-by.json' with { type: 'json' };
import wantedHome from './wanted-home.json' with { type: 'json' };
import wantedMuch from './wanted-much.json' with { type: 'json' };
import warnedOf from './warned-of.json' with { type: 'json' };
import watchCount from './watch-count.json' with { type: 'json' };
import watchedBy from './watched-by.json' with { type: 'json' };
import watchers from './watchers.json' with { type: 'json' };
import wear from './wear.json' with { type: 'json' };
import weeks from './weeks.json' with { type: 'json' };
import whether from './whether.json' with { type: 'json' };
import wholly from './wholly.json' with { type: 'json' };
import withWords from './with.json' with { type: 'json' };
import yearAfter from './year-after.json' with { type: 'json' };
import years from './years.json' with { type: 'json' };
import zincAlloy from './zinc-alloy.json' with { type: 'json' };

/** The languages that sellers' words are read in. */
export type SellerLanguage = 'en' | 'fr' | 'de' | 'it' | 'es' | 'nl' | 'ja';

/** What sellers write of one topic. In a phrase, `*` stands for an ending and `#` for a number (see `phrasePattern`). */
export type Lexicon = Readonly<Record<SellerLanguage, readonly string[]>>;

/**
 * Every list of sellers' words, one file a topic: a list that lacks a language does not compile. Own lists, common
 * practice, no source. What a word means decides its topic, never where it is used; no phrase
 * stands in two, but for small words and the few that a test argues one by one.
 */
export const topics = {
  about,
  'accepted-in-field': acceptedInField,
  accepting,
  'ad-type': adType,
  'age-behind': ageBehind,
  an,
  and: andWords,
  'announces-code': announcesCode,
  'another-piece': anotherPiece,
  'anothers-piece': anothersPiece,
  antique,
  appraised,
  article,
  'asked-by-others': askedByOthers,
  assurance,
  'at-collection': atCollection,
  average,
  bag,
  because,
  'before-sold': beforeSold,
  'behind-new': behindNew,
  'behind-sold': behindSold,
  'beside-maker-name': besideMakerName,
  'beside-material': besideMaterial,
  'beside-the-piece': besideThePiece,
  bidders,
  bids,
  'bids-none': bidsNone,
  bought,
  'brass-solid': brassSolid,
  'brass-surface': brassSurface,
  but,
  'buy-or-bid': buyOrBid,
  'by-me': byMe,
  'by-the-maker': byTheMaker,
  'cannot-say': cannotSay,
  'card-bare': cardBare,
  'code-cue': codeCue,
  'code-label': codeLabel,
  'code-noun': codeNoun,
  'comes-along': comesAlong,
  'comes-with-it': comesWithIt,
  'condition-before': conditionBefore,
  'contact-outside': contactOutside,
  'copy-grade': copyGrade,
  corner,
  'cost-when': costWhen,
  'costs-new': costsNew,
  'date-of-else': dateOfElse,
  'dates-from': datesFrom,
  days,
  dealing,
  'denied-behind': deniedBehind,
  discount,
  done,
  dyed,
  family,
  'first-person': firstPerson,
  'former-one': formerOne,
  'fresh-parts': freshParts,
  gifted,
  'goes-along': goesAlong,
  'goes-inside': goesInside,
  'gold-solid': goldSolid,
  'gold-surface': goldSurface,
  'grade-legend': gradeLegend,
  'has-or-stays': hasOrStays,
  'has-room': hasRoom,
  heard,
  hearsay,
  'hedge-before-name': hedgeBeforeName,
  'hedge-behind-name': hedgeBehindName,
  hurry,
  'in-stock': inStock,
  'in-the-look-of': inTheLookOf,
  'inside-the-piece': insideThePiece,
  'inspired-by': inspiredBy,
  invoice,
  is: isWords,
  'is-missing': isMissing,
  'it-follows': itFollows,
  'joint-in-material': jointInMaterial,
  'kind-of-piece': kindOfPiece,
  lacking,
  'later-ones': laterOnes,
  leather,
  'leather-like': leatherLike,
  likened,
  'limited-edition': limitedEdition,
  'link-to-material': linkToMaterial,
  look,
  'looks-like': looksLike,
  lost,
  lot,
  made,
  'made-by': madeBy,
  'made-of': madeOf,
  'made-verb': madeVerb,
  'market-place': marketPlace,
  'market-site': marketSite,
  matching,
  'meant-for': meantFor,
  'measured-against': measuredAgainst,
  'measured-thing': measuredThing,
  'member-since': memberSince,
  menu,
  mine,
  'misread-before': misreadBefore,
  'model-noun': modelNoun,
  'model-run': modelRun,
  'names-nobody': namesNobody,
  negation,
  'new-bare': newBare,
  'new-before-part': newBeforePart,
  'new-behind-part': newBehindPart,
  'no-condition': noCondition,
  'no-negation': noNegation,
  'no-wear': noWear,
  'from-lying': fromLying,
  'not-much': notMuch,
  'for-a-time': forATime,
  'not-offered': notOffered,
  'not-this-piece': notThisPiece,
  'not-vouched': notVouched,
  'not-yet': notYet,
  nothing,
  'nothing-else': nothingElse,
  'nothing-stamped': nothingStamped,
  noticeable,
  'number-of-bids': numberOfBids,
  'number-of-sales': numberOfSales,
  'object-pronoun': objectPronoun,
  'of-year': ofYear,
  'offer-control': offerControl,
  offering,
  'old-one': oldOne,
  'once-thought': onceThought,
  'opens-house-name': opensHouseName,
  'other-code': otherCode,
  'other-hand': otherHand,
  'other-listings': otherListings,
  'other-one': otherOne,
  'other-voices': otherVoices,
  'other-work': otherWork,
  'others-kin': othersKin,
  'out-of': outOf,
  outlet,
  'own-house': ownHouse,
  'packaging-only': packagingOnly,
  'paper-or-key': paperOrKey,
  parcel,
  'pay-directly': payDirectly,
  'pay-unprotected': payUnprotected,
  people,
  'people-counted': peopleCounted,
  photograph,
  piece,
  'plain-word': plainWord,
  positive,
  possessive,
  'range-opens': rangeOpens,
  'rating-label': ratingLabel,
  'ratings-counted': ratingsCounted,
  're-dyed': reDyed,
  're-issue': reIssue,
  'reads-there': readsThere,
  'refused-behind': refusedBehind,
  'refused-in-field': refusedInField,
  remade,
  'repair-noun': repairNoun,
  replaced,
  restored,
  'returns-label': returnsLabel,
  'run-ended': runEnded,
  'said-wrongly': saidWrongly,
  sales,
  'sales-none': salesNone,
  'sample-sale': sampleSale,
  'scale-thing': scaleThing,
  'search-words': searchWords,
  seconds,
  'seller-label': sellerLabel,
  'sellers-part': sellersPart,
  'sent-back': sentBack,
  shipping,
  shop,
  'silver-solid': silverSolid,
  'silver-surface': silverSurface,
  since,
  'small-thing': smallThing,
  'sold-so-far': soldSoFar,
  somebody,
  'stamped-behind': stampedBehind,
  stars,
  stored,
  supposed,
  'taken-from': takenFrom,
  'there-are': thereAre,
  'this-one': thisOne,
  through,
  'told-me': toldMe,
  unreadable,
  variant,
  vintage,
  wanted,
  'wanted-asks': wantedAsks,
  'wanted-behind': wantedBehind,
  'wanted-by': wantedBy,
  'wanted-home': wantedHome,
  'wanted-much': wantedMuch,
  'warned-of': warnedOf,
  'watch-count': watchCount,
  'watched-by': watchedBy,
  watchers,
  wear,
  weeks,
  whether,
  wholly,
  with: withWords,
  'year-after': yearAfter,
  years,
  'got-then': gotThen,
  'previous-one': previousOne,
  'return-noun': returnNoun,
  'zinc-alloy': zincAlloy,
  'questions-heading': questionsHeading,
  allowed,
  can,
  degree,
  dried,
  feels,
  'those-who-sell': thoseWhoSell,
} satisfies Record<string, Lexicon>;
