import { isNegated } from './clause';
import { foldWords, type Said, sourceRange } from './fold';
import { listOf, phraseFinder } from './phrases';
import { Taken } from './taken';

export interface ReturnTerms {
  accepted: boolean;
  /** Days within which the piece may go back, null when not said. */
  days: number | null;
}

/** Set phrases for return terms in the seven languages. Common practice, no source. */
const find = phraseFinder({
  refused: listOf(
    'no returns, no return, no refunds, no refund, no returns or refunds, no returns or exchanges, sold as seen',
    'all sales final, all sales are final, final sale, returns not accepted, returns are not accepted',
    "non refundable, no exchanges, does not accept returns, do not accept returns, don't accept returns",
    'keine rücknahme, keine rückgabe, rücknahme ausgeschlossen, rückgabe ausgeschlossen',
    'keine garantie oder rücknahme, keine garantie und rücknahme, keine gewährleistung oder rücknahme',
    'ohne garantie und rücknahme, ohne rücknahme, umtausch ausgeschlossen, kein umtausch',
    'vom umtausch ausgeschlossen, privatverkauf keine rücknahme, ausschluss der sachmängelhaftung, pas de retour',
    'pas de retours, aucun retour, retour non accepté, retours non acceptés, ni repris ni échangé',
    "ni repris ni échangée, pas de remboursement, pas d'échange, ni retour ni échange, sans retour, no resi",
    'nessun reso, non si accettano resi, non accetto resi, reso non accettato, resi non accettati, no rimborsi',
    'no reso, senza reso, no cambi, no se aceptan devoluciones, no acepto devoluciones, sin devoluciones',
    'sin devolución, no hay devoluciones, no se admiten devoluciones, no devoluciones, no se aceptan cambios',
    'geen retour, geen retouren, geen retourneren, retour niet mogelijk, retourneren niet mogelijk',
    'geen retourrecht, geen ruiling, ruilen niet mogelijk, 返品・交換はお断り, 返品はお断り, 返品交換不可, 返品・交換はご遠慮, 返品は致しかねます, 返品はできません, 返品不可, ノークレーム, ノーリターン, 返品はお受けできません, 返品・交換不可, 返品はご遠慮',
    '返品お断り, 返金不可',
  ),
  accepted: listOf(
    'you can return, you may return, may be returned, returns accepted, returns are accepted, free returns, return policy, accepts returns, accept returns',
    'returns welcome, returns within, return within, #-day returns, # day returns, # days return, # days returns',
    '#-day return, # day return, money back, money-back guarantee, full refund, can be returned, returnable',
    'happy to accept returns, right to cancel, rückgaberecht, rückgabe möglich, rücknahme möglich, widerrufsrecht',
    'kostenlose rücksendung, rückgabe innerhalb, rückgabe akzeptiert, kann zurückgegeben werden, # tage rückgabe',
    '# tage rückgaberecht, # tage widerrufsrecht, umtausch möglich, retours acceptés, retour accepté',
    'retour possible, retours possibles, retours gratuits, retour gratuit, satisfait ou remboursé',
    'droit de rétractation, retour sous, retours sous, échange possible, resi accettati, reso accettato',
    'reso gratuito, reso gratis, resi gratuiti, reso entro, resi entro, diritto di recesso',
    'soddisfatti o rimborsati, si accettano resi, accetto resi, reso possibile, se aceptan devoluciones',
    'devoluciones aceptadas, devolución gratuita, devoluciones gratuitas, devoluciones gratis',
    'acepto devoluciones, derecho de desistimiento, devolución en, devoluciones en, se admiten devoluciones',
    'retour mogelijk, retourneren mogelijk, gratis retour, gratis retourneren, retour binnen, retourneren binnen',
    'herroepingsrecht, niet goed geld terug, retourrecht, # dagen retour, # dagen bedenktijd, bedenktijd, 返品は到着後#日以内, 到着後#日以内の返品, 返品可',
    '返品可能, 返品対応, 返品を受け付け, 返品できます, 返品受付, 返品・交換可',
  ),
});
const daysNear = /(?<!\d)(\d{1,3})[\s-]{0,2}(?:days?|tagen?|jours?|giorni|dias|dagen|日)/u;
const weeksNear = /(?<!\d)(\d{1,2})[\s-]{0,2}(?:weeks?|wochen|semaines|settimane|semanas|weken|週間)/u;

/** Days stated within the same few words. */
function daysAround(text: string, start: number, end: number): number | null {
  const near =
    text
      .slice(Math.max(0, start - 24), end + 40)
      .split(/[\n.!?;]/u)
      .find((part) => daysNear.test(part) || weeksNear.test(part)) ?? '';
  const days = daysNear.exec(near);
  const weeks = weeksNear.exec(near);
  const count = days ? Number(days[1]) : weeks ? Number(weeks[1]) * 7 : 0;
  return count > 0 ? count : null;
}

/** A field of its own: "Returns: no", "Rückgabe: 14 Tage", "返品：不可". */
const labelled =
  /(?<![\p{L}])(?:returns?|return policy|refunds?|ruckgabe|rucknahme|widerruf|umtausch|retours?|resi|reso|devoluciones|devolucion|retourneren)\s{0,2}:\s{0,2}(?:(no|none|not accepted|not possible|nein|keine?|nicht moglich|ausgeschlossen|non|pas|aucun|nessuno|non accettati|ninguna|nee|geen|niet mogelijk)|(yes|accepted|possible|ja|moglich|oui|acceptes?|possibles?|si|accettati|aceptadas?|mogelijk|\d{1,3}[\s-]{0,2}(?:days?|tage|jours?|giorni|dias|dagen)))(?![\p{L}])|返品\s?:\s?(不可|なし)|返品\s?:\s?(可)/gu;

/** Return terms said in a text. A denied "returns accepted" is a refusal; refusals hold whatever stands before them. */
export function findReturns(text: string): Said<ReturnTerms>[] {
  const folded = foldWords(text);
  const phrases = find(folded).map(({ value, foldedStart, foldedEnd }) => ({
    accepted: value === 'accepted' && !isNegated(folded.text, foldedStart, foldedEnd),
    from: foldedStart,
    to: foldedEnd,
  }));
  const fields = [...folded.text.matchAll(labelled)].map((match) => ({
    accepted: (match[1] ?? match[3]) === undefined,
    from: match.index,
    to: match.index + match[0].length,
  }));
  const taken = new Taken(folded.text.length);
  for (const phrase of phrases) taken.take(phrase.from, phrase.to);
  const alone = fields.filter((field) => !taken.overlaps(field.from, field.to));
  return [...phrases, ...alone]
    .sort((a, b) => a.from - b.from)
    .map(({ accepted, from, to }) => {
      const days = accepted ? daysAround(folded.text, from, to) : null;
      return { value: { accepted, days }, ...sourceRange(folded, from, to) };
    });
}
