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

/** Words of a site's own menus, which stand where a name or a place might. Common practice, no source. */
const menu = phrasePattern(
  listOf(
    'sign in, sign up, log in, login, register, my account, account, help, home, sell, sell now, start selling, categories, all categories, menu, search, cart, basket, follow, contact, about us, see more, view more, show more, share, report, see all, view profile, see profile',
    'anmelden, einloggen, registrieren, mein konto, hilfe, startseite, verkaufen, kategorien, alle kategorien, suche, warenkorb, folgen, kontakt, mehr anzeigen, teilen, melden, profil ansehen',
    "se connecter, connexion, s'inscrire, mon compte, aide, accueil, vendre, catégories, toutes les catégories, rechercher, panier, suivre, voir plus, partager, signaler, voir le profil",
    'accedi, registrati, il mio account, aiuto, vendi, categorie, tutte le categorie, cerca, carrello, segui, mostra altro, condividi, segnala, vedi profilo',
    'iniciar sesión, acceder, registrarse, mi cuenta, ayuda, inicio, vender, categorías, todas las categorías, buscar, carrito, seguir, ver más, compartir, denunciar, ver perfil',
    'inloggen, aanmelden, registreren, mijn account, hulp, verkopen, categorieën, alle categorieën, zoeken, winkelwagen, volgen, toon meer, delen, melden, bekijk profiel',
    'ログイン, 会員登録, マイページ, ヘルプ, ホーム, 出品, 出品する, カテゴリー, すべてのカテゴリー, 検索, カート, フォロー, もっと見る, シェア, 通報',
  ),
  'u',
);

/** Whether words are those of a menu or a control and name nobody and no place. */
export function isMenuWord(text: string): boolean {
  const folded = foldWords(text.trim()).text;
  return menu.exec(folded)?.[0] === folded || isOfferControl(text);
}
