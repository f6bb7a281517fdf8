import { foldWords } from '../../text';
import { tellingFinder } from '../words';

/** What stands before a material and is none of it: "they were of", "made of", "des modèles en", "solche aus". */
const leading =
  /^\s{0,80}(?:(?:besteht|bestand|bestehen|bestanden) (?:es|er|sie)|(?:it|they|sie|es|ze|het|elle|elles|ils?) (?:was|were|is|are|war|waren|ist|sind|zijn|était|étaient|est|sont)|(?:ones|those) (?:of|in)|solche (?:aus|in)|welche (?:aus|in)|ceux (?:en|de)|celles (?:en|de)|quell[ie] (?:in|di)|l[oa]s de|die van|we used|(?:verwendeten|benutzten|nahmen) wir|wir (?:verwendeten|benutzten)|nous utilisions|on utilisait|si usava|usavamo|usábamos|se usaba|gebruikten (?:we|wij)|has had|stat[aoei] (?:di|in)|été (?:en|de)|sido de|been (?:of|in)|been|geweest van|made of|gemaakt van|van|aus|di|de|en|of|had|in|は)(?:\s|(?<=は))/iu;
const ofUse = tellingFinder('time-of-use');

/** The words of a material without what leads to it, and without "used" behind it. */
export function plainMaterial(text: string): string {
  let is = text.replace(/^\s{0,80}(?:and|und|et|ed?|y|en)\s(?=\p{L})/u, '');
  for (let step = 0; step < 3 && leading.test(is); step += 1) is = is.replace(leading, '');
  is = is.replace(/[\s,.;:]{1,80}$/u, '').replace(/\s(?:geweest|gewesen|été|stat[aoie])$/iu, '');
  const last = ofUse(foldWords(is)).at(-1);
  if (last && last.start > 0 && last.end === is.length) is = is.slice(0, last.start);
  return is.replace(/^[\s,:は·•|]{1,80}|[\s,.;:·•|]{1,80}$/gu, '');
}
