import type { PickField } from '../../listing/pick-types';

/** What a field of a listing is called. */
export const fieldNames: Record<PickField, string> = {
  title: 'Titel',
  description: 'Beschreibung',
  price: 'Preis',
  maker: 'Hersteller',
  model: 'Modell',
  condition: 'Zustand',
  measures: 'Maße',
  colour: 'Farbe',
  material: 'Material',
  itemCode: 'Artikelnummer',
  posted: 'Tag der Anzeige',
  returns: 'Rückgabe',
  shipping: 'Versand',
  payment: 'Bezahlung',
  seller: 'Verkäufer',
  photo: 'ein Foto',
};
