import { accessoryWords, type Hit, phrasePattern, sentenceAround, wordsOf } from '../text';
import type { Passage } from './passage';

/*
 * Where a maker's name stands for something else than the piece: what fits inside it, what comes with it, what it is
 * compared with, and lists of words to be found by. Patterns over folded text; common practice, no source. Whatever is
 * in doubt counts as something else: a maker that is not said plainly judges nothing.
 */

/** "my Ondrasse wallet"; a possessive right before the name, with one or two words between. */
const possessive =
  /(?<!\p{L})(?:my|mine|your|his|her|our|their|mein(?:e[nmr]?)?|dein(?:e[nmr]?)?|ihr(?:e[nmr]?)?|unser(?:e[nmr]?)?|mon|ma|mes|ton|ta|tes|votre|vos|notre|mio|mia|miei|mie|tuo|tua|suo|sua|mi|mis|tu|tus|su|sus|mijn|jouw|je|uw|onze|ons)\s(?:\p{L}{1,20}\s){0,2}$/u;
/** In a sentence that offers something, "my Ondrasse bag" is the piece. */
const offers =
  /(?<!\p{L})(?:sell|selling|sale|sold by|verkauf\p{L}*|abzugeben|trenne|vend[sro]?|vends|vente|vendre|vendo|vendesi|cedo|me separe|je cede|vendita|venta|verkoop|te koop|part(?:ing)? with|let(?:ting)? go|rehom\p{L}*|offer(?:ing)?)(?!\p{L})/u;

const before = new RegExp(
  `(?<!\\p{L})(?:${[
    // What has room in the piece, and what goes with it.
    'fits?|fitting|holds?|has held|room for|space for|big enough for|next to|beside|alongside|(?:together|along) with',
    '(?:comes?|came|sold|bundled?|goes|pairs?|paired|matches|worn) (?:in |with )|includ(?:es?|ed|ing)|plus an?',
    'passt|passen|neben|zusammen mit|samt|inklusive|inkl|dazu(?: kommt)?|mit dabei',
    'contient|rentrent?|vendu\\p{L}* avec|livre\\p{L}* avec|accompagne\\p{L}*|contiene|ci sta|ci stanno|insieme a|vendut\\p{L} con',
    'cabe|caben|junto (?:a|con)|vendid\\p{L} con|incluye|past|passen|samen met|verkocht met|inclusief',
    // What it is compared with.
    'than|better than|(?:as|so) \\p{L}{2,15} as|quality of|size of|rivals?|alternative to|instead of|fans? of|lovers? of|you (?:love|like)',
    'reminds?(?: \\p{L}{2,4})? of|think of|vibes? of|swap|swaps|trade for|exchange for',
    '\\p{L}{2,15}er als|genauso \\p{L}{2,15} wie|alternative zu|tausche?n?|erinnert an',
    '(?:plus|moins|aussi) \\p{L}{2,15} que|alternative a|echange contre|fait penser a',
    '(?:piu|meno) \\p{L}{2,15} (?:di|che|della|del)|scambio|(?:mas|menos|tan) \\p{L}{2,15} (?:que|como)|cambio por',
    '\\p{L}{2,15}er dan|net zo \\p{L}{2,15} als|ruil\\p{L}*',
    // Other pieces of the seller.
    '(?:see|check(?: out)?|visit|browse) my|more|other(?: bags)?|listings?|also (?:have|sell|list)\\p{L}*',
  ].join('|')})(?!\\p{L})[^.!?;\\n]{0,40}$`,
  'u',
);
/** "like an Ondrasse", right before the name. */
const likened =
  /(?<!\p{L})(?:like|likewise|as with|wie|comme|come|como|zoals|als)\s(?:(?:an?|the|ein(?:e[nmrs]?)?|une?|un[ao]|il|la|le|el|een|de|het)\s)?$/u;
const after =
  /^[\s-]{0,2}(?:\p{L}{2,20}\s){0,3}(?:fits?|would fit|will fit|goes in|passt|passen|reinpasst|hinein|rentrent?|tient dedans|entra|ci sta|cabe|caben|past erin|入る|入り)(?!\p{L}{3})/u;

const thing = phrasePattern([...wordsOf('small-thing'), ...accessoryWords], 'u').source;
const thingAfter = new RegExp(`^[\\s-]{1,2}(?:\\p{L}{2,15}\\s){0,1}(${thing})`, 'u');
const thingBefore = new RegExp(`(${thing})\\s(?:(?:de|di|da|von|van|by|from|of|par)\\s)?$`, 'u');

const tagCue =
  /(?<!\p{L})(?:tags?|key ?words?|search(?: terms?| tags?| words?)?|hashtags?|suchbegriffe|suchworte|stichworte|schlagworte|mots[- ]cles|parole chiave|palabras clave|etiquetas|zoekwoorden|trefwoorden|zoektermen|タグ|キーワード|検索用?)\s?[:：=-]/u;
/** From so many short items on a line of names is a list to be found by. */
const fewestTags = 5;
const longestLine = 400;

/** Whether a name at this place of a text is said of another thing, or only stands in a list of words. */
export function isOfAnotherThing(from: Passage, hit: Hit<string>, title: string): boolean {
  const { text } = from.folded;
  const { foldedStart: start, foldedEnd: end } = hit;
  const sentence = sentenceAround(text, start, end);
  const [ahead, behind] = [text.slice(sentence.start, start), text.slice(end, sentence.end)];
  if (likened.test(ahead) || before.test(ahead.slice(-100)) || after.test(behind)) return true;
  if (possessive.test(ahead.slice(-60)) && !offers.test(text.slice(sentence.start, sentence.end))) return true;
  if (text[start - 1] === '#' || isTag(text, start, end, from.field === 'title')) return true;
  if (from.field === 'title') return false;
  const named = thingAfter.exec(behind)?.[1] ?? thingBefore.exec(ahead.slice(-60))?.[1];
  return named !== undefined && !title.includes(named);
}

function isTag(text: string, start: number, end: number, inTitle: boolean): boolean {
  // The line, as far as is looked at: a text without line ends is not searched to its ends for every name in it.
  const ahead = text.slice(Math.max(0, start - longestLine), start);
  const behind = text.slice(end, end + longestLine);
  const lead = ahead.slice(ahead.lastIndexOf('\n') + 1);
  const [rest = ''] = behind.split('\n', 1);
  if (tagCue.test(lead)) return true;
  if (inTitle) return false;
  const name = text.slice(start, end);
  const items = `${lead}${name}${rest}`.split(/[,;|/#·•、]/).map((item) => item.trim());
  const short = items.filter((item) => item.split(' ').length <= 3).length;
  return items.length >= fewestTags && short >= items.length * 0.8 && items.indexOf(name) > 0;
}
