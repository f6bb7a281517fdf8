import { foldWords } from '../../text';
import { tellingFinder } from '../words';

/** What stands before a material and is none of it: "they were of", "made of", "des modèles en", "solche aus". */
const leading =
  /^\s{0,80}(?:(?:besteht|bestand|bestehen|bestanden|ist|war|sind|waren|zijn|werden|is) (?:es|er|sie|ze|het|hij)|(?:it|they|sie|es|ze|het|elle|elles|ils?) (?:was|were|is|are|war|waren|ist|sind|zijn|était|étaient|est|sont)|(?:ones|those) (?:of|in)|solche (?:aus|in)|welche (?:aus|in)|ceux (?:en|de)|celles (?:en|de)|quell[ie] (?:in|di)|l[oa]s de|die van|we used|(?:verwendeten|benutzten|nahmen) wir|wir (?:verwendeten|benutzten)|nous utilisions|on utilisait|si usava|usavamo|usábamos|se usaba|gebruikten (?:we|wij)|(?:they |it )?(?:were|was|are|is) all(?: made)? of|all(?: made)? of|mit|with|an?|eine[mr]|une|una|has had|stat[aoei] (?:di|in)|été (?:en|de)|sido de|been (?:of|in)|been|geweest van|made of|gemaakt van|ze|sie|they|van|aus|di|de|en|of|had|in|は)(?:\s|(?<=は))/iu;
const ofUse = tellingFinder('time-of-use');
const nothingOf = tellingFinder('no-material');

/** "De la moire", "du coton": some of it. */
const partitive = /^\s{0,8}(?:de la |de l['’]|du |della |dello |dell['’]|del )(?=\p{Ll})/u;
/** "1975年までがレーヨン": the particle belongs to what stands before it. */
const particles = /^\s{0,80}(?:が|を|に|も)(?=[\p{Script=Katakana}\p{Script=Han}])/u;
/** "…とのこと", "…だそうです": that it is said so. */
const hearsay =
  /(?:とのこと(?:です)?|だそうです|らしいです|のようです|です|でした|だった|である|であった|だ)[。\s]{0,3}$/u;
/** "Cream suede on bags made", "nylon on later ones": the pieces that it is said of. */
const onPieces =
  /\s(?:on|in|for|bei|auf|sur|pour|sulle|nelle|per|en|bij|op)\s(?:(?:the|all|most|den|allen|les|le|los|las|de|alle|tous les)\s)?(?:(?:earlier|later|early|older|newer|frühen|späteren|älteren|latere|vroege)\s)?(?:bags|ones|pieces|models|examples|those|taschen|stücken|modellen|sacs|modèles|pièces|borse|modelli|bolsos|modelos|piezas|tassen|exemplaren)(?!\p{L}).{0,80}$/iu;
const hanging = /\s(?:on|for|bei|sur|pour|bij|op|sulle|per)$/iu;

/** The words of a material without what leads to it, and without "used" behind it. */
export function plainMaterial(text: string): string {
  let is = text.replace(/^\s{0,80}(?:and|und|et|ed?|y|en)\s{1,80}(?=\p{L})/u, '');
  is = is.replace(partitive, '').replace(particles, '').replace(hearsay, '').replace(onPieces, '');
  for (let step = 0; step < 4 && leading.test(is); step += 1) is = is.replace(leading, '');
  is = is
    .replace(/[\s,.;:]{1,80}$/u, '')
    .replace(hanging, '')
    .replace(/\s(?:geweest|gewesen|été|stat[aoie])$/iu, '');
  const last = ofUse(foldWords(is)).at(-1);
  if (last && last.start > 0 && last.end === is.length) is = is.slice(0, last.start);
  const adverb = nothingOf(foldWords(is))[0];
  // "Übrigens aus Messing".
  if (adverb?.start === 0 && adverb.end < is.length) return plainMaterial(is.slice(adverb.end));
  const empty = nothingOf(foldWords(is));
  // "Only", "for a long time": words that tell of no material.
  if (empty.some(({ start, end }) => start === 0 && end === is.length)) return '';
  return is.replace(/^[\s,:は·•|]{1,80}|[\s,.;:·•|]{1,80}$/gu, '');
}
