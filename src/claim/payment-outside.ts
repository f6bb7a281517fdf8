import type { Listing } from '../listing/types';
import { isNegated, listOf, phraseFinder, sentenceAround } from '../text';
import { type ClaimDraft, type Passage, saidIn, saidInData } from './passage';

/** Ways to pay or to talk outside the marketplace, in the seven languages. Common practice, no source. */
const find = phraseFinder({
  transfer: listOf(
    'bank transfer, wire transfer, money transfer, direct transfer, direct deposit, bank deposit',
    'money order, cash in the post, cash by post, überweisung, banküberweisung, vorkasse, vorab überweisen',
    'virement, virement bancaire, mandat cash, bonifico, bonifico bancario, ricarica, vaglia, transferencia',
    'transferencia bancaria, giro postal, overschrijving, bankoverschrijving, overboeking, overmaken, 銀行振込',
    '銀行振り込み, 振込のみ, 直接振込',
  ),
  voucher: listOf(
    'gift card, gift cards, gift voucher*, prepaid card, prepaid cards, geschenkkarte*, gutscheinkarte*',
    'prepaidkarte*, carte cadeau, cartes cadeaux, carte prépayée, cartes prépayées, carta regalo, carte regalo',
    'buono regalo, tarjeta regalo, tarjetas regalo, cadeaukaart*, cadeaubon*, ギフトカード, ギフト券, プリペイドカード',
  ),
  crypto: listOf(
    'crypto, cryptocurrency, bitcoin, btc, kryptowährung, krypto, cryptomonnaie, criptovaluta, criptomoneda',
    'criptomonedas, cryptovaluta, 仮想通貨, 暗号資産, ビットコイン',
  ),
  unprotected: listOf(
    'friends and family, friends & family, family and friends, family & friends, f&f, f & f, fnf',
    'as a gift payment, without buyer protection, no buyer protection, freunde und familie, freunde & familie',
    'an freunde, familie und freunde, ohne käuferschutz, entre proches, entre amis, à un proche, famille et amis',
    'amis et famille, amici e familiari, amici e parenti, familiari e amici, amigos y familiares',
    'familiares y amigos, amigos y familia, vrienden en familie, familie en vrienden, vrienden & familie, 友人・家族',
    '友達送金, 個人送金',
  ),
  direct: listOf(
    'pay me directly, pay me direct, pay directly to me, pay direct to me, payment directly to me',
    'directly to my account, pay outside, payment outside, deal outside, outside the site, outside of the site',
    'outside the app, outside the platform, outside of the platform, off the site, off site, off-site',
    'off platform, off the app, off the platform, avoid the fees, avoid fees, save the fees, save on fees',
    'skip the fees, without fees, direkt an mich, direkt bezahlen, außerhalb der plattform, außerhalb der seite',
    'ausserhalb der plattform, gebühren sparen, ohne gebühren, payer directement, paiement direct',
    'en dehors du site, hors du site, hors site, hors plateforme, en dehors de la plateforme, éviter les frais',
    'sans les frais, pagamento diretto, pagare direttamente, fuori dal sito, fuori dalla piattaforma',
    'fuori piattaforma, evitare le commissioni, senza commissioni, pago directo, pagar directamente',
    'págame directamente, fuera de la plataforma, fuera de la web, fuera de la app, evitar comisiones',
    'sin comisiones, rechtstreeks betalen, direct aan mij, buiten het platform, buiten de site, buiten de app',
    'kosten besparen, zonder kosten van de site, 直接取引, 直接お支払い, サイト外, アプリ外, 手数料なしで',
  ),
  contact: listOf(
    'text me, text me on, text me at, call me, call me on, call me at, message me on, message me at, e-mail me',
    'email me, contact me at, contact me on, contact me outside, write to me at, my number is, my phone number',
    'my email, my e-mail, ruf mich an, rufen sie mich an, meine nummer, schreib mir an, schreiben sie mir an',
    'per mail an, per e-mail an, meine e-mail, appelez-moi, appelle-moi, par sms, envoyez-moi un sms, mon numéro',
    'mon mail, mon e-mail, écrivez-moi à, contactez-moi au, contactez moi au, chiamami, chiamatemi, il mio numero',
    'scrivimi a, scrivetemi a, mandami un sms, la mia mail, contattami al, llámame, llamadme, mi número',
    'escríbeme a, mi correo, contáctame al, bel me, mijn nummer, mail me, mail naar, app me, sms me, 電話ください',
    'メールください, 直接ご連絡, 電話番号',
  ),
});
const address =
  /[\p{L}\p{N}._%+-]{1,64}(?:@|\s?\(at\)\s?|\s?\[at\]\s?)[\p{L}\p{N}-]{1,63}(?:\.|\s?\(dot\)\s?|\s?\[dot\]\s?)[\p{L}]{2,12}/gu;
const marketplaceWay =
  /(?:through|via|using|over|per|über|par|tramite|a través de|door|通して|経由)\s(?:the |die |der |das |le |la |il |el |de |het )?(?:site|app|platform|plattform|plateforme|piattaforma|plataforma|website|checkout|marketplace)/u;

/** Whether the way to pay is refused: "no bank transfer", "I do not accept crypto", or tied to the site itself. */
function isRefused(text: string, start: number, end: number, kind: string): boolean {
  if (isNegated(text, start, end)) return kind !== 'unprotected' || !/(?:without|no|ohne)/.test(text.slice(start, end));
  const sentence = sentenceAround(text, start, end);
  const whole = text.slice(sentence.start, sentence.end);
  if (
    /(?:never|don't|do not|please do not|niemals|nicht|ne .{1,20} pas|jamais|non|mai|nunca|no|niet|nooit)\s(?:[\p{L}']+\s){0,3}(?:pay|ask|ask for|deal|trade|contact|accept|zahlen|bezahlen|akzeptier\p{L}*|accepte\p{L}*|accetto|acepto|accepteer)\s(?:[\p{L}']+\s){0,4}$/u.test(
      text.slice(sentence.start, start),
    )
  )
    return true;
  return marketplaceWay.test(whole) && kind === 'transfer';
}

/** Asks to pay or to talk outside the marketplace, where a buyer has no protection. */
export function paymentOutsideClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const inText = passages.flatMap((from) => {
    const { text } = from.folded;
    const phrases = find(from.folded).filter((hit) => !isRefused(text, hit.foldedStart, hit.foldedEnd, hit.value));
    const addresses = [...from.text.matchAll(address)].map((match) => ({
      start: match.index,
      end: match.index + match[0].length,
      words: match[0],
    }));
    return [...phrases, ...addresses]
      .sort((a, b) => a.start - b.start)
      .map((hit): ClaimDraft => ({ kind: 'payment-outside', ...saidIn(from, hit, 0.8) }));
  });
  const data = listing.payment.filter((candidate) => find(candidate.value).length > 0);
  return [
    ...inText,
    ...data.map(
      (candidate): ClaimDraft => ({ kind: 'payment-outside', ...saidInData(candidate.value, candidate.confidence) }),
    ),
  ];
}
