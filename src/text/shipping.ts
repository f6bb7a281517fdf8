import { foldWords, type Said, sourceRange } from './fold';
import { listOf, phraseFinder, phrasePattern } from './phrases';

/** How a piece gets to the buyer. */
export interface ShippingTerms {
  kind: 'free' | 'charged' | 'pickup-only' | 'pickup-possible' | 'worldwide' | 'domestic-only' | 'stated';
}

const find = phraseFinder<Exclude<ShippingTerms['kind'], 'stated'>>({
  free: listOf(
    'free shipping, free postage, free delivery, free p&p, postage included, shipping included, delivery included, inc postage, incl. shipping, versandkostenfrei, kostenloser versand, gratis versand, versand inklusive, inkl. versand, inkl versand, versand kostenlos',
    'livraison gratuite, livraison offerte, frais de port offerts, port offert, frais de port inclus, fdpin, envoi gratuit, spedizione gratuita, spedizione gratis, spedizione inclusa, spedizione compresa, envío gratis, envío gratuito, envío incluido, gastos de envío incluidos',
    'gratis verzending, gratis verzenden, inclusief verzending, verzendkosten inbegrepen, incl. verzendkosten, 送料無料, 送料込み, 送料込, 送料出品者負担',
  ),
  charged: listOf(
    'plus shipping, plus postage, plus delivery, buyer pays shipping, buyer pays postage, postage extra, shipping extra, postage not included, shipping not included, excludes shipping, zzgl. versand, zzgl versand, zuzüglich versand, plus versand, versand extra, versandkosten trägt der käufer, versand zahlt käufer',
    'frais de port en sus, hors frais de port, port en sus, frais de port à la charge, livraison en sus, spese di spedizione a carico, spedizione esclusa, più spedizione, spedizione a carico, gastos de envío aparte, envío aparte, envío no incluido, más envío, envío a cargo del comprador',
    'exclusief verzendkosten, excl. verzendkosten, excl. verzending, verzendkosten voor koper, verzending voor rekening van, 着払い, 送料別, 送料購入者負担, 送料落札者負担',
  ),
  'pickup-only': listOf(
    "collection only, pick up only, pickup only, local pickup only, cash on collection only, no shipping, no postage, nur abholung, nur selbstabholung, kein versand, nur an selbstabholer, uniquement remise en main propre, remise en main propre uniquement, pas d'envoi, remise en mains propres uniquement",
    'solo ritiro, solo ritiro a mano, solo consegna a mano, no spedizione, non spedisco, solo recogida, solo entrega en mano, no hago envíos, no envío, alleen ophalen, enkel afhalen, alleen afhalen, geen verzending, 手渡しのみ, 引き取り限定, 直接引き取り',
  ),
  'pickup-possible': listOf(
    'collection possible, pick up possible, pickup available, local pickup, collection available, can be collected, abholung möglich, selbstabholung möglich, selbstabholung, remise en main propre, remise en main propre possible, ritiro a mano, consegna a mano, ritiro possibile, entrega en mano, recogida posible, ophalen mogelijk, afhalen mogelijk, ophalen of verzenden, 手渡し可, 引き取り可',
  ),
  worldwide: listOf(
    'worldwide shipping, ships worldwide, international shipping, ship worldwide, ships internationally, weltweiter versand, versand weltweit, internationaler versand, envoi international, livraison internationale, livraison dans le monde entier, spedizione internazionale, spedizione in tutto il mondo, envío internacional, envíos a todo el mundo, wereldwijde verzending, internationale verzending, 海外発送可, 海外発送',
  ),
  'domestic-only': listOf(
    'uk only, domestic shipping only, no international shipping, does not ship abroad, ships within the country only, nur innerhalb deutschlands, nur versand innerhalb, kein auslandsversand, france uniquement, solo italia, solo en españa, solo península, alleen binnen nederland, 国内発送のみ, 日本国内のみ',
  ),
});
const stated = phrasePattern(
  listOf(
    'shipping, postage, p&p, delivery, versand, livraison, frais de port, spedizione, envío, verzending, verzendkosten, 送料, 発送, 配送',
  ),
);
const longest = 160;

/** Shipping statements of a text; a sentence that only names shipping is given whole, as `stated`. */
export function findShipping(text: string): Said<ShippingTerms>[] {
  const folded = foldWords(text);
  const found: Said<ShippingTerms>[] = find(folded).map(({ value, start, end, words }) => ({
    value: { kind: value },
    start,
    end,
    words,
  }));
  if (found.length > 0) return found;
  const first = folded.text.search(new RegExp(stated.source, 'u'));
  if (first < 0) return [];
  const from = Math.max(
    folded.text.lastIndexOf('\n', first) + 1,
    folded.text.lastIndexOf('. ', first) + 1,
    first - longest,
    0,
  );
  const rest = folded.text.slice(first, first + longest).search(/[\n]|\.\s/u);
  const to = rest < 0 ? Math.min(folded.text.length, first + longest) : first + rest;
  const start = from + (/^\s*/.exec(folded.text.slice(from, first))?.[0].length ?? 0);
  return [{ value: { kind: 'stated' }, ...sourceRange(folded, start, to) }];
}
