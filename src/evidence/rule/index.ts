import { ageWordDate } from './age-word-date';
import { claimedDateCode } from './claimed-date-code';
import { claimedDateMark } from './claimed-date-mark';
import { claimedDates } from './claimed-dates';
import { codeMark } from './code-mark';
import { codeMarkPlace } from './code-mark-place';
import { codePeriod } from './code-period';
import { codePlant } from './code-plant';
import { codeSystem } from './code-system';
import { codes } from './codes';
import { countryDate } from './country-date';
import { countryMark } from './country-mark';
import { countryPurchase } from './country-purchase';
import { freshDate } from './fresh-date';
import { laterMaterialDate } from './later-material-date';
import { leatherImitation } from './leather-imitation';
import { likePrice } from './like-price';
import { makers } from './makers';
import { makingPurchase } from './making-purchase';
import { materialDate } from './material-date';
import { materialPurchase } from './material-purchase';
import { measuredNumber } from './measured-number';
import { modelDate } from './model-date';
import { modelPurchase } from './model-purchase';
import { newAged } from './new-aged';
import { newPrice } from './new-price';
import { newUsed } from './new-used';
import { originCode } from './origin-code';
import { originMark } from './origin-mark';
import { origins } from './origins';
import { otherMaterial } from './other-material';
import { priceCut } from './price-cut';
import { priceData } from './price-data';
import { proportionFamily } from './proportion-family';
import { purchaseMark } from './purchase-mark';
import { sizeModel } from './size-model';
import { sizeName } from './size-name';
import { sizes } from './sizes';
import { solidMetal } from './solid-metal';
import { stampingDate } from './stamping-date';
import { todayDate } from './today-date';
import type { Rule } from './types';
import { usedPrice } from './used-price';

export const rules = [
  claimedDateCode,
  claimedDateMark,
  purchaseMark,
  codeMark,
  codePeriod,
  codeSystem,
  codePlant,
  claimedDates,
  makingPurchase,
  countryDate,
  countryMark,
  countryPurchase,
  materialDate,
  materialPurchase,
  laterMaterialDate,
  otherMaterial,
  modelDate,
  modelPurchase,
  originCode,
  originMark,
  codeMarkPlace,
  origins,
  todayDate,
  ageWordDate,
  freshDate,
  stampingDate,
  sizes,
  sizeModel,
  sizeName,
  proportionFamily,
  measuredNumber,
  priceData,
  priceCut,
  newPrice,
  usedPrice,
  newUsed,
  newAged,
  leatherImitation,
  solidMetal,
  makers,
  codes,
  likePrice,
] as const;
/** Rules without a check of their own. */
export const toldTogether: ReadonlySet<string> = new Set(
  rules.flatMap((rule: Rule) => (rule.toldTogether ? [rule.id] : [])),
);
/** Rules of which nothing is a conflict. */
export const apartAsSaid: ReadonlySet<string> = new Set(
  rules.flatMap((rule: Rule) => (rule.apartAsSaid ? [rule.id] : [])),
);
export type RuleId = (typeof rules)[number]['id'];
