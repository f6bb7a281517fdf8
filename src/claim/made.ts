import type { Span } from '../span';
import {
  clauseAround,
  type FoundDate,
  isAboutAnother,
  isNegated,
  listOf,
  parseDates,
  phrasePattern,
  sentenceAround,
} from '../text';
import { isOfCompanion } from './goods';
import { isOnlyLook } from './look';
import { type ClaimDraft, foldedRange, lastEnd, type Passage, saidIn } from './passage';
import { replacedWords, restoredWords } from './replaced-words';

const any = (phrases: string[]) => phrasePattern(phrases);

const bought = any(
  listOf(
    'sample sale, outlet, in the sale, boutique, shop, store, bought, purchased, purchase, purchase date, acquired, got it, was gifted, gifted, a gift, gift in, received',
    'given to me, was given, ordered, owned since, owned it, owned this, had it, in my possession, in my collection, had it since, had this since, mine since, have had it, receipt, invoice, inherited',
    'gekauft, erworben, kauf, kaufdatum, gekauft im, geschenkt, geschenk, geerbt, rechnung, kassenbon, bestellt',
    "acheté, achetée, achat, date d'achat, acquis, acquise, offert, offerte, reçu, reçue, facture, héritage",
    'comprata, comprato, acquistata, acquistato, acquisto, regalata, regalato, ricevuta, ricevuto, scontrino',
    'ereditata, comprado, comprada, adquirido, adquirida, compra, regalado, regalada, regalo, factura, lo compré',
    'la compré, compré, gekocht, aangeschaft, aankoop, gekregen, aankoopbon, cadeau, 購入, 買った, 買いました, 頂いた, いただいた',
    'プレゼント',
  ),
);
/** Dates beside these words are of something else: the house, the account, a repair, the page. */
const elsewhere = any([
  ...replacedWords,
  ...restoredWords,
  ...listOf(
    'member since, joined, seller since, account, established, founded, founding, est, since, heritage, house of',
    'posted, listed, updated, copyright, ©, serviced, service, repaired, restored, refurbished, cleaned',
    'conditioned, last used, last worn, exhibited, exhibition, catalogue, introduced, launched, first released',
    'discontinued, reissue of, shipping, dispatch, holiday, back on, until, warranty, guarantee, film, song, born',
    'mitglied seit, gegründet, gründung, seit, repariert, restauriert, gereinigt, eingestellt am, eingeführt',
    'urlaub, garantie bis, membre depuis, fondée, fondé, depuis, réparé, réparée, restauré, restaurée, publié',
    'mise en ligne, vacances, lancé, lancée, membro dal, fondata, fondato, dal, riparata, restaurata, pubblicato',
    'lanciata, miembro desde, fundada, fundado, desde, reparado, restaurado, publicado, lanzado, lid sinds',
    'opgericht, sinds, gerepareerd, geplaatst, vakantie, 創業, 設立, 修理, 発売, 登録, 掲載',
  ),
]);
/** "In 2018 vervangen": said of the year of a repair, behind it. */
const mended = any([...replacedWords, ...restoredWords]);
const made = any(
  listOf(
    'bag of, satchel of, tote of, handbag of, piece of, example of, edition of, wallet of, briefcase of, made, made in, manufactured, produced, production, crafted, dated, dates, dating, date code, date, year',
    'year of manufacture, circa, era, vintage, from, from the, late, early, original, model year, stamped',
    'hergestellt, produziert, gefertigt, baujahr, bj, bj., herstellungsjahr, jahrgang, produktionsjahr, aus',
    'aus dem jahr, aus den, stammt, von, jahr, fabriqué, fabriquée, produit, année, date de, datant, des, de',
    "fabrication, de l'année, millésime, confectionné, prodotta, prodotto, realizzata, realizzato, anno, del",
    'degli, anni, risale, fabbricata, datata, hecho, hecha, fabricado, fabricada, año, del año, de los, data de',
    'data del, producido, gemaakt, geproduceerd, bouwjaar, vervaardigd, uit, uit de, jaar, van, stamt, dateert',
    '製造, 年製, 製, 年代, 年式, 作られ',
  ),
);
const age = any(listOf('years ago, jahren, ans, anni fa, hace, jaar geleden, 年前'));

/** "My daughter is 12 years old" is no age of a bag. */
const people = any(
  listOf(
    "i am, i'm, daughter, son, granddaughter, company, business, shop is, brand is, house is, ich bin, tochter, sohn, firma, je suis, j'ai, ma fille, mon fils, maison, sono, figlia, figlio, ditta, soy, hija, hijo, empresa, ik ben, dochter, zoon, bedrijf, experience, erfahrung",
  ),
);

/** "Made in USA, 2002": a date that opens its clause is led by the clause before it. */
function leadStart(text: string, clauseStart: number, start: number): number {
  if (text.slice(clauseStart, start).trim() !== '' || !/,\s{1,2}$/.test(text.slice(clauseStart - 3, clauseStart + 1)))
    return clauseStart;
  return clauseAround(text, clauseStart - 2, clauseStart - 2).start;
}

/** What the date is said of: the making, the purchase, or neither (null). */
function subjectOf(date: FoundDate, from: Passage): { kind: 'made' | 'bought'; confidence: number } | null {
  const { text } = from.folded;
  const [start, end] = foldedRange(from, date);
  if (date.form === 'relative' || date.form === 'without-year' || isAboutAnother(text, start, end)) return null;
  if (isOfCompanion(text, start, end)) return null;
  const clause = clauseAround(text, start, end);
  const before = text.slice(Math.max(leadStart(text, clause.start, start), start - 60), start);
  const after = text.slice(end, Math.min(clause.end, end + 40));
  if (isNegated(text, start, end) || (date.form === 'age' && lastEnd(people, before) >= 0)) return null;
  const words = { bought: lastEnd(bought, before), made: lastEnd(made, before), elsewhere: lastEnd(elsewhere, before) };
  // The nearest word before the date decides: "made in 1994, bought in 2010".
  if (
    words.bought >= 0 &&
    words.bought >= words.elsewhere &&
    !/(?:made|hergestellt|fabriqu\w*|prodott\w*|fabricad\w*|gemaakt)[^,]{0,12}$/u.test(before)
  )
    return { kind: 'bought', confidence: 0.85 };
  if (lastEnd(bought, after) >= 0 && lastEnd(made, before.slice(-12)) < 0) return { kind: 'bought', confidence: 0.8 };
  if (lastEnd(mended, after) >= 0 && lastEnd(made, before.slice(-12)) < 0) return null;
  if (words.elsewhere >= 0 && words.elsewhere >= words.made && !isCoarse(date)) return null;
  if (words.elsewhere >= 0 && /(?:since|seit|depuis|dal|desde|sinds)\s/.test(before.slice(-12))) return null;
  if (lastEnd(age, after) >= 0 || isOnlyLook(text, start, end)) return null;
  if (isCoarse(date) || date.span.about) return { kind: 'made', confidence: date.ambiguous ? 0.5 : 0.85 };
  if (words.made >= 0 || /^\s?(?:年製|製|made|model(?!\s?\d)|production|hergestellt|製造)/u.test(after))
    return { kind: 'made', confidence: 0.85 };
  if (from.field === 'title' && date.form === 'year') return { kind: 'made', confidence: 0.7 };
  const sentence = sentenceAround(text, start, end);
  const alone =
    text.slice(sentence.start, start).trim() === '' && /^\s?(?:[\p{L}]|[,.]|$)/u.test(text.slice(end, sentence.end));
  return alone && (date.form === 'year' || date.form === 'range') ? { kind: 'made', confidence: 0.6 } : null;
}

const isCoarse = (date: FoundDate) =>
  date.form === 'age' ||
  date.form === 'decade' ||
  date.form === 'era' ||
  (date.form === 'range' && date.span.precision === 'range');

/** "Owned since 1994": bought in that year, not at any time after it. */
const dayOfPurchase = (span: Span): Span =>
  span.from !== null && span.to === null ? { ...span, to: `${span.from.slice(0, 4)}-12-31` } : span;

/** Claims of when the piece was made, and of when it was bought (which bounds the making from above only). */
export function dateClaims(passages: Passage[], readAt: string): ClaimDraft[] {
  return passages.flatMap((from) =>
    parseDates(from.text, { language: from.language, now: readAt }).flatMap((date): ClaimDraft[] => {
      const subject = subjectOf(date, from);
      if (!subject) return [];
      return [
        {
          kind: subject.kind,
          span: subject.kind === 'bought' ? dayOfPurchase(date.span) : date.span,
          ...saidIn(from, date, subject.confidence),
        },
      ];
    }),
  );
}
