import type { PickField } from '../../listing/pick-types';

/** What a field of a listing is called. */
export const fieldNames: Record<PickField, string> = {
  title: 'title',
  description: 'description',
  price: 'price',
  maker: 'maker',
  model: 'model',
  condition: 'condition',
  measures: 'measurements',
  colour: 'colour',
  material: 'material',
  itemCode: 'item code',
  posted: 'date of posting',
  returns: 'return terms',
  shipping: 'shipping',
  payment: 'payment',
  seller: 'seller',
  photo: 'a photo',
};
