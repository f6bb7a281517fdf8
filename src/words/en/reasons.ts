import type { ReasonWords } from '../reason-words';

const fields: Record<string, string> = { measures: 'measurements' };
const sections: Record<string, string> = {
  stamped: 'when pieces were stamped',
  plants: 'workshops',
  codeSystems: 'code systems',
  construction: 'construction',
  models: 'models',
  numbers: 'what can be measured on a part',
  trade: 'trade habits',
  prices: 'prices',
};

export const reasons: ReasonWords = {
  'no-listing': ({ page }) =>
    ({
      list: 'the page is a list of listings, not one listing',
      article: 'the page is an article and offers nothing',
      cut: 'the page is too large to be read whole',
      none: 'the page offers no listing',
    })[page],
  'not-stated': ({ field }) => `the page does not state the ${fields[field] ?? field}`,
  'no-maker-file': () => 'no maker file is known for this piece',
  'maker-file-silent': ({ maker, section }) =>
    `the maker file of ${maker} says nothing of ${sections[section] ?? section}`,
  'first-look': () => 'this is the first look at the listing',
  'code-unclear': ({ photo }, kit) =>
    `${photo === null ? 'the code' : `the stamp in ${kit.photo(photo)}`} could not be read with enough certainty`,
  'no-code': () => 'no code is shown or quoted',
  'no-date-claimed': () => 'the listing claims no date',
  'no-date-known': () => 'neither a code nor the listing gives a date',
  'no-origin-claimed': () => 'the listing names no country of making',
  'fewer-than-two-origins': () => 'the listing names fewer than two countries of making',
  'no-placed-code': () => 'no code names a place',
  'no-placed-mark': () => 'no photo shows a mark that names a place',
  'no-part-material': () => 'the listing names no material of a part',
  'parts-replaced': ({ words }, kit) =>
    `the listing says that these parts were replaced: ${words.map(kit.quote).join(', ')}`,
  'no-dated-model': () => 'the listing names no model with known years',
  'no-age-word': () => 'the listing uses neither word',
  'sold-new': () => 'the pieces are sold as new, and new ones of a kind are alike',
  'no-fresh-part': () => 'the listing calls no part of this kind fresh',
  'no-dating-code': () => 'no code gives a date under the systems of the maker',
  'no-dating-mark': () => 'no public mark that dates was found',
  'no-plant-and-date': () => 'no code names a workshop and a date',
  'not-made-and-bought': () => 'the listing does not give both a making and a purchase',
  'fewer-than-two-dates': () => 'the listing gives fewer than two dates',
  'no-date-before-stamping': ({ maker }) => `the listing claims no date before ${maker} stamped`,
  'no-code-quoted': () => 'the listing quotes no code',
  'no-code-denied': () => 'the listing does not say that there is no code',
  'no-code-to-compare': () => 'no code was read from a photo to compare with',
  'stamping-not-sure': ({ maker, span }, kit) => `${maker} did not surely stamp at ${kit.span(span)}`,
  'another-offer': ({ offer }) =>
    ({
      piece: 'a whole piece is on offer',
      accessory: 'what is offered is an accessory and no bag',
      part: 'what is offered is a part and no whole piece',
      packaging: 'what is offered is packaging without its piece',
      remade: 'what is offered was made by somebody else out of an older piece',
    })[offer],
  'several-pieces': () => 'several pieces are on offer, and it may be of another one or of all',
  'no-photos': () => 'the listing offers no photo that could be read',
  'photos-not-read': ({ unread, of, cause }, _, say) =>
    `${unread} of ${of} photos not read${cause ? `: ${say(cause)}` : ''}`,
  'copies-only': ({ copies, of }, kit) =>
    `${copies} of ${kit.count(of, { one: '# photo', other: '# photos' })} ${copies === 1 ? 'was read from a copy' : 'were read from copies'}, which ${copies === 1 ? 'says' : 'say'} nothing of the listing’s own`,
  'photos-too-weak': ({ weak, of }) => `${weak} of ${of} photos too small or too blurred to show a stamp`,
  'ground-not-measured': () => 'the ground around the piece was not measured in any photo',
  'not-yet-stamped': () => 'the maker did not yet stamp at the claimed time',
  'stamp-only-in-copy': () => 'the stamp was seen only in a copy of its photo',
  'no-stamp-read': () => 'no stamp was read from a photo',
  'seller-not-named-twice': () => 'the page does not name the seller at both looks',
  'price-without-like': ({ price }, kit) => `${kit.price(price)} cannot be compared with the maker file's prices`,
  'prices-in-two-currencies': () => 'the two prices are in different currencies',
  'no-earlier-price': () => 'the listing states no earlier price',
  'called-new': () => 'the piece is called new',
  'not-called-new': () => 'the listing does not call the piece new or unused',
  'maker-file-without-price': ({ maker }) => `the maker file of ${maker} gives no price`,
  'price-not-comparable': () => 'the earlier price is not known in the same currency',
  'no-model-of-file': () => 'the listing names no model of the maker file',
  'model-without-size': ({ model }) => `the maker file gives no size of ${model}`,
  'model-size-in-file': () => 'the maker file gives the size of the model itself',
  'no-sized-relative': () => 'the maker file gives no size of the model or of one named like it',
  'no-numbered-model': () => 'the listing names no model with such a number',
  'no-number-measured': ({ maker }) =>
    `nothing was measured on the photos that the maker file of ${maker} gives a number of for this piece`,
  'no-sides-stated': () => 'the page does not state width, height or depth',
  'fewer-than-two-sides': () => 'the page does not state two of width, height and depth',
  'law-elsewhere': () => 'the seller’s place or currency is not of the EU or the UK, whose law the rule rests on',
  'market-not-told': () =>
    'the page tells neither the seller’s country nor a currency, by which to know whose law holds',
  'seller-not-business': () => 'the seller is not said to be a business',
  'name-without-file': ({ name }, kit) => `whether ${kit.quote(name)} is the maker: no maker file gives this name`,
};
