import type { PartTells, PlaceOfCode, ReadingReason } from '../code';
import { readings as german } from './de/readings';
import { readings as english } from './en/readings';
import { type Kit, kitFor } from './kit';
import type { Language } from './language';
import { pseudo } from './pseudo';
import type { ReadingWords } from './reading-words';

/** Made when first asked for: the languages say parts of their sentences through this file. */
const catalogue = (language: Language): ReadingWords =>
  language === 'de' ? german : language === 'en' ? english : (pseudo(english) as ReadingWords);

type Say<T> = Record<string, (one: T, kit: Kit) => string>;

/** What some characters of a code say. */
export const sayTells = (tells: PartTells, language: Language): string =>
  (catalogue(language).tells as Say<PartTells>)[tells.kind]!(tells, kitFor(language));

/** One step of why a code reads so. */
export const sayReadingReason = (reason: ReadingReason, language: Language): string =>
  (catalogue(language).reasons as Say<ReadingReason>)[reason.kind]!(reason, kitFor(language));

export const sayPlaceOfCode = (place: PlaceOfCode, language: Language): string => catalogue(language).places[place];
