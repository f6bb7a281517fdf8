import { isNegated } from './clause';
import { foldWords, type Said } from './fold';
import { listOf, phraseFinder } from './phrases';

/** Words for private and trading sellers in the seven languages. Common practice, no source. */
const find = phraseFinder<'private' | 'trader'>({
  private: listOf(
    'private seller, private sale, private individual, private listing, individual seller, privatverkauf, privat, privatperson, von privat, privatanbieter, privater verkauf, privater nutzer, privater verkäufer, privater anbieter, privatkauf',
    'particulier, vendeur particulier, vente entre particuliers, venditore privato, privato, vendita privata, tra privati, utente privato, vendedor particular, particular, venta entre particulares, particuliere verkoper, particuliere verkoop, particulier verkocht',
    '個人, 個人出品, 個人の出品者, 個人売買, 素人',
  ),
  trader: listOf(
    'business seller, registered business, professional seller, trade seller, dealer, registered trader, vat registered, vat number, vat no, company number, our shop, our store, registered as a business seller, limited company',
    'gewerblich, gewerblicher anbieter, gewerblicher verkäufer, gewerblicher nutzer, händler, fachhändler, ust-idnr, ust-id, umsatzsteuer-id, handelsregister, impressum, gmbh',
    'vendeur professionnel, professionnel, pro, siret, siren, numéro de tva, société, n° tva, boutique professionnelle, venditore professionale, negozio, partita iva, p.iva, p. iva, azienda, utente business, venditore commerciale',
    'vendedor profesional, profesional, tienda profesional, empresa, nif, cif, zakelijke verkoper, zakelijk, bedrijf, kvk-nummer, kvk, btw-nummer, btw nummer, handelaar, professionele verkoper',
    '法人, 業者, ショップ, 古物商, 古物商許可, 特定商取引法, 株式会社, 有限会社, ストア',
  ),
});
/** Words that are common outside seller statements: they count only after a label or alone in their line. */
const weak = new Set([
  'privat',
  'particulier',
  'privato',
  'particular',
  'pro',
  'professionnel',
  'profesional',
  'zakelijk',
  'empresa',
  'bedrijf',
  'negozio',
  'azienda',
  '個人',
  'ストア',
  'ショップ',
  'dealer',
  'société',
  '業者',
  '素人',
  'privatkauf',
]);
const label =
  /(?:seller|seller type|verkaufer|anbieter|verkauft|verkauf|vendeur|type de vendeur|venditore|vendedor|verkoper|type|status|account|konto|compte|profil|出品者|販売者)[\s::(-]{0,3}(?:ist |is |e |es |est )?$/u;

/** Private or trader statements about the seller. */
export function findTraders(text: string): Said<'private' | 'trader'>[] {
  const folded = foldWords(text);
  return find(folded).flatMap(({ value, foldedStart, foldedEnd, start, end, words }) => {
    if (isNegated(folded.text, foldedStart, foldedEnd)) return [];
    const left = folded.text.slice(Math.max(0, foldedStart - 24), foldedStart);
    const right = folded.text.slice(foldedEnd, foldedEnd + 4);
    const alone = /(?:^|[\n\r|•·(])\s{0,3}$/u.test(left) && /^\s{0,3}(?:$|[\n\r|•·)])/u.test(right);
    if (weak.has(words.toLowerCase()) && !alone && !label.test(left)) return [];
    return [{ value, start, end, words }];
  });
}
