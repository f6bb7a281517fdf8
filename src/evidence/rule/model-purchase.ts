import { modelDate } from './model-date';
import type { Rule } from './types';

/** The years of the model claimed, and a purchase before them. Never hard, as every purchase. */
export const modelPurchase = {
  ...modelDate,
  id: 'model-purchase',
  right: ['purchase'],
  hardWhen: () => false,
  toldTogether: true,
} as const satisfies Rule;
