import { materialDate } from './material-date';
import type { Rule } from './types';

/** When the maker used the material claimed of a part, and a purchase before that. Never hard, as every purchase. */
export const materialPurchase = {
  ...materialDate,
  id: 'material-purchase',
  right: ['purchase'],
  hardWhen: () => false,
  toldTogether: true,
} as const satisfies Rule;
