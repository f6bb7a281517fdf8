import { listOf, phrasePattern } from './phrases';

/** Words beside an amount that say what kind of amount it is, in the seven languages. Common practice, no source. */
const before = (phrases: string[]) => new RegExp(`(?:${phrasePattern(phrases).source})[\\s:(]{0,4}$`, 'u');
const after = (phrases: string[]) => new RegExp(`^[\\s)]{0,3}(?:${phrasePattern(phrases).source})`, 'u');

const shippingNouns = listOf(
  'shipping, shipping cost*, postage, p&p, p & p, p+p, delivery, versand, versandkosten, porto, lieferung',
  'livraison, frais de port, frais de livraison, envoi, port, spedizione, spese di spedizione, consegna, envío',
  'gastos de envío, verzendkosten, verzending, verzenden, porti, 送料, 配送料',
);

const shippingWay =
  '(?:(?:to|nach|vers|en|in|naar|a|per|for|innerhalb|within|with|via|mit|par|con|met) [a-z]{2,14}|uk|us|eu|de|costs?|kosten?|is|are|von|of|ab|from|fuer|fur|pour)';
export const shippingBefore = new RegExp(
  `(?:${phrasePattern(shippingNouns).source})(?:[ :]{1,2}${shippingWay}){0,3}[\\s:(=+]{0,4}$`,
  'u',
);
export const shippingAfter = after([
  ...shippingNouns,
  'for shipping',
  'for postage',
  'for delivery',
  'to ship',
  'für versand',
  'für den versand',
  'de port',
  'de frais de port',
  'de livraison',
  'di spedizione',
  'per la spedizione',
  'de envío',
  'de gastos de envío',
  'voor verzending',
  'to post',
  'post and packing',
  'postage and packing',
]);

export const wasBefore = before(
  listOf(
    'was, were, originally, original price, orig, orig., rrp, msrp, retail, retails at, retails for, retail price',
    'retailed at, retailed for, new price, list price, regular price, reg., old price, before, usual price, paid',
    'i paid, bought for, instead of, down from, reduced from, sells new for, new for, statt, anstatt, uvp',
    'neupreis, np, np., np war, np:, np ca., neupreis war, neupreis lag bei, neupreis ca., vorher, früher',
    'ehemals, alter preis, ursprünglich, originalpreis, ladenpreis, bezahlt, gekauft für, au lieu de, prix neuf',
    "prix d'origine, prix d'achat, avant, neuf, acheté, payé, achetée, prix boutique, prix initial, valeur neuf",
    'valeur, invece di, anziché, prezzo originale, prezzo di listino, prezzo pieno, listino, pagata, pagato',
    'prima, era, valore, al posto di, antes, en lugar de, precio original, precio anterior, pvp, pvr, costó',
    'en vez de, valorado en, comprado por, adviesprijs, nieuwprijs, oorspronkelijk, was eerst, van, in plaats van',
    'winkelprijs, vraagprijs was, aankoopprijs, 定価, 通常価格, 参考価格, 元値, 購入価格, 新品価格, 購入時, 元の価格',
  ),
);
export const wasAfter = after(
  listOf(
    'new, neu, neuf, neuve, retail, rrp, when new, in shops, in the shop, uvp, neupreis, prix neuf, da nuova',
    'nuovo, de nuevo, nuevo, nieuw',
  ),
);

export const fromBefore = before(
  listOf(
    'from, starting at, starting from, starts at, as low as, ab, schon ab, bereits ab, dès, à partir de',
    'a partir de, apd, à pd, da, a partire da, desde, vanaf, från, fra, od, von, de',
  ),
);
export const fromAfter = new RegExp(
  `^\\s{0,2}(?:${phrasePattern(listOf('から, より, and up, upwards, onwards, e oltre')).source}|〜(?!\\s*[\\d¥])|~(?!\\s*[\\d¥]))`,
  'u',
);

export const savingBefore = before(
  listOf(
    'save, saving, savings, you save, discount of, off, coupon, voucher, rabatt, rabatt von, ersparnis, spare',
    'sparen sie, gespart, reduziert um, reduced by, économisez, remise de, réduction de, risparmi, sconto di',
    'ahorra, descuento de, korting, bespaar, je bespaart, 割引, クーポン',
  ),
);
export const savingAfter = after(
  listOf(
    'off, discount, rabatt, gespart, de remise, de réduction, di sconto, de descuento, korting, 引き, オフ, 割引',
    'cheaper, günstiger',
  ),
);

/** Words of a shop's own terms before a sum: "free shipping over", "orders above", "ab … versandkostenfrei". */
export const thresholdBefore = new RegExp(
  `(?:${
    phrasePattern(
      listOf(
        'free shipping, free delivery, free returns, free postage, orders, order value, spend, purchases, versandkostenfrei, kostenloser versand, gratis versand, bestellwert, mindestbestellwert, bestellungen, einkauf',
        'livraison offerte, livraison gratuite, commandes, commande, achats, achat, spedizione gratuita, ordini, acquisti, ordine minimo, envío gratis, pedidos, compras, pedido mínimo',
        'gratis verzending, gratis verzonden, bestellingen, 送料無料',
      ),
    ).source
  })[^.!?|•\\n\\d]{0,24}$`,
  'u',
);
/** "over $150", "ab 75 €", "dès 80 €": with words of postage behind them, a shop's own terms. */
export const overBefore = before(
  listOf(
    'over, above, from, of, on, ab, über, dès, à partir de, plus de, oltre, da, sopra, desde, a partir de, más de, vanaf, boven',
  ),
);
export const postageBehind = after(
  listOf(
    'free shipping, free delivery, ship free, ships free, versandkostenfrei, kostenloser versand, gratis versand, livraison offerte, livraison gratuite, spedizione gratuita, envío gratis, gratis verzending, gratis verzonden, 以上, 以上で送料無料',
  ),
);

/** "zwischen 180 und 240 €": both are one range. */
export const betweenBefore = before(listOf('between, zwischen, entre, tra, fra, tussen'));
export const betweenJoint = /^\s(?:and|und|et|y|e|en)\s$/u;

export const instalmentBefore = new RegExp(
  `(?:(?<!\\d)\\d{1,2}\\s?(?:x|×)\\s?|(?:${
    phrasePattern(
      listOf(
        '# payments of, # instalments of, # installments of, # interest free payments of',
        '# interest free instalments of, # monthly payments of, payments of, # raten à, # raten a, # raten von',
        '# raten zu, # monatsraten à, rate, monatlich, # fois, en # fois, # mensualités de, mensualités de, # rate da',
        'in # rate da, # cuotas de, # plazos de, # termijnen van, in # termijnen van, monthly, pay monthly, per month',
        '分割',
      ),
    ).source
  })[\\s:]{0,3})$`,
  'u',
);
export const instalmentAfter = new RegExp(
  `^\\s{0,2}(?:[/]\\s?)?(?:${phrasePattern(listOf('mo, month, monat, mois, mese, mes, maand, per month, a month, monthly, pro monat, im monat, monatlich', 'par mois, al mese, al mes, per maand, ×# 回, 回払い')).source}|x\\s?\\d{1,2}(?!\\d)|×\\s?\\d{1,2}(?!\\d))`,
  'u',
);
export const unitAfter = new RegExp(
  `^\\s{0,2}(?:/\\s?(?:[a-z]{1,8}[²³]?|m2|qm|\\d{1,4}\\s?(?:g|ml|cm)|台|個|枚)(?![\\p{L}])|(?:${phrasePattern(listOf('per item, per piece, per kg, per m, per metre, per meter, per pair, per hide, per sq ft, each, apiece', 'a piece, pro stück, pro kg, pro kilogramm, pro meter, je stück, das stück, la pièce, pièce, par pièce', "le mètre, l'unité, l'une, l'un, cad, cadauno, al pezzo, l'uno, l'una, al metro, cada uno, cada una, c/u", 'por unidad, la unidad, per stuk, het stuk, per paar')).source}))`,
  'u',
);
export const includesShippingAfter = after(
  listOf(
    'inc postage, inc. postage, incl postage, incl. postage, including postage, incl shipping, incl. shipping',
    'inc shipping, including shipping, including delivery, shipped, posted, delivered, free postage',
    'free shipping, free delivery, with free shipping, postage included, shipping included, inkl. versand',
    'inkl versand, inklusive versand, incl. versand, incl versand, versandkostenfrei, kostenloser versand',
    'versand inklusive, inkl. porto, inkl porto, fdpin, fdp in, fdp inclus, frais de port inclus',
    'frais de port compris, port compris, port inclus, livraison gratuite, livraison offerte, spedizione inclusa',
    'spedizione compresa, spedizione gratuita, spedita, spedito, envío incluido, gastos de envío incluidos',
    'envío gratis, inclusief verzending, incl. verzendkosten, incl verzenden, inclusief verzendkosten',
    'incl. verzending, gratis verzending, 送料込み, 送料込, 送料無料',
  ),
);

/** Words that make a number without a currency sign a price. */
export const priceBefore = before(
  listOf(
    'price, asking, asking price, our price, now, buy it now, current bid, starting bid, preis, vb, vhb',
    'festpreis, fp, sofort-kaufen, prix, prix demandé, prezzo, precio, prijs, vraagprijs, richtprijs, 価格, 値段',
    '現在価格, 販売価格',
  ),
);
export const priceAfter = after(listOf('vb, vhb, fp, festpreis, ono, obo, o.n.o., o.b.o., ovno'));

/** A dash alone: behind a signed amount, a number that has no sign of its own is its upper end. */
export const dashJoint = /^\s?[-–—]\s?$/u;

/** Words between two amounts that make them one range. */
export const rangeJoint = /^\s{0,2}(?:-|–|—|~|〜|to|bis|a|à|al|tot|till|until)\s{0,2}$/u;
