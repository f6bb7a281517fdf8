import { foldWords } from './fold';
import { listOf, phraseFinder } from './phrases';

/** What an amount is at an auction; `ends` and `ended` stand before a time. */
export type AuctionRole = 'bid' | 'next-bid' | 'start' | 'buy-now' | 'estimate' | 'own-bid' | 'ends' | 'ended';

/** Labels of auctions in the seven languages. Common practice, no source. */
const find = phraseFinder<AuctionRole>({
  bid: listOf(
    'current bid, current price, highest bid, high bid, leading bid, latest bid, winning bid, hammer price, final bid, sold for, realised price',
    'aktuelles gebot, höchstgebot, aktuelles höchstgebot, höchstes gebot, letztes gebot, zuschlag, zuschlagspreis, endgebot',
    'enchère actuelle, offre actuelle, meilleure offre, dernière enchère, prix actuel, adjugé, adjugé à, enchère gagnante',
    'offerta attuale, offerta corrente, offerta più alta, ultima offerta, prezzo attuale, aggiudicato a, offerta vincente',
    'puja actual, oferta actual, puja más alta, última puja, precio actual, adjudicado por, puja ganadora',
    'huidig bod, hoogste bod, laatste bod, huidige prijs, winnend bod, toegewezen voor',
    '現在価格, 現在の価格, 現在の入札額, 最高入札額, 現在, 落札価格',
  ),
  'next-bid': listOf(
    'next bid, minimum bid, next minimum bid, minimum next bid, bid at least, enter, nächstes gebot, mindestgebot, nächstes mindestgebot, prochaine enchère, enchère minimum, enchère minimale, prochaine offre',
    'prossima offerta, offerta minima, rilancio minimo, próxima puja, puja mínima, volgend bod, minimumbod, minimaal bod, 次の入札額, 最低入札額',
  ),
  start: listOf(
    'starting bid, starting price, start price, opening bid, opening price, startpreis, startgebot, limit, limitpreis, ausruf, ausrufpreis, rufpreis, mise à prix, prix de départ, enchère de départ',
    "base d'asta, prezzo di partenza, prezzo base, offerta iniziale, puja inicial, precio de salida, precio inicial, startprijs, startbod, inzetprijs, 開始価格, 開始時の価格, スタート価格",
  ),
  'buy-now': listOf(
    'buy now, buy it now, buy now price, buy it now price, sofortkauf, sofort-kaufen, sofort kaufen, sofortkaufpreis, achat immédiat, achetez-le maintenant, compralo subito, compra subito, cómpralo ya, compra ya, koop nu, nu kopen, direct kopen, 即決価格, 即決',
  ),
  estimate: listOf(
    'estimate, estimated at, low estimate, high estimate, schätzpreis, schätzwert, taxe, estimation, estimé, stima, estimación, estimado, taxatie, taxatiewaarde, schatting, 評価額, 落札予想価格',
  ),
  'own-bid': listOf(
    'your maximum bid, your bid, maximum bid, dein gebot, ihr gebot, dein höchstgebot, ihr höchstgebot, maximalgebot, votre enchère, votre enchère maximale, votre offre, la tua offerta, offerta massima, tu puja, su puja, puja máxima, jouw bod, uw bod, maximumbod, あなたの入札額',
  ),
  ends: listOf(
    'ends, ending, ends on, closes, closes on, auction ends, time left, endet, endet am, auktionsende, angebotsende, ende, restzeit, fin, se termine, se termine le, fin de la vente, fin des enchères, termina, termina il, scade, scadenza, fine asta, finaliza, termina el, fin de la subasta, sluit, sluit op, eindigt, eindigt op, einde, 終了日時, 終了',
  ),
  ended: listOf(
    'ended, ended on, closed, bidding has ended, auction ended, sold on, beendet, beendet am, auktion beendet, terminé, terminée le, enchère terminée, asta terminata, terminata, terminada, subasta finalizada, afgelopen, veiling afgelopen, gesloten, 落札日',
  ),
});

/** The role that a short label names, when it says little else; null for any other words. */
export function auctionRole(label: string): AuctionRole | null {
  const plain = label.replace(/\s+/g, ' ').trim();
  if (plain === '' || plain.length > 50) return null;
  const [first] = find(plain);
  return first &&
    first.foldedEnd - first.foldedStart >= foldWords(plain).text.replace(/[\s:：()[\].*]/g, '').length * 0.6
    ? first.value
    : null;
}
