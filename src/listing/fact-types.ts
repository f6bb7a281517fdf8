import type { Draft } from './draft';

/** The facts of a listing that says nothing. */
export const noFacts = (): Omit<Draft, 'problems'> => ({
  title: [],
  description: [],
  maker: [],
  model: [],
  itemCode: [],
  price: [],
  condition: [],
  availability: [],
  measures: [],
  colour: [],
  material: [],
  posted: [],
  watchers: [],
  bids: [],
  returns: [],
  shipping: [],
  payment: [],
  seller: { name: [], rating: [], salesCount: [], memberSince: [], trader: [], place: [] },
});
