import type { WordsFor } from '../../finding-words';
import { rangeSaid, valueSaid } from '../../numbers-said';
import { datedSaid, periodsSaid } from '../dates';
import { filePart } from '../parts';

export const materials: WordsFor<
  | 'construction-against-date'
  | 'fresh-against-age'
  | 'leather-words-agree'
  | 'measured-against-file'
  | 'metal-words-agree'
> = {
  'construction-against-date': {
    title: 'Material, lining, stitching, trim and metal are those of the date',
    failureTitle: 'Material, lining, stitching, trim or metal is not that of the date',
    rule: 'A maker changes its materials at known times; a piece carries those of its own time.',
    statement({ claimed, maker, part, is, used, other, dated, later }, kit, kind) {
      const [what, when] = [kit.either(is), `${periodsSaid(used, kit)}, and ${datedSaid(dated, kit)}`];
      const said = `The listing says ${kit.quote(claimed)}`;
      if (later) {
        const day = later.span
          ? ` (${kit.span(later.span)}${later.invoice ? ', with an invoice or receipt' : ''})`
          : '';
        const of = other ? `${maker}'s ${filePart(part)} was ${what}` : `${maker} used ${what}`;
        return `${said}, and ${of} ${when}: the part is later, as the seller says with ${kit.quote(later.words)}${day}.`;
      }
      if (kind === 'agreement') return `${said}; ${maker}'s ${filePart(part)} was ${what} ${when}.`;
      return other
        ? `${said}, but ${maker}'s ${filePart(part)} was ${what} ${when}.`
        : `${said}, but ${maker} used ${what} ${when}.`;
    },
    innocent: 'The part may have been replaced in a repair, or the seller used a loose word for the material.',
    settles: 'A sharp photo of the part, and whether it was ever repaired.',
  },
  'fresh-against-age': {
    title: 'What darkens and dulls with age has done so',
    failureTitle: 'Parts are said to be fresh that darken or dull with age',
    rule: 'Untreated handle leather and red edge trim darken with the years, and brass dulls.',
    statement: ({ words, years, dated }, kit) =>
      `The listing says ${kit.quote(words)}, but ${datedSaid(dated, kit)}: about ${years} years of age.`,
    innocent: 'The piece may have lain in a cupboard, or the part been replaced.',
    settles: 'A photo of the handles, the trim and the rivets in daylight, and whether any was replaced.',
  },
  'leather-words-agree': {
    title: 'The words for the leather agree',
    failureTitle: 'The listing says both leather and a leather-like material',
    rule: 'A surface is leather or a material made to look like it, not both.',
    statement: ({ leather, other }, kit) => `The listing says ${kit.quote(leather)} and also ${kit.quote(other)}.`,
    innocent: 'Body and lining or strap may be of different materials.',
    settles: 'Which part is of which material, with a photo of a raw edge.',
  },
  'measured-against-file': {
    title: "What was measured on a part is what the maker's file says",
    failureTitle: "What was measured on a part is not what the maker's file says",
    rule: 'A maker sews a part with so many stitches and uses certain colours; the number in the file is held against what you measured, within its uncertainty.',
    statement({ photo, mark, maker, part, is, file }, kit) {
      const value = valueSaid(is, kit);
      const said = {
        stitches: `${value} stitches on the ${filePart(part)}`,
        'stitch-pitch': `${value} mm from stitch to stitch on the ${filePart(part)}`,
        colour: `the colour of the ${filePart(part)} is ${value}`,
      }[is.of];
      const numbers = kit.either(file.map((one) => rangeSaid(one, 'to', kit)));
      return `${kit.sentence(kit.photo(photo))}, mark ${mark}: ${said}; the maker file of ${maker} says ${numbers}.`;
    },
    innocent:
      'The part may have been replaced or sewn again, the photo taken at a slant, or the marks, which were set by hand, may not cover the whole row or another part.',
    settles: 'A sharp photo of the part, straight from above, and whether it was ever repaired.',
  },
  'metal-words-agree': {
    title: 'The words for the metal agree',
    failureTitle: 'The listing gives two metals for the same part that exclude each other',
    rule: 'A part of solid gold or silver is neither plated nor of that tone only, and no solid metal is a zinc alloy. Solid brass may be plated.',
    statement: ({ solid, other, part }, kit) =>
      `The listing says ${kit.quote(solid)} and also ${kit.quote(other)} of the ${part ?? 'metal'}.`,
    innocent: 'The words may be meant of different buckles, rivets or zips.',
    settles: 'A close photo of the metal where it is worn.',
  },
};
