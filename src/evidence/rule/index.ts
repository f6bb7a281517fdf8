import { claimedDateCode } from './claimed-date-code';
import { claimedDateMark } from './claimed-date-mark';
import { claimedDates } from './claimed-dates';
import { codeMark } from './code-mark';
import { codeMarkPlace } from './code-mark-place';
import { codePeriod } from './code-period';
import { countryDate } from './country-date';
import { makingPurchase } from './making-purchase';
import { materialDate } from './material-date';
import { modelDate } from './model-date';
import { originCode } from './origin-code';
import { originMark } from './origin-mark';
import { origins } from './origins';
import { otherMaterial } from './other-material';

export const rules = [
  claimedDateCode,
  claimedDateMark,
  codeMark,
  codePeriod,
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
] as const;
export type RuleId = (typeof rules)[number]['id'];
