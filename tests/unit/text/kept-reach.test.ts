import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { gapTurnsOf } from '../../turning';
import { readers } from './readers';

/*
 * How far words reach: between a word and what it is said of stands more and more, and kept is where the answer turns.
 * Where that changes on purpose, `npm test -- unit/text/kept --update` writes it anew.
 */

/** By reader; … grows. Before a bar a language other than English. */
const lines: Record<string, string> = {
  price: `was…€100|€100…was|save…€20|€20…off|from…€100|€100…and up|postage…€5|€5…postage|free postage over…€50|orders over €50…ship free
    |price…100|100…price|weight…0.66 pounds|€180…240|€180…–€240|between €40…and €60|between…€40 and €60|€40…/ €50|3 x…€50|€50…monthly
    |€5…each|€5 /…piece|€100…including postage|€…100|100…€|USD…$100|1…299 €|28…50 €|€ 28…50|35€…99|12…万円|1万…5千円|5…%|Carryall 30…450 €
    |A Carryall…30 450 €|€100. Was…€150|€310…RRP €980|€100…. Postage €5|bid…€100|de:Preis…100,00|de:UVP…€ 100|de:100 €…VB|fr:au lieu de…100 €`,
  measure: `width…30 cm|30 cm…wide|30…cm|30 x…20 cm|30 x 20…x 10 cm|W…30 cm|30 cm…(w)|about…30 cm wide|30…to 35 cm|30 to…35 cm|1 m…20|30 in…brown
    |cm…30 x 20|Dimensions…30 x 20 x 10|de:Maße…30 x 20 x 10|L x W x H…30 x 20 x 10 cm|30 x 20 x 10 cm…(L x W x H)|strap drop…22 cm|12"…(30 cm) wide
    |17D…cm|21 hoog…cm|#…12 cm|width of the bag…30 cm|30 cm in…width|30 cm…, 20 cm high|L…30 H 21 P 17|screen…30 cm|box…30 cm|30 cm…box`,
  date: `about…1994|1994…or so|before…1994|after…1994|until…1994|1994…or later|1988…to 1994|1988 to…1994|1988…94|1970s…80s|early…1980s|the…80s|early to…mid 80s
    |3 April…2005|April…2005|3…April 2005|Monday…3 April 2005|April 3,…2005|20 years…old|20…years old|over…20 years old|two months…ago|not before…1990
    |2005-04-03…23:30-05:00|2005-04-03 23:30…-05:00|3 April…|1994…€|#…1994|1994…x 20|in the…sixties|de:vor…1994|de:Anfang der…80er|fr:annees…80|ja:昭和…60年
    |ja:1994年…3月|Jeu…15:12`,
  rating: `4.5…out of 5|4.5 out…of 5|4.5 out of 5…(12 ratings)|4.5 out of 5 (…12)|98%…positive|rating…98%|rating:…4.5|4.5…stars|★…4.5|12 ratings…4.5 out of 5
    |4.5 out of 5, 12…ratings|98% positive…12 ratings`,
  condition: `condition…good|new…bag|bag…new|like…new|not…good condition|good…condition|new…box|box…new|brand…new|condition:…new|the strap is…new|new…strap
    |similar to a…new one|used…once`,
  return: `returns accepted…within 14 days|14 days…returns accepted|returns:…no|returns…: 14 days|no…returns accepted|returns accepted 14…days|returns accepted…. 14 days
    |returns accepted 2…weeks`,
  shipping: `ships from…Italy|We like it.…Ships from Italy|Ships from Italy…. More|free…postage|Ships within 2 days and then some words that go on…and on`,
  payment: `no…cheques|cheques are…accepted|not accepted:…cash`,
  member: `member since…2015|member…since 2015|member for…6 years|joined…March 2019|member since 2015…; 2012|member since, as it stands here,…2015`,
  trader: `private…seller|seller…: private|seller is…private|not a…dealer|·…private ·|private…(`,
  sales: `1,204…sold|35…items sold|sales:…35|2.5…k sales|over…500 sales`,
  watchers: `12…watchers|watchers:…12|12 people…are watching`,
  bids: `12…bids|bids:…12|no…bids`,
  availability: `not…sold|sold…by|12…sold|sold…out|no longer…available|has not yet been…sold|sold…separately|reserved…for you`,
  code: `item no.…AB-12345|ref:…7781|SKU…00-99-AB|serial is…44512|刻印は…KV0915|item…no. AB-12345`,
  polarity: `not…leather|no…leather|protects from…leather|leather…has it none|nothing…leather|hardly any…leather|no code because it is…leather|leather…habe ich keine
    |whether it is…leather|is it…leather?|similar to the…leather|leather,…not new|not only…leather|leather…but not old|not old but…leather|レザー…ではない|レザー…かどうか|without…the leather`,
};

function polarity(said: string): string {
  const start = said.search(/leather|レザー/);
  const end = start + (said.startsWith('leather', start) ? 7 : 3);
  const folded = text.foldWords(said).text;
  const around = text.clauseAround(folded, start, end);
  const sentence = text.sentenceAround(folded, start, end);
  return [
    text.polarityOf(folded, start, end),
    text.isNegated(folded, start, end) && 'negated',
    text.isLeftOpen(folded, start, end) && 'open',
    text.isAboutAnother(folded, start, end) && 'of another',
    around.start === 0 && 'from its start',
    around.end === folded.length && 'to its end',
    sentence.start === 0 && 'sentence',
    sentence.end === folded.length && 'to the end of it',
  ]
    .filter(Boolean)
    .join(', ');
}

/** What was found, with the gap told as such, and with its place counted without the gap. */
function read(name: string, said: string, gap: string, language: string): string {
  if (name === 'polarity') return polarity(said);
  const found = readers[name]!(said, language).map(({ start, end, ...more }) => {
    const whole = said.slice(start, end).replace(gap.trim() === '' ? /\s+/ : gap.trim(), '…');
    const { words: _, measure, ...rest } = more as { words?: string; measure?: object };
    return `“${whole}” ${JSON.stringify(measure ? { ...measure, words: '' } : rest)}`;
  });
  return found.join('; ') || 'nothing';
}

it.each(Object.entries(lines))('how far words of a %s reach', async (name, all) => {
  const out = all.split(/\s*\|/).flatMap((line) => {
    const [language, sentence] = /^(?:de|fr|ja):/.test(line) ? [line.slice(0, 2), line.slice(3)] : ['en', line];
    return [
      line,
      ...gapTurnsOf(name === 'polarity' ? 170 : 66, (gap) => read(name, sentence.replace('…', gap), gap, language)),
    ];
  });
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot(`./kept/reach-${name}.txt`);
});
