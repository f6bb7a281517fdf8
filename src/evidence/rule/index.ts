import { claimedDateCode } from './claimed-date-code';
import { claimedDateMark } from './claimed-date-mark';
import { codeMark } from './code-mark';
import { purchaseCode } from './purchase-code';

export const rules = [claimedDateCode, purchaseCode, claimedDateMark, codeMark] as const;
export type RuleId = (typeof rules)[number]['id'];
