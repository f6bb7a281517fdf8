import { ageWordDate } from './age-word-date';
import { claimedDateCode } from './claimed-date-code';
import { claimedDateMark } from './claimed-date-mark';
import { claimedDates } from './claimed-dates';
import { codeMark } from './code-mark';
import { codeMarkPlace } from './code-mark-place';
import { codePeriod } from './code-period';
import { codePlant } from './code-plant';
import { codeSystem } from './code-system';
import { countryDate } from './country-date';
import { freshDate } from './fresh-date';
import { makingPurchase } from './making-purchase';
import { materialDate } from './material-date';
import { modelDate } from './model-date';
import { newPrice } from './new-price';
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
  materialDate,
  otherMaterial,
  modelDate,
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
  priceData,
  priceCut,
  newPrice,
  usedPrice,
] as const;
/** Rules without a check of their own. */
export const toldTogether: ReadonlySet<string> = new Set(
  rules.flatMap((rule: Rule) => (rule.toldTogether ? [rule.id] : [])),
);
export type RuleId = (typeof rules)[number]['id'];
