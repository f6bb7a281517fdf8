import { isNegated } from './clause';
import { foldWords, type Said } from './fold';
import { listOf, phraseFinder } from './phrases';

export type Availability = 'offered' | 'sold' | 'removed' | 'reserved';

/** Status words of listings in the seven languages. Common practice, no source. */
const find = phraseFinder<Availability>({
  sold: listOf(
    'currently unavailable, temporarily out of stock, derzeit nicht verfügbar, actuellement indisponible, attualmente non disponibile, actualmente no disponible, momenteel niet beschikbaar',
    'sold, sold out, this item has been sold, item sold, has been sold, no longer available, this item is no longer available, out of stock, auction ended, bidding has ended, listing has ended, this listing has ended',
    'verkauft, ausverkauft, bereits verkauft, nicht mehr verfügbar, artikel verkauft, auktion beendet, angebot beendet, nicht auf lager',
    'vendu, vendue, épuisé, épuisée, déjà vendu, plus disponible, enchère terminée, en rupture de stock, annonce terminée',
    'venduto, venduta, esaurito, esaurita, già venduto, non più disponibile, asta terminata, non disponibile',
    'vendido, vendida, agotado, agotada, ya vendido, ya no está disponible, no disponible, subasta finalizada',
    'verkocht, uitverkocht, al verkocht, niet meer beschikbaar, niet meer leverbaar, veiling afgelopen',
    '売り切れ, 売切れ, 売却済み, 売約済み, 在庫なし, 在庫切れ, 完売, 取引終了, オークション終了, 落札済み',
  ),
  removed: listOf(
    'listing removed, this listing has been removed, this listing was removed, ad removed, has been deleted, this ad is no longer available, listing deleted, page not found, item not found, listing not found',
    'anzeige gelöscht, angebot gelöscht, anzeige nicht mehr verfügbar, wurde gelöscht, anzeige existiert nicht mehr, nicht gefunden, seite nicht gefunden',
    "annonce supprimée, annonce retirée, annonce désactivée, n'existe plus, cette annonce n'est plus disponible, page introuvable, annonce expirée",
    'annuncio rimosso, annuncio eliminato, annuncio scaduto, non esiste più, pagina non trovata, annuncio non più disponibile',
    'anuncio eliminado, anuncio retirado, anuncio caducado, ya no existe, página no encontrada, anuncio no disponible',
    'advertentie verwijderd, advertentie verlopen, bestaat niet meer, is verwijderd, pagina niet gevonden',
    '削除されました, 掲載終了, ページが見つかりません, 出品が取り消されました, この商品は存在しません',
  ),
  reserved: listOf(
    'reserved, on hold, sale pending, sale agreed, under offer, reserviert, vorgemerkt, réservé, réservée, en cours de vente, riservato, riservata, prenotato, in trattativa',
    'reservado, reservada, gereserveerd, onder bod, 予約済み, 取り置き, お取り置き中, 専用',
  ),
  offered: listOf(
    'in stock, available, available now, add to cart, add to bag, add to basket, buy now, buy it now, make an offer, place bid, auf lager, verfügbar, lieferbar, in den warenkorb, sofort kaufen, jetzt kaufen, preis vorschlagen',
    'en stock, disponible, ajouter au panier, acheter, faire une offre, disponibile, aggiungi al carrello, acquista ora, compra subito, fai una proposta, en existencias, añadir al carrito, comprar ahora, hacer oferta, comprar ya',
    'op voorraad, beschikbaar, leverbaar, in winkelwagen, nu kopen, koop nu, doe een bod, 在庫あり, カートに入れる, 購入手続きへ, 今すぐ購入, 購入する, 入札する',
  ),
});

/** "Sold by", "sold as seen", "sold separately", "1,234 sold" are not the listing's end. */
const soldOtherwise =
  /^\s{0,2}(?:by|as|separately|with|without|to|for|in|individually|items?|listings?|von|durch|wie|ohne|mit|privat|par|avec|sans|a|da|con|senza|por|sin|door|zonder|met|als|articles?|artikel)(?![\p{L}])/u;
const countBefore = /[\d+]\s{0,2}(?:items?\s|artikel\s|articles?\s|x\s)?$/u;
const saleTalk =
  /(?:wird|werden|is being|are being|being|when|until|till|if|bis|wenn|sera|viene|verra|se|wordt|ist nicht|nie|never|why)\s{1,2}(?:not\s|es\s)?$/u;

/** Status words of a page, in order; "not sold", "sold as seen" and "sold by" are none. */
export function findAvailability(text: string): Said<Availability>[] {
  const folded = foldWords(text);
  return find(folded).flatMap(({ value, foldedStart, foldedEnd, start, end, words }) => {
    const left = folded.text.slice(Math.max(0, foldedStart - 24), foldedStart);
    if (
      value === 'sold' &&
      (soldOtherwise.test(folded.text.slice(foldedEnd, foldedEnd + 16)) ||
        countBefore.test(left) ||
        saleTalk.test(left))
    )
      return [];
    // Without its accent the French word is the English one for the least price of an auction.
    if (value === 'reserved' && /^reserve$/i.test(words)) return [];
    if (isNegated(folded.text, foldedStart, foldedEnd) && !/^(?:no|not|nicht|n'|plus|non|ya no|niet)/iu.test(words))
      return [];
    return [{ value, start, end, words }];
  });
}

/** Words and forms of one size or colour among several. Common practice, no source. */
const ofOneVariant =
  /(?<![\p{L}\d])(?:xxs|xs|s|m|l|xl|xxl|size|sizes|grosse|grossen|taille|tailles|taglia|taglie|talla|tallas|maat|maten|colou?r|farbe|couleur|colore|kleur|one size|\d{2}(?:\s?cm)?)(?![\p{L}\d])|サイズ|カラー/u;

/** Whether a line's status is that of one size or colour: "Size 30 – sold out", "XS (ausverkauft)". */
export const isOfOneVariant = (line: string): boolean => ofOneVariant.test(foldWords(line).text);
