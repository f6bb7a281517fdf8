import { webAddressSchema } from '../listing/types';

/** The address where it may be followed, null where it is none of the web: it is then shown as words. */
export const webLink = (address: string): string | null =>
  webAddressSchema.safeParse(address).success ? address : null;
