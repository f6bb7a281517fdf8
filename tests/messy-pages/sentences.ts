import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { buildCase, findingsOf } from '../../src/case';
import { readListing } from '../../src/listing';
import { builtInMakers } from '../../src/maker';

/*
 * Sentences that touch what a check speaks of, each behind one plain description of a used piece of 1994: of honest
 * sellers, to be held against nobody, and some that found a doubt. All were written with their truth before any reader
 * ran on them. A third of the first, drawn by lot (Python's `random.Random(20261206).sample`), was set aside and opened
 * once, when the others had been mended; the later ones came then. Each is read twice: of a maker with a file, and of
 * one without.
 */

type Language = 'en' | 'de' | 'fr' | 'it' | 'es' | 'nl' | 'ja';
export type SentencePart = 'first' | 'first set aside' | 'later';
export interface Sentence {
  language: Language;
  text: string;
}
interface Planted extends Sentence {
  /** One of these has to doubt it. */
  checks: string[];
  /** Only a maker's file tells what is wrong. */
  withFile: boolean;
}
const table = JSON.parse(readFileSync(new URL('sentences.json', import.meta.url), 'utf8')) as {
  honest: Record<SentencePart, Record<Language, string[]>>;
  planted: Planted[];
};

export const honestSentences = (part: SentencePart): Sentence[] =>
  Object.entries(table.honest[part]).flatMap(([language, texts]) =>
    texts.map((text) => ({ language: language as Language, text })),
  );
export const plantedSentences: readonly Planted[] = table.planted;
/** One with a file, and one without. */
export const sellersMakers = ['Ondrasse', 'Velmont'] as const;

/** Title, description and price; `{M}` is the maker. */
const plain: Record<Language, readonly [string, string, string]> = {
  en: [
    '{M} Carryall 30 brown leather',
    'Brown leather {M} bag, made in Belgium in 1994, bought in Brussels in 1995. Used, light scratches on the base. 30 x 22 x 17 cm. ',
    '£280.00',
  ],
  de: [
    '{M} Carryall 30 braunes Leder',
    'Braune Ledertasche von {M}, 1994 in Belgien hergestellt, 1995 in Brüssel gekauft. Gebraucht, leichte Kratzer am Boden. 30 x 22 x 17 cm. ',
    '280,00 €',
  ],
  fr: [
    '{M} Carryall 30 cuir marron',
    'Sac {M} en cuir marron, fabriqué en Belgique en 1994, acheté à Bruxelles en 1995. Occasion, légères griffures à la base. 30 x 22 x 17 cm. ',
    '280,00 €',
  ],
  it: [
    '{M} Carryall 30 pelle marrone',
    'Borsa {M} in pelle marrone, prodotta in Belgio nel 1994, comprata a Bruxelles nel 1995. Usata, leggeri graffi sulla base. 30 x 22 x 17 cm. ',
    '280,00 €',
  ],
  es: [
    '{M} Carryall 30 piel marrón',
    'Bolso {M} de piel marrón, fabricado en Bélgica en 1994, comprado en Bruselas en 1995. Usado, ligeras rozaduras en la base. 30 x 22 x 17 cm. ',
    '280,00 €',
  ],
  nl: [
    '{M} Carryall 30 bruin leer',
    'Bruine leren tas van {M}, gemaakt in België in 1994, gekocht in Brussel in 1995. Gebruikt, lichte krassen op de bodem. 30 x 22 x 17 cm. ',
    '€ 280,00',
  ],
  ja: [
    '{M} Carryall 30 ブラウン レザー',
    '{M}の茶色い革のバッグです。1994年ベルギー製、1995年にブリュッセルで購入しました。中古、底に小傷があります。30×22×17cm。',
    '￥28,000',
  ],
};

const now = '2026-03-01T12:00:00Z';
const url = 'https://attic-arcade.example/item/77';

/** The checks that doubt or contradict a listing which says a sentence. */
export async function doubtsOn({ language, text }: Sentence, maker: string): Promise<string[]> {
  const named = (words: string) => words.replaceAll('{M}', maker);
  const [title, description, price] = plain[language].map(named) as [string, string, string];
  const { document } = parseHTML(
    `<!doctype html><html lang="${language}"><head><title>${title} | Attic &amp; Arcade</title></head><body><nav><a href="/">Attic &amp; Arcade</a></nav><main><h1>${title}</h1><p class="price">${price}</p><figure><img src="/p/1.jpg" width="1200" height="1200" alt=""></figure><div class="description"><p></p></div></main></body></html>`,
  );
  const paragraph = document.querySelector('.description p');
  if (paragraph) paragraph.textContent = description + named(text);
  const listing = await readListing(document as unknown as Document, { url, now });
  const found = findingsOf(buildCase({ listing, photos: [], corrections: [], makers: builtInMakers, now }));
  return [
    ...new Set(found.filter(({ kind }) => kind === 'doubt' || kind === 'contradiction').map(({ check }) => check)),
  ];
}
