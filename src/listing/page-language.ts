import { attribute, property } from './page/dom';
import { type HeadTags, headTag } from './structured/open-graph';

const tag = /^[a-z]{2,3}(?:[-_][A-Za-z0-9]{2,8})*$/i;

const common: Record<string, RegExp> = {
  ja: /[\u3040-\u30ff]/g,
  de: /\b(und|der|die|das|mit|ist|nicht|ein|eine|für|sehr|auf|von)\b/gi,
  fr: /\b(le|la|les|et|des|une|avec|est|pour|très|dans|sur|du)\b/gi,
  it: /\b(il|di|e|con|una|per|molto|della|sono|non|che|in)\b/gi,
  es: /\b(el|los|y|con|una|para|muy|del|está|por|que|sin)\b/gi,
  nl: /\b(het|een|en|met|van|zeer|niet|voor|is|de|op|zijn)\b/gi,
  en: /\b(the|and|with|of|is|for|very|in|this|to|a|not)\b/gi,
};

/** BCP 47 tag of a page: `html[lang]`, then the head, then the commonest small words of its text; null when unclear. */
export function pageLanguage(document: Document, tags: HeadTags, text: string): string | null {
  const root = property<Element | null>(document, 'documentElement');
  const declared = root ? (attribute(root, 'lang') ?? attribute(root, 'xml:lang')) : null;
  for (const one of [declared, headTag(tags, 'og:locale', 'content-language', 'language')])
    if (one && tag.test(one.trim())) return one.trim().replace(/_/g, '-');
  return languageOfText(text);
}

/** The language whose small words are commonest in a text; null where no language leads clearly. */
export function languageOfText(text: string): string | null {
  const sample = text.slice(0, 4_000);
  const counts = Object.entries(common).map(([language, words]) => ({
    language,
    count: (sample.match(words) ?? []).length,
  }));
  counts.sort((a, b) => b.count - a.count);
  const [first, second] = counts;
  return first && second && first.count >= 3 && first.count > second.count * 1.2 ? first.language : null;
}
