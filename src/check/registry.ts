import type * as z from 'zod';
import { ageWordFits } from './age-word-fits';
import { authorshipPlain } from './authorship-plain';
import { boughtAfterMaking } from './bought-after-making';
import { claimedDatesAgree } from './claimed-dates-agree';
import { claimsChanged } from './claims-changed';
import { codeAgainstClaimedDate } from './code-against-claimed-date';
import { codeBeforeStamping } from './code-before-stamping';
import { codeDenied } from './code-denied';
import { codeFitsMaker } from './code-fits-maker';
import { codeShown } from './code-shown';
import { codeSlotPossible } from './code-slot-possible';
import { codeSystemInUse } from './code-system-in-use';
import { codesAgree } from './codes-agree';
import { conditionWordsAgree } from './condition-words-agree';
import { constructionAgainstDate } from './construction-against-date';
import { dateNotInFuture } from './date-not-in-future';
import { descriptionGiven } from './description-given';
import { evidenceAgrees } from './evidence-agrees';
import type { Check, CheckOf } from './frame';
import { freshAgainstAge } from './fresh-against-age';
import { gradeWords } from './grade-words';
import { leatherWordsAgree } from './leather-words-agree';
import { makerStated } from './maker-stated';
import { markAgainstClaimedDate } from './mark-against-claimed-date';
import { markAgainstCodeDate } from './mark-against-code-date';
import { markAgainstOrigin } from './mark-against-origin';
import { markAgainstPlant } from './mark-against-plant';
import { measuredAgainstFile } from './measured-against-file';
import { measuresAgree } from './measures-agree';
import { measuresProportion } from './measures-proportion';
import { measuresStated } from './measures-stated';
import { metalWordsAgree } from './metal-words-agree';
import { modelMadeThen } from './model-made-then';
import { namedWidth } from './named-width';
import { newPricePlausible } from './new-price-plausible';
import { notThisPiece } from './not-this-piece';
import { notVouched } from './not-vouched';
import { oneOfMany } from './one-of-many';
import { originClaimsAgree } from './origin-claims-agree';
import { originCountryExisted } from './origin-country-existed';
import { packagingOnly } from './packaging-only';
import { partsShown } from './parts-shown';
import { paymentInside } from './payment-inside';
import { photoLargeEnough } from './photo-large-enough';
import { photoReused } from './photo-reused';
import { photoScreenshot } from './photo-screenshot';
import { photoStockLike } from './photo-stock-like';
import { photoWatermark } from './photo-watermark';
import { photosChanged } from './photos-changed';
import { photosOffered } from './photos-offered';
import { plantAgainstOrigin } from './plant-against-origin';
import { plantInUse } from './plant-in-use';
import { pressureWords } from './pressure-words';
import { priceChanged } from './price-changed';
import { priceCutPlausible } from './price-cut-plausible';
import { pricesAgree } from './prices-agree';
import { readyMadeAssurance } from './ready-made-assurance';
import { remadeByAnother } from './remade-by-another';
import { returnTerms } from './return-terms';
import { returnsAgainstTrader } from './returns-against-trader';
import { saleChannel } from './sale-channel';
import { sellerChanged } from './seller-changed';
import { sellerRecord } from './seller-record';
import { sizeAgainstModel } from './size-against-model';
import { sizePlausible } from './size-plausible';
import { stampCloseUp } from './stamp-close-up';
import { stampEvenness } from './stamp-evenness';
import { stampLegible } from './stamp-legible';
import { traderStated } from './trader-stated';
import { unusedAgainstPhoto } from './unused-against-photo';
import { usedPricePlausible } from './used-price-plausible';

/** Every check, in the order in which a case lists them. A check that is not here does not run. */
const all = [
  codeFitsMaker,
  codeSlotPossible,
  codeAgainstClaimedDate,
  codeSystemInUse,
  plantInUse,
  codeBeforeStamping,
  codeShown,
  codeDenied,
  codesAgree,
  stampEvenness,
  boughtAfterMaking,
  claimedDatesAgree,
  dateNotInFuture,
  evidenceAgrees,
  markAgainstClaimedDate,
  markAgainstCodeDate,
  modelMadeThen,
  markAgainstOrigin,
  markAgainstPlant,
  originClaimsAgree,
  originCountryExisted,
  plantAgainstOrigin,
  constructionAgainstDate,
  freshAgainstAge,
  leatherWordsAgree,
  metalWordsAgree,
  measuredAgainstFile,
  measuresAgree,
  measuresProportion,
  measuresStated,
  namedWidth,
  sizeAgainstModel,
  sizePlausible,
  newPricePlausible,
  priceCutPlausible,
  pricesAgree,
  saleChannel,
  usedPricePlausible,
  ageWordFits,
  authorshipPlain,
  conditionWordsAgree,
  unusedAgainstPhoto,
  descriptionGiven,
  gradeWords,
  makerStated,
  readyMadeAssurance,
  remadeByAnother,
  notVouched,
  packagingOnly,
  notThisPiece,
  oneOfMany,
  partsShown,
  photoLargeEnough,
  photoReused,
  photoScreenshot,
  photoStockLike,
  photoWatermark,
  photosOffered,
  stampCloseUp,
  stampLegible,
  paymentInside,
  pressureWords,
  returnTerms,
  returnsAgainstTrader,
  sellerRecord,
  traderStated,
  claimsChanged,
  photosChanged,
  priceChanged,
  sellerChanged,
] as const;
export const checks: readonly Check[] = all;

/** What the sentences of each check are made with. */
export type CheckData = {
  [C in (typeof all)[number] as C['id']]: C extends CheckOf<string, infer D> ? z.infer<D> : never;
};
