import { listOf, phrasePattern } from './phrases';

/** How far a clause is followed: longer ones say nothing reliable of a word in their middle. */
const reach = 160;
const sentenceBreak = /[!?;。、\n\r|•·]|\.(?=\s|$)|,(?=\s)|\s[-–—]\s|[()[\]]/g;
const softBreak = /\s(?:but|aber|sondern|mais|ma|pero|maar|however|jedoch|although|though|while)\s/gu;
const hardBreak = /[!?;。\n\r|•·]|\.(?=\s|$)/g;

function bounds(text: string, start: number, end: number, breaks: RegExp[]): { start: number; end: number } {
  const from = Math.max(0, start - reach);
  const to = Math.min(text.length, end + reach);
  let [first, last] = [from, to];
  for (const pattern of breaks) {
    for (const match of text.slice(from, start).matchAll(pattern))
      first = Math.max(first, from + match.index + match[0].length);
    const next = text.slice(end, to).search(new RegExp(pattern.source, 'u'));
    if (next >= 0) last = Math.min(last, end + next);
  }
  return { start: first, end: last };
}

/** The clause around a range of folded text: up to a comma, bracket, "but" or the end of the sentence. */
export const clauseAround = (text: string, start: number, end: number) =>
  bounds(text, start, end, [sentenceBreak, softBreak]);

/** The sentence around a range of folded text. */
export const sentenceAround = (text: string, start: number, end: number) => bounds(text, start, end, [hardBreak]);

const negations = phrasePattern(
  listOf(
    "not, no, never, without, neither, nor, none, cannot, is not, isn't, wasn't, aren't, don't, doesn't, didn't",
    "won't, can't, haven't, hasn't, isnt, dont, doesnt, far from, free of, free from, instead of, rather than, frei von, nicht, kein, keine",
    'keinen, keinem, keiner, keinerlei, ohne, nie, niemals, weder, noch nie, statt, pas, jamais, sans, aucun',
    "aucune, ni, non, ne, n'est, plutôt que, exempt de, exempte de, mai, senza, priva di, privo di, esente da, niente, nessun, nessuna, nessuno, né, mica, libre de, nunca, sin, ningún",
    'ninguna, ninguno, jamás, tampoco, niet, geen, nooit, zonder, nimmer, vrij van',
  ),
  'gu',
);
const notNegating = phrasePattern(
  listOf(
    'not only, not just, no doubt, no problem, nicht nur, pas seulement, non solo, no solo, no sólo, niet alleen',
    'ohne zweifel, sans doute, senza dubbio, sin duda, no wonder, why not',
  ),
  'gu',
);
const negatedAfter =
  /^\s?[」』]?(?:品|製|物|もの|色|系)?(?:では|でも|は|が|も|じゃ|で|に)?(?:ない|無い|なく(?![なす])|なし|無し|ありません|ございません|ません|不可)|^\s{0,2}(?:-|:)?\s{0,2}(?:no|none|nein|non|nessuno|ninguno|nee|keine?)(?=$|[\s,.;!])/u;

/** "No code because it is old": what gives the reason is not denied. */
const reasons = /\s(?:because|weil|parce que|perche|porque|omdat)(?=\s)/gu;

/**
 * Whether the words from `start` to `end` (folded text) are denied: a negation of the seven languages at most four
 * words before them in the same clause, or a Japanese one right after.
 */
export function isNegated(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  const ahead = text.slice(clause.start, start);
  const reason = Math.max(0, ...Array.from(ahead.matchAll(reasons), ({ index }) => index));
  const before = ahead.slice(reason).replace(notNegating, (found) => ' '.repeat(found.length));
  let last = -1;
  for (const match of before.matchAll(negations)) last = match.index + match[0].length;
  if (last >= 0 && (before.slice(last).match(/[\p{L}\p{N}]+/gu) ?? []).length <= 4) return true;
  return negatedAfter.test(text.slice(end, end + 16));
}

/** Whether words are a denial by themselves: "no patina". */
export const isDenial = (words: string): boolean => words.search(negations) === 0;

const others = phrasePattern(
  listOf(
    'similar, other bags, other sellers, others like it, unlike, compared to, compared with, in comparison, same as, just like',
    'reminiscent of, as seen, own another, have another, got another, another one, other bag, same bag, sister has, friend has, also have, also selling, also sell, my other, other listing*, other items',
    'also available, matching, goes with, pairs with, not to be confused, successor, predecessor, looking for',
    'wanted, ähnlich, im gegensatz, im vergleich, anders als, vergleichbar, weitere angebote, meine anderen, meine andere, andere tasche',
    'auch noch, besitze noch, habe noch, suche, passend zu, nachfolger*, vorgänger*, semblable, contrairement, comparé, mes autres, mon autre, ma autre',
    "autres annonces, j'en ai un autre, j'en ai une autre, ne ho un altro, ne ho un'altra, tengo otro, tengo otra",
    'heb er nog, ressemble, rappelle, proche de, je vends aussi, je recherche, assorti*, simile, simili a',
    'a differenza, rispetto a, altri annunci, miei altri, mia altra, mio altro, ricorda, vendo anche, cerco, abbinat*, similar a',
    'similar al, parecido, parecida, a diferencia, comparado, otros anuncios, mis otros, mi otro, mi otra, recuerda a',
    'también vendo, busco, a juego, vergelijkbaar, in tegenstelling, lijkt op, mijn andere, andere advertenties',
    'verkoop ook, bijpassend*, gezocht, に似た, と似た, に比べ, 他の出品, 別の出品, 別のバッグ, 他のバッグ, と違い, 探して',
  ),
  'u',
);

/** Whether the clause speaks of another piece before the words at `start`: "similar to the 1990s model". */
export function isAboutAnother(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  return (
    others.test(text.slice(Math.max(clause.start, start - 60), start)) ||
    /^\s?(?:に似た|と似た|に比べ)/u.test(text.slice(end, end + 8))
  );
}
