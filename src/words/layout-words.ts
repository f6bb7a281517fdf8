import type { LayoutSays } from '../code';
import type { Kit } from './kit';

/** What each part of a worked-out layout does, in one language: without a full stop. */
export type LayoutWords = {
  [K in LayoutSays['kind']]: (says: Extract<LayoutSays, { kind: K }>, kit: Kit) => string;
};
