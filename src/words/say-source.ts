import type { MakerPart, Source } from '../source';
import { sources as german } from './de/sources';
import { sources as english } from './en/sources';
import { kitFor } from './kit';
import type { Language } from './language';
import { pseudo } from './pseudo';
import type { SourceWords } from './source-words';

const catalogues: Record<Language, SourceWords> = {
  en: english,
  de: german,
  get 'en-XA'() {
    return pseudo(english) as SourceWords;
  },
};

/** Where a rule or a figure comes from; a document is named as it names itself. */
export function saySource(source: Source, language: Language): string {
  const words = catalogues[language];
  switch (source.kind) {
    case 'published':
      return source.text;
    case 'memory':
      return `${source.text} (${words.memory})`;
    case 'practice':
      return words.practice;
    case 'maker-file':
      return makerFileSaid(source, words, kitFor(language).list);
    case 'listing':
      return words.listing[source.field];
    case 'photo':
      return words.photo;
    case 'user':
      return words.user[source.as];
  }
}

type MakerFileSource = Extract<Source, { kind: 'maker-file' }>;

function makerFileSaid(
  { maker, invented, part, sources }: MakerFileSource,
  words: SourceWords,
  list: (items: readonly string[]) => string,
): string {
  // What the file itself calls invented need not be called so again.
  const file = words.makerFile(maker, invented && !sources.some((one) => /\binvented\b/.test(one)));
  const own = sources.length === 0 ? '' : list(sources);
  if (part === null) return own === '' ? file : `${file}: ${own}`;
  const say = words.parts[part.of] as (part: MakerPart) => string;
  return `${file}: ${say(part)}${own === '' ? '' : words.itsSource(own)}`;
}
