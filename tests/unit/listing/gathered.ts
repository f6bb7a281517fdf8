import { gather } from '../../../src/listing/gather-page';
import { lookBySource } from '../../../src/listing/page/look-by-source';
import { Slices, usualBudget } from '../../../src/listing/page/slices';
import { documentOf, now, pageUrl } from './page';

export const slices = () => new Slices(usualBudget, undefined, () => 0);

/** What is gathered of a page's HTML before anything is judged. */
export const gathered = (html: string) => {
  const document = documentOf(html);
  return gather(document, { url: pageUrl, now, look: lookBySource(document) }, usualBudget, slices());
};

/** The heading of a listing, by a name that tests find it by. */
export const bag = '<h1 data-n="bag">Ondrasse Carryall</h1>';

/** What is gathered of a listing with this under its heading. */
export const gatheredOf = (body: string) => gathered(`<main>${bag}${body}</main>`);
