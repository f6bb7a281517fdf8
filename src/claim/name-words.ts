import type { Listing } from '../listing/types';
import { findPlaces } from '../place';
import { accessoryWords, foldWords, listOf, partWords, phrasePattern, tableWords, wordsOf } from '../text';
import { colourWords, materialWords } from './material-words';
import { type Passage, passagesOf } from './passage';

/**
 * Words of a listing that name no maker: what the piece is, how it looks, how it is sold. Own list, common practice, no
 * source. It need not be whole: a word that is missing here only makes the tool hold its tongue.
 */
const plainWords = listOf(
  // English
  'a, an, the, and, or, of, in, on, at, by, for, from, with, without, to, is, it, this, that, very, well, all, not, no',
  'bag, bags, handbag, handbags, shoulder, crossbody, cross, body, hand, tote, hobo, bucket, satchel, doctor, frame',
  'evening, shopper, shopping, top, handle, clutch, baguette, flap, saddle, messenger, school, weekend, travel, work',
  'duffle, holdall, backpack, rucksack, briefcase, wallet, purse, pouch, cardholder, belt, case, coin, key, luggage',
  'suitcase, laptop, camera, box, mini, small, medium, large, big, little, size, sized, long, short, wide, real',
  'genuine, authentic, original, designer, luxury, premium, quality, high, good, great, nice, lovely, beautiful, rare',
  'classic, elegant, gorgeous, stunning, chic, unique, cute, pretty, retro, vintage, antique, old, older, early, mid, late',
  'years, year, century, era, style, unisex, mens, men, womens, women, ladies, lady, girls, used, preowned, owned, pre',
  'preloved, loved, second, condition, made, sale, price, offer, free, shipping, item, piece, closure, pocket, pockets',
  'color, colour, coloured, colored, tone, light, dark, two, three, one, new, set, smooth, soft, structured, quilted',
  // German
  'der, die, das, ein, eine, und, oder, aus, mit, ohne, von, für, in, im, am, zu, sehr, tasche, taschen, handtasche',
  'ledertasche, umhängetasche, schultertasche, abendtasche, arzttasche, reisetasche, aktentasche, henkeltasche, beutel',
  'rucksack, geldbörse, koffer, damen, herren, klein, kleine, groß, große, echt, echtes, echte, leder, alt, alte',
  'schön, schöne, schöner, zustand, guter, gut, sehr, gebraucht, jahre, jahren, antik, retro, farbe, designer',
  // French
  'le, la, les, un, une, des, du, de, et, ou, en, à, au, avec, sans, pour, très, sac, sacs, main, épaule, bandoulière',
  'cabas, besace, cartable, voyage, soirée, pochette, portefeuille, cuir, véritable, petit, petite, grand, grande',
  'moyen, femme, homme, ancien, ancienne, ans, années, bon, bonne, état, beau, belle, couleur, porté, seau, luxe',
  // Italian
  'il, lo, la, gli, le, un, uno, una, e, o, di, da, in, con, senza, per, molto, borsa, borse, borsetta, mano, spalla',
  'tracolla, secchiello, cartella, zaino, valigia, pelle, vera, vero, piccola, grande, media, donna, uomo, vecchia',
  'antica, anni, buone, ottime, condizioni, stato, bella, colore, lusso, usata, usato',
  // Spanish
  'el, los, las, un, una, y, o, de, del, en, con, sin, para, muy, bolso, bolsos, bolsa, mano, hombro, bandolera, cubo',
  'mochila, maletín, maleta, viaje, piel, cuero, auténtico, auténtica, pequeño, pequeña, grande, mediano, mujer',
  'hombre, antiguo, antigua, años, buen, buena, estado, bonito, bonita, color, lujo, usado, usada',
  // Dutch
  'de, het, een, en, of, van, uit, met, zonder, voor, in, heel, zeer, tas, tassen, handtas, schoudertas, reistas',
  'boodschappentas, koffer, leer, leren, lederen, echt, klein, kleine, groot, grote, dames, heren, oud, oude, jaren',
  'goede, staat, mooi, mooie, kleur, gebruikt, gebruikte',
  // Japanese
  'バッグ, ハンドバッグ, ショルダーバッグ, トートバッグ, 鞄, かばん, カバン, 財布, 本革, 革, レザー, 中古, 美品, 古着, 大, 小',
  'ヴィンテージ, ビンテージ, レディース, メンズ, 年代, 年, 代, の, 色, 状態, 良い, 送料無料',
);
const nouns =
  /^(?:bag|handbag|tote|satchel|purse|clutch|wallet|briefcase|backpack|tasche|handtasche|sac|borsa|bolso|tas|handtas)$/u;

let known: RegExp | null = null;
const knownWords = (): RegExp => {
  known ??= phrasePattern([
    ...plainWords,
    ...wordsOf('bag', 'piece', 'behind-new', 'new-bare'),
    ...accessoryWords,
    ...[colourWords, materialWords, partWords, tableWords('condition')].flatMap((table) => Object.values(table).flat()),
  ]);
  return known;
};

interface Word {
  /** As the listing writes it. */
  words: string;
  /** The folded word right behind it. */
  next: string;
  opensSentence: boolean;
}

/** Words of a passage that no list knows: they may be names. Numbers and words of one or two letters are none. */
function unknownWords({ folded, text: source }: Passage, others: readonly string[]): Word[] {
  const blank = (found: string) => ' '.repeat(found.length);
  let text = folded.text.slice(0, longest).replace(knownWords(), blank);
  if (others.length > 0) text = text.replace(phrasePattern(others), blank);
  const places = findPlaces(source.slice(0, longest));
  const sourceAt = (index: number) => (folded.at ? (folded.at[index] as number) : index);
  return [...text.matchAll(/(?<![\p{L}\p{N}])[\p{L}'’&.-]{3,}(?![\p{L}\p{N}])/gu)].flatMap((match): Word[] => {
    const [start, end] = [sourceAt(match.index), sourceAt(match.index + match[0].length - 1) + 1];
    if (!/\p{L}{3}/u.test(match[0]) || places.some((place) => place.start < end && start < place.end)) return [];
    const ahead = folded.text.slice(Math.max(0, match.index - 6), match.index);
    const behind = match.index + match[0].length;
    const next = /^[\s-]{0,3}(\p{L}{1,20})/u.exec(folded.text.slice(behind, behind + 24))?.[1] ?? '';
    const opensSentence = match.index < 4 || /[.!?:;\n•·-][\s"'(]{0,4}$/u.test(ahead);
    return [{ words: source.slice(start, end), next, opensSentence }];
  });
}
/** A name stands early; the rest of a novel is not searched for one. */
const longest = 3_000;

/** A word of the title that may be a maker's name that no file knows; null when every word is a plain one. */
export function unknownInTitle(passages: readonly Passage[], others: readonly string[] = []): string | null {
  const title = passages.find(({ field }) => field === 'title');
  return title ? (unknownWords(title, others)[0]?.words ?? null) : null;
}

/**
 * A word of the listing that may be a maker's name: any unknown one in the title; in running text one with a capital,
 * and at the start of a sentence only where a bag is named right behind it.
 */
export function possibleMakerName(
  listing: Pick<Listing, 'title' | 'description' | 'text' | 'language'>,
): string | null {
  const passages = passagesOf(listing);
  const inTitle = unknownInTitle(passages);
  if (inTitle !== null) return inTitle;
  const inText = passages.filter(({ field }) => field !== 'title').flatMap((from) => unknownWords(from, []));
  const name = inText.find(
    ({ words, next, opensSentence }) =>
      (/^\p{Lu}/u.test(words) && (!opensSentence || nouns.test(foldWords(next).text))) ||
      /[\u3040-\u30ff\u3400-\u9fff]/.test(words),
  );
  return name?.words ?? null;
}
