import type { Case } from '../case';
import { photoNumber } from '../check';

/** A photo's place on the page, from 1; 0 for one that the page does not list any more. */
export const numberOf = ({ listing }: Pick<Case, 'listing'>, photoId: string): number =>
  photoNumber(listing, photoId) ?? 0;
