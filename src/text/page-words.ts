import type { EachLanguage } from './each-language';

/** What a page writes over or beside its own parts, each label whole. */
export const descriptionLabels: EachLanguage = [
  'description, item description, details, about this item, about the piece',
  "description de l'article",
  'beschreibung, artikelbeschreibung, produktbeschreibung',
  'descrizione',
  'descripción',
  'beschrijving, omschrijving, productbeschrijving',
  '商品説明, 商品の説明, 説明, 商品詳細, アイテム説明',
];

export const priceLabels: EachLanguage = [
  'price, asking price, buy now, buy it now, current bid, starting bid, starting price, our price, now',
  'prix, achat immédiat, enchère actuelle, mise à prix, prix de vente',
  'preis, sofortkauf, festpreis, aktuelles gebot, startpreis',
  'prezzo, compralo subito, offerta attuale',
  'precio, cómpralo ya, puja actual, precio de salida',
  'prijs, vraagprijs, vaste prijs, huidig bod, bod',
  '価格, 販売価格, 即決価格, 現在価格, 値段, 現在, 税込価格',
];

/** Parts of headings over other listings. */
export const relatedHeadings: EachLanguage = [
  'related, similar, you may also, you might also, also like, more from, more by, other items, recently viewed, recommended, customers also, people also, complete the look, sponsored, trending',
  'similaires, aussi aimer, vous aimerez, articles consultés, autres annonces, autres articles, recommandé, à découvrir aussi',
  'ähnliche, das könnte, auch interessant, weitere artikel, weitere anzeigen, andere kauften, kürzlich angesehen, empfehlungen, gesponsert',
  'articoli simili, annunci simili, prodotti simili, potrebbe interessarti, ti potrebbe, altri articoli, altri annunci, visti di recente, consigliati',
  'similares, relacionados, también te, te puede interesar, quizás te, otros artículos, otros anuncios, vistos recientemente, recomendados, patrocinado',
  'vergelijkbare, gerelateerde, ook interessant, misschien ook, andere advertenties, meer van, onlangs bekeken, aanbevolen',
  '関連商品, 関連する, おすすめ, 類似, この商品を見た, 最近チェック, 閲覧履歴, 他の商品, スポンサー, その他の商品',
];
