import type { WordsFor } from '../../finding-words';
import { codeShown } from '../codes';
import { datedSaid, placedMarkSaid } from '../dates';

export const place: WordsFor<
  | 'mark-against-origin'
  | 'mark-against-plant'
  | 'origin-claims-agree'
  | 'origin-country-existed'
  | 'plant-against-origin'
> = {
  'plant-against-origin': {
    title: "The workshop's country is the claimed country",
    failureTitle: "The workshop's country is not the claimed country",
    rule: 'The workshop letters of a code stand for the country where the piece was made.',
    statement({ shown, plant, places, claimed }, kit, kind) {
      const named = `${plant ? `workshop ${plant}, ` : ''}${kit.list(places.map(kit.place))}`;
      const says = kind === 'agreement' ? ', as the listing says: ' : '. The listing says ';
      return `${kit.sentence(codeShown(shown, kit))}: ${named}${says}${kit.quote(claimed)}.`;
    },
    innocent: 'The seller may name the country of the house or of the shop, not that of the workshop.',
    settles: 'A photo of the country wording on the piece itself.',
  },
  'mark-against-plant': {
    title: "Wording on the piece names the workshop's country",
    failureTitle: "Wording on the piece names another country than the workshop's",
    rule: 'The country wording and the workshop letters of one piece name the same country.',
    statement({ shown, places, mark }, kit, kind) {
      const said = `${kit.sentence(codeShown(shown, kit))}: ${kit.list(places.map(kit.place))}`;
      return `${said}, ${kind === 'agreement' ? 'and' : 'but'} ${placedMarkSaid(mark, kit)}.`;
    },
    innocent: 'The wording may be that of a part, and some makers cut and sew in different countries.',
    settles: 'A photo of the country wording and the stamp together.',
  },
  'mark-against-origin': {
    title: 'Wording on the piece names the claimed country',
    failureTitle: 'Wording on the piece names another country',
    rule: 'A label, stamp or address on a piece names where it, or a part of it, was made.',
    statement: ({ mark, claimed }, kit, kind) =>
      `${kit.sentence(placedMarkSaid(mark, kit))}${kind === 'agreement' ? ', as the listing says: ' : '. The listing says '}${kit.quote(claimed)}.`,
    innocent: 'The wording may be that of a part (zip, lining) or of the office of the house.',
    settles: 'A photo of the whole label.',
  },
  'origin-claims-agree': {
    title: 'The listing names one country of making',
    failureTitle: 'The listing names more than one country of making',
    rule: 'A piece is made in one country.',
    statement: ({ first, other }, kit) =>
      `The listing says ${kit.quote(first.words)} (${kit.place(first.place)}) and also ${kit.quote(other.words)} (${kit.place(other.place)}).`,
    innocent: 'One may be the country of the house, of the leather or of the shop.',
    settles: 'A photo of the country wording on the piece itself.',
  },
  'origin-country-existed': {
    title: 'The country named existed at the date',
    failureTitle: 'The country named did not exist at the date',
    rule: 'A piece is made in a country of its time.',
    statement({ claimed, place, existed, dated }, kit, kind) {
      const country = `${kit.place(place)} existed ${kit.during(existed)}, and ${datedSaid(dated, kit)}`;
      return `The listing says ${kit.quote(claimed)}${kind === 'agreement' ? ': ' : ', but '}${country}.`;
    },
    innocent: 'Old labels were used up, and people use old or new names of a country by habit.',
    settles: 'A photo of the country wording on the piece itself.',
  },
};
