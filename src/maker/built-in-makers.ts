import { inventedMakers } from './built-in';

/** The invented makers, for what always shows or tries them. */
export const builtInMakers = inventedMakers();
