import type { EachLanguage } from './each-language';

/*
 * What stands beside an amount. Where an amount follows, the end of a longer phrase is enough ("ab" also stands for "schon
 * ab").
 */

export const postage: EachLanguage = [
  'shipping, shipping cost*, postage, p&p, p & p, p+p, delivery, posting, sending, can post, will post, post it, can send, send it',
  'livraison, frais de port, frais de livraison, envoi, port, fdp, envoyer, expédition',
  'versand, versandkosten, porto, lieferung, schicke, schicken, verschicke, verschicken, versende',
  'spedizione, spese di spedizione, consegna, sped, sped., spedisco, spedire',
  'envío, gastos de envío, lo mando, la mando, enviar',
  'verzendkosten, verzending, verzenden, porti, versturen, verstuur, opsturen',
  '送料, 配送料, 送料は別途, 送料別途, 送料は',
];

export const forPostage: EachLanguage = [
  'for shipping, for postage, for delivery, to ship, to post, post and packing, postage and packing',
  'de port, de frais de port, de livraison',
  'für versand, für den versand',
  'di spedizione, per la spedizione',
  'de envío, de gastos de envío',
  'voor verzending',
  'の送料',
];

export const freePostage: EachLanguage = [
  'free shipping, free delivery, free postage, ships free',
  'livraison offerte, livraison gratuite',
  'versandkostenfrei, kostenloser versand, gratis versand',
  'spedizione gratuita',
  'envío gratis',
  'gratis verzending, gratis verzonden',
  '送料無料',
];

export const withPostage: EachLanguage = [
  'inc postage, inc. postage, incl postage, incl. postage, including postage, incl shipping, incl. shipping, inc shipping, including shipping, including delivery, shipped, posted, delivered, with free shipping, postage included, shipping included',
  'fdpin, fdp in, fdp inclus, frais de port inclus, frais de port compris, port compris, port inclus',
  'inkl. versand, inkl versand, inklusive versand, incl. versand, incl versand, versand inklusive, inkl. porto, inkl porto',
  'spedizione inclusa, spedizione compresa, spedita, spedito',
  'envío incluido, gastos de envío incluidos',
  'inclusief verzending, incl. verzendkosten, incl verzenden, inclusief verzendkosten, incl. verzending',
  '送料込み, 送料込',
];

export const was: EachLanguage = [
  'was, were, originally, original price, orig, orig., regular price, reg., old price, before, usual price, instead of, down from, reduced from',
  "au lieu de, prix d'origine, avant, prix initial, valeur",
  'statt, anstatt, vorher, früher, ehemals, alter preis, ursprünglich, originalpreis',
  'invece di, anziché, prezzo originale, prezzo pieno, prima, era, valore, al posto di',
  'antes, en lugar de, precio original, precio anterior, en vez de, valorado en',
  'oorspronkelijk, was eerst, van, in plaats van, vraagprijs was',
  '通常価格, 参考価格, 元値, 元の価格',
];

/** What the piece cost when it was new, or the seller when they bought it: no price that was cut. */
export const cost: EachLanguage = [
  'rrp, msrp, retail, retails at, retails for, retail price, retailed at, retailed for, new price, list price, paid, bought for, new for, cost new, new cost, cost me',
  "prix neuf, prix d'achat, neuf, acheté, payé, achetée, prix boutique, valeur neuf, coûtait",
  'uvp, neupreis, np, np., np war, np ca., neupreis war, neupreis lag bei, neupreis ca., ladenpreis, bezahlt, gekauft für, kostete neu, hat neu, neu gekostet',
  'prezzo di listino, listino, pagata, pagato, costava, prezzo da nuova, prezzo nuovo',
  'pvp, pvr, costó, comprado por, costaba, me costó, precio de tienda, precio nuevo',
  'adviesprijs, nieuwprijs, winkelprijs, aankoopprijs, nieuw gekost, kostte, np, betaald',
  '定価, 購入価格, 新品価格, 購入時',
];

/** What an auction house reckons with. */
export const estimate: EachLanguage = [
  'estimate, estimated, estimated at, est, est., guide price',
  'estimation, estimé, estimé à, estimée à, estimé entre, estimée entre',
  'schätzpreis, schätzwert, taxe, schätzung, geschätzt auf',
  'stima, stimato, stimata, valutazione',
  'estimación, precio estimado, valor estimado, estimado en',
  'schatting, geschat, richtprijs veiling',
  '予想落札価格, 評価額, 見積価格',
];

export const whenNew: EachLanguage = [
  'new, retail, rrp, when new, in shops, in the shop',
  'neuf, neuve, prix neuf',
  'neu, uvp, neupreis',
  'da nuova, nuovo',
  'de nuevo, nuevo',
  'nieuw',
  'で購入',
];

export const from: EachLanguage = [
  'from, starting at, starts at, as low as',
  'dès, apd, à pd, de',
  'ab, von',
  'da',
  'desde, a partir de',
  'vanaf',
  '最低',
];

export const andUp: EachLanguage = [
  'and up, upwards, onwards',
  'et plus',
  'aufwärts',
  'e oltre',
  'en adelante',
  'en hoger',
  'から, より',
];

export const saving: EachLanguage = [
  'save, saving, savings, discount of, off, coupon, voucher, reduced by',
  'économisez, remise de, réduction de',
  'rabatt, rabatt von, ersparnis, spare, sparen sie, gespart, reduziert um',
  'risparmi, sconto di',
  'ahorra, descuento de',
  'korting, bespaar, je bespaart',
  '割引, クーポン',
];

export const off: EachLanguage = [
  'off, discount, cheaper',
  'de remise, de réduction',
  'rabatt, gespart, günstiger',
  'di sconto',
  'de descuento',
  'korting',
  '引き, オフ, 割引',
];

export const orders: EachLanguage = [
  'free returns, orders, order value, spend, purchases',
  'commandes, commande, achats, achat',
  'bestellwert, mindestbestellwert, bestellungen, einkauf',
  'ordini, acquisti, ordine minimo',
  'pedidos, compras, pedido mínimo',
  'bestellingen',
  'ご注文金額',
];

export const over: EachLanguage = [
  'over, above, from, of, on',
  'dès, à partir de, plus de',
  'ab, über',
  'oltre, da, sopra',
  'desde, a partir de, más de',
  'vanaf, boven',
  '合計',
];

export const between: EachLanguage = ['between', 'entre', 'zwischen', 'tra, fra', 'entre', 'tussen', '価格帯'];

export const instalments: EachLanguage = [
  '# instalments of, # installments of, # interest free instalments of, payments of, monthly, per month',
  '# fois, mensualités de',
  '# raten à, # raten von, # raten zu, # monatsraten à, rate, monatlich',
  '# rate da',
  '# cuotas de, # plazos de',
  '# termijnen van',
  '分割',
];

export const monthly: EachLanguage = [
  'mo, month, per month, a month, monthly',
  'mois, par mois',
  'monat, pro monat, im monat, monatlich',
  'mese, al mese',
  'mes, al mes',
  'maand, per maand',
  '×# 回, 回払い',
];

export const each: EachLanguage = [
  'per item, per piece, per kg, per m, per metre, per meter, per pair, per hide, per sq ft, per can, per tin, per pack, per packet, per box, per bottle, per jar, per tube, per set, per unit, per # ml, per # g, each, apiece, a piece',
  "la pièce, pièce, par pièce, la boîte, par boîte, le pot, par pot, par lot, le flacon, le mètre, l'unité, l'une, l'un",
  'pro stück, pro kg, pro kilogramm, pro meter, pro dose, pro packung, pro flasche, pro tube, pro set, pro paar, pro # ml, pro # g, je stück, je dose, je packung, das stück, die dose',
  "cad, cadauno, al pezzo, a confezione, al barattolo, la confezione, l'uno, l'una, al metro",
  'cada uno, cada una, c/u, por unidad, por lata, por bote, por caja, por paquete, la unidad, la lata',
  'per stuk, per blik, per blikje, per doos, per pak, per pot, per fles, per set, het stuk, per paar',
  'につき, あたり',
];

/** Beside an amount to which a tax is added still. */
export const beforeTax: EachLanguage = [
  'ex tax, excl tax, excl. tax, excluding tax, before tax, without tax, ex vat, excl vat, excl. vat, excluding vat, plus vat, + vat, net',
  'ht, h.t., hors taxe*, hors tva',
  'ohne mwst, zzgl. mwst, zzgl. ust, exkl. mwst, netto, nettopreis',
  'iva esclusa, più iva, + iva, senza iva',
  'sin iva, más iva, iva no incluido, + iva, sin impuestos',
  'excl. btw, ex btw, exclusief btw, zonder btw',
  '税抜, 税別',
];

export const price: EachLanguage = [
  'price, asking, now, current bid, starting bid',
  'prix, prix demandé',
  'preis, vb, vhb, festpreis, fp, sofort-kaufen',
  'prezzo',
  'precio',
  'prijs, vraagprijs, richtprijs',
  '価格, 値段, 現在価格, 販売価格',
];

export const negotiable: EachLanguage = [
  'ono, obo, o.n.o., o.b.o., ovno',
  'à débattre',
  'vb, vhb, fp, festpreis',
  'trattabili',
  'negociable',
  'vraagprijs',
  '即決',
];

/** Between postage and its sum: where to, how, "costs". */
export const postageWay: EachLanguage = [
  'to, in, for, within, with, via, per, cost, costs, is, are, of, from, it, would be, will be, about, around',
  'vers, par, de, pour, possible, à, contre',
  'nach, innerhalb, mit, kosten, von, ab, für, gern, gerne, per, kostet',
  'a, di, con',
  'en, con, por',
  'naar, met, voor, kost, kan',
  'への',
];
/** "Zwischen 180 und 240 €": both are one range. */
export const and: EachLanguage = ['and', 'et', 'und', 'e', 'y', 'en', 'と'];
