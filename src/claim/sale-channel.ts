import { isAboutAnother, isNegated, listOf, phraseFinder } from '../text';
import { type ClaimDraft, type Passage, saidIn } from './passage';

/** How the seller says the piece was first sold. Only purchase from the maker counts as "discount", not this offer's own reduction. */
const find = phraseFinder({
  discount: listOf(
    'bought in the sale, bought in a sale, bought on sale, purchased on sale, got it on sale',
    'bought at a discount, bought at discount, bought discounted, at a discount from, staff discount',
    'employee discount, staff sale, employee sale, friends discount, boutique sale, in store sale',
    'end of season sale, season sale, clearance sale, clearance rack, private sale event, # % off in the boutique',
    'half price in the boutique, half price in the shop, im sale gekauft, im schlussverkauf, im ausverkauf',
    'reduziert gekauft, mit rabatt gekauft, mitarbeiterrabatt, personalrabatt, personalverkauf, en solde',
    'en soldes, acheté en solde*, pendant les soldes, remise personnel, remise employé, prix personnel, braderie',
    'in saldo, ai saldi, sconto dipendenti, comprata in sconto, acquistata in sconto, durante i saldi, en rebajas',
    'en las rebajas, comprado con descuento, comprada con descuento, descuento de empleado, descuento de personal',
    'liquidación, in de uitverkoop, in de solden, met korting gekocht, personeelskorting, opruiming, セールで購入, 社員割引',
    '社販, セール品',
  ),
  outlet: listOf(
    'outlet, outlet store, factory outlet, factory store, factory shop, outlet shop, fabrikverkauf, werksverkauf',
    "lagerverkauf, magasin d'usine, déstockage, spaccio, spaccio aziendale, tienda de fábrica, fabriekswinkel",
    'fabrieksverkoop, アウトレット',
  ),
  'sample-sale': listOf(
    'sample sale, sample sales, press sale, sample, musterverkauf, musterteil, musterstück, vente presse',
    "vente de presse, vente d'échantillons, vente échantillons, vendita campionario, campionario",
    'venta de muestras, venta de muestrario, muestrario, monsterverkoop, sample sale verkoop, サンプルセール, サンプル品',
  ),
  seconds: listOf(
    'factory second, factory seconds, factory reject, second quality, seconds quality, slight second, b grade',
    'b stock, grade b stock, b ware, zweite wahl, 2. wahl, 2.wahl, ii. wahl, fehlerware, second choix',
    'deuxième choix, 2ème choix, 2e choix, seconda scelta, seconda qualità, 2a scelta, segunda selección',
    'segunda calidad, con tara, tweede keus, tweede keuze, b-keuze, 2e keus, b級品, 訳あり品, 訳あり',
  ),
});

/** Discount, outlet, sample-sale and factory-second claims; "not from an outlet" is none. */
export function saleChannelClaims(passages: Passage[]): ClaimDraft[] {
  return passages.flatMap((from) =>
    find(from.folded).flatMap((hit): ClaimDraft[] => {
      const { text } = from.folded;
      if (isNegated(text, hit.foldedStart, hit.foldedEnd) || isAboutAnother(text, hit.foldedStart, hit.foldedEnd))
        return [];
      // "Sample" alone is also a fabric sample or a sample photo; it has to be the piece's kind.
      if (
        hit.words.toLowerCase() === 'sample' &&
        !/^\s(?:piece|bag|item)/.test(text.slice(hit.foldedEnd, hit.foldedEnd + 8))
      )
        return [];
      return [{ kind: 'sale-channel', channel: hit.value, ...saidIn(from, hit, 0.85) }];
    }),
  );
}
