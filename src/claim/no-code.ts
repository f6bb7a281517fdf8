import { listOf, phraseFinder, phrasePattern, sentenceAround } from '../text';
import { type ClaimDraft, type Passage, saidIn } from './passage';

const nouns =
  'date code|datecode|date stamp|code|codes|stamp|stamps|serial number|serial|heat stamp|number|marking'.split('|');
const german = 'datumscode|date code|code|stempel|prägung|seriennummer|datumsstempel'.split('|');
const french = 'code|code date|code de date|date code|tampon|numéro de série|poinçon|marquage|numéro'.split('|');
const italian = 'codice|date code|data code|timbro|numero di serie|seriale|codice data|matricola'.split('|');
const spanish = 'código|código de fecha|date code|sello|número de serie|marca'.split('|');
const dutch = 'datumcode|code|date code|stempel|serienummer'.split('|');
const japanese = 'デートコード|刻印|シリアル|シリアルナンバー|製造番号'.split('|');
const join = (lead: string[], words: string[]) => lead.flatMap((first) => words.map((word) => `${first} ${word}`));

/** "No date code", "without a stamp" … in the seven languages. */
const missing = phraseFinder({
  'no-code': [
    ...join(
      listOf(
        "no, no visible, without, without a, without date, lacks a, has no, does not have a, doesn't have a",
        "cannot find a, can't find a, couldn't find a, can't see a, not find a, missing",
      ),
      nouns,
    ),
    ...join(listOf('kein, keine, keinen, ohne, kein sichtbarer, keinen sichtbaren'), german),
    ...join(['pas de', 'aucun', 'sans', 'pas de visible'], french),
    ...join(listOf("nessun, senza, non ha, non c'è, non presenta, privo di, priva di, manca il"), italian),
    ...join(listOf('sin, no tiene, ningún, no lleva, no hay, falta el'), spanish),
    ...join(['geen', 'zonder', 'heeft geen'], dutch),
    ...japanese.flatMap((word) => [
      `${word}なし`,
      `${word}無し`,
      `${word}はありません`,
      `${word}がありません`,
      `${word}は見当たりません`,
      `${word}が見当たりません`,
      `${word}はございません`,
      `${word}ない`,
    ]),
  ],
});
const thing = phrasePattern([...nouns, ...german, ...french, ...italian, ...spanish, ...dutch, ...japanese]);
/** A code that was there and cannot be read. */
const lost = phrasePattern(
  listOf(
    'worn off, worn away, rubbed off, rubbed away, faded, has faded, illegible, unreadable, not legible',
    'not readable, no longer legible, no longer readable, no longer visible, not visible, hard to read',
    "cannot be read, can't be read, can't read, can not be read, cannot read, gone, missing, disappeared, cut out",
    'removed, too faint, not present, not to be found, nowhere to be found, nicht lesbar, nicht zu finden, nicht auffindbar, nicht mehr lesbar, unleserlich, nicht mehr erkennbar',
    'nicht erkennbar, nicht mehr zu lesen, nicht vorhanden, fehlt, abgerieben, verblasst, nicht mehr sichtbar',
    'nicht sichtbar, schlecht lesbar, illisible, introuvable, effacé, effacée, plus lisible, pas lisible, est usé, trop usé, disparu',
    'peu lisible, non lisible, plus visible, absent, illeggibile, non leggibile, non è più leggibile, non è leggibile, non si trova, non trovo, consumato, cancellato, sbiadito',
    'non più leggibile, non si legge, scomparso, assente, poco leggibile, non visibile, ilegible, ya no se lee, no es legible, no se encuentra, borrado',
    'no legible, no se lee, no se ve, desgastado, desaparecido, no visible, poco legible, onleesbaar',
    'niet leesbaar, niet meer leesbaar, versleten, vervaagd, ontbreekt, niet zichtbaar, weggesleten',
    'niet meer zichtbaar, 消えて, 読めません, 読めない, 判読できません, 判読不能, 読み取れません, 薄れて, 確認できません, 擦れて',
  ),
);

/** Says of the seller that the piece shows no code, or none that can be read. */
export function noCodeClaims(passages: Passage[]): ClaimDraft[] {
  return passages.flatMap((from) => {
    const { text, at } = from.folded;
    const found = missing(from.folded).map((hit) => ({ start: hit.foldedStart, end: hit.foldedEnd }));
    for (const noun of text.matchAll(thing)) {
      const end = noun.index + noun[0].length;
      const clause = sentenceAround(text, noun.index, end);
      lost.lastIndex = 0;
      const state = lost.exec(text.slice(end, Math.min(clause.end, end + 48)).split(/,\s/)[0] as string);
      if (state && !/\d{2}/.test(text.slice(end, end + state.index)))
        found.push({ start: noun.index, end: end + state.index + state[0].length });
    }
    return merged(found).map(({ start, end }): ClaimDraft => {
      const [first, last] = at ? [at[start] as number, (at[end - 1] as number) + 1] : [start, end];
      return {
        kind: 'no-code',
        ...saidIn(from, { start: first, end: last, words: from.text.slice(first, last) }, 0.85),
      };
    });
  });
}

/** Overlapping ranges as one. */
function merged(ranges: { start: number; end: number }[]): { start: number; end: number }[] {
  const result: { start: number; end: number }[] = [];
  for (const range of [...ranges].sort((a, b) => a.start - b.start)) {
    const last = result[result.length - 1];
    if (last && range.start < last.end) last.end = Math.max(last.end, range.end);
    else result.push({ ...range });
  }
  return result;
}
