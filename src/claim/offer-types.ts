import type { Part } from './types';

/** What is offered: a whole bag, or something of which less holds. */
export interface Offer {
  kind: 'piece' | 'accessory' | 'part' | 'packaging' | 'remade';
  /** The part that is offered by itself. */
  part: Exclude<Part, 'body' | 'dust-bag' | 'pattern'> | null;
}
