import { foldWords } from './fold';
import { listOf, phrasePattern } from './phrases';

/**
 * Words of a control with which a reader buys, bids or writes to the seller, in the seven languages. They stand on
 * buttons and links only: in running text "buy" says nothing of the page. Common practice, no source.
 */
const words = phrasePattern(
  listOf(
    'add to cart, add to bag, add to basket, add to shopping *, buy, buy now, buy it now, purchase, order now, make an offer, make offer, place bid, place a bid, bid now, submit bid, contact seller, contact the seller, message seller, ask seller, reply to ad',
    'in den warenkorb, in den einkaufswagen, in die tasche, kaufen, jetzt kaufen, sofort kaufen, preis vorschlagen, bieten, gebot abgeben, nachricht schreiben, anbieter kontaktieren, verkäufer kontaktieren, anfragen',
    "ajouter au panier, acheter, acheter maintenant, achat immédiat, faire une offre, enchérir, placer une enchère, contacter le vendeur, contacter l'annonceur",
    'aggiungi al carrello, acquista, acquista ora, compra, compra subito, compralo subito, fai una proposta, fai una offerta, fai offerta, contatta il venditore, contatta venditore',
    'añadir al carrito, añadir a la cesta, añadir a la bolsa, comprar, comprar ahora, comprar ya, cómpralo ya, hacer oferta, hacer una oferta, pujar, contactar, contactar con el vendedor',
    'in winkelwagen, in winkelmand, toevoegen aan winkelwagen, kopen, nu kopen, koop nu, bestellen, doe een bod, bieden, plaats bod, bericht sturen, stuur bericht, neem contact op',
    'カートに入れる, カートに追加, 買い物かごに入れる, 購入, 購入手続きへ, 今すぐ購入, 今すぐ買う, 購入する, 入札, 入札する, 出品者に質問, 値下げ交渉',
  ),
  'u',
);

/** A control says one thing in a few words. */
const longest = 40;

/** Whether the words of a button or link invite to buy, to bid or to write to the seller. */
export function isOfferControl(text: string): boolean {
  const plain = text.replace(/\s+/g, ' ').trim();
  const found = plain.length <= longest ? words.exec(foldWords(plain).text) : null;
  return found !== null && found[0].length * 2 >= plain.length;
}
