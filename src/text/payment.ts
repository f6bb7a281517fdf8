import { isNegated } from './clause';
import { foldWords, type Said } from './fold';
import { listOf, phraseFinder } from './phrases';

/** Ways to pay that a listing accepts. */
export type PaymentWay =
  | 'card'
  | 'cash'
  | 'bank-transfer'
  | 'cheque'
  | 'gift-card'
  | 'crypto'
  | 'instalments'
  | 'marketplace';

const find = phraseFinder<PaymentWay>({
  card: listOf(
    'credit card, credit cards, debit card, card payment, cards accepted, kreditkarte, kreditkarten, kartenzahlung, ec-karte, carte bancaire, carte de crédit, cb acceptée, carta di credito, carte di credito, carta di debito, tarjeta de crédito, tarjeta de débito, pago con tarjeta, creditcard, pinpas, pinbetaling, クレジットカード, カード払い, カード決済',
  ),
  cash: listOf(
    'cash, cash on collection, cash on delivery, cash only, bar bei abholung, barzahlung, bargeld, espèces, en liquide, contanti, in contanti, efectivo, en metálico, contant, contante betaling, 現金, 代引き, 代金引換',
  ),
  'bank-transfer': listOf(
    'bank transfer, wire transfer, überweisung, banküberweisung, vorkasse, virement, virement bancaire, bonifico, bonifico bancario, transferencia, transferencia bancaria, overschrijving, bankoverschrijving, overboeking, 銀行振込, 銀行振り込み, 振込',
  ),
  cheque: listOf(
    'cheque, check by mail, bank check, scheck, verrechnungsscheck, chèque, chèque de banque, assegno, assegno circolare, talón, 小切手',
  ),
  'gift-card': listOf(
    'gift card, gift cards, gift voucher, geschenkkarte, geschenkkarten, carte cadeau, cartes cadeaux, carta regalo, carte regalo, tarjeta regalo, tarjetas regalo, cadeaukaart, cadeaubon, ギフトカード',
  ),
  crypto: listOf(
    'crypto, cryptocurrency, bitcoin, btc, kryptowährung, krypto, cryptomonnaie, criptovaluta, criptomoneda, cryptovaluta, 仮想通貨, 暗号資産, ビットコイン',
  ),
  instalments: listOf(
    'pay in instalments, payment plan, pay monthly, layaway, ratenzahlung, in raten, finanzierung, paiement en plusieurs fois, paiement en 3 fois, en 4 fois, a rate, pagamento a rate, rateizzazione, pago a plazos, en cuotas, gespreid betalen, in termijnen, 分割払い',
  ),
  marketplace: listOf(
    'secure payment, buyer protection, payment through the site, pay through the site, sicher bezahlen, käuferschutz, paiement sécurisé, protection acheteurs, protection acheteur, pagamento sicuro, protezione acquirenti, protezione acquisti, pago seguro, protección al comprador, veilig betalen, kopersbescherming, 購入者保護, 安心決済',
  ),
});

/** Payment ways that a text accepts; refused ones ("no cheques") are left out. */
export function findPayment(text: string): Said<PaymentWay>[] {
  const folded = foldWords(text);
  return find(folded)
    .filter((hit) => !isNegated(folded.text, hit.foldedStart, hit.foldedEnd))
    .map(({ value, start, end, words }) => ({ value, start, end, words }));
}
