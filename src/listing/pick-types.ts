import * as z from 'zod';

/** What the buyer can point at on a page. `photo` names an image, the others a text. */
export const pickFieldSchema = z.enum([
  'title',
  'description',
  'price',
  'maker',
  'model',
  'condition',
  'measures',
  'colour',
  'material',
  'itemCode',
  'posted',
  'returns',
  'shipping',
  'payment',
  'seller',
  'photo',
]);
export type PickField = z.infer<typeof pickFieldSchema>;

/** A choice of the buyer, remembered for a site: where on its pages a field stands. */
export const pickSchema = z.strictObject({ field: pickFieldSchema, selector: z.string().min(1).max(1000) });
export type Pick = z.infer<typeof pickSchema>;
