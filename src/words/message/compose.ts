import type { Question } from '../../question';
import { sayQuestion } from '../say';
import { type MessageLanguage, otherLanguages } from './languages';
import { isToldTopic, type MessageWords, subjectOf } from './topics';

export interface MessageOptions {
  sellerName?: string | undefined;
  title?: string | undefined;
  /** Language of the message, English unless given. */
  language?: MessageLanguage | undefined;
  /** Questions in the buyer's own words, after the others. */
  own?: readonly string[];
  /** The words that the buyer gave a question instead, by its id. */
  reworded?: ReadonlyMap<string, string>;
}

/**
 * One polite message to copy to the seller: a greeting, the questions as a numbered list, thanks. It repeats no
 * finding, so that nobody reads an accusation in it; empty without questions. In another language than English each
 * question is the catalogue's for its topic, said once.
 */
export function composeMessage(
  questions: Question[],
  { sellerName, title, language, own = [], reworded = new Map() }: MessageOptions = {},
): string {
  if (questions.length + own.length === 0) return '';
  const name = sellerName ? oneLine(sellerName) : null;
  const piece = title ? oneLine(title) : null;
  const other = language === undefined || language === 'en' ? null : otherLanguages[language];
  const said = (one: Question) =>
    reworded.get(one.id)?.replace(/\n\s*\n/g, '\n') ??
    (other ? translated(one, other, language ?? 'en') : sayQuestion(one, 'en'));
  const words = [...new Set([...questions.map(said), ...own])];
  const list = words.map((ask, index) => (words.length === 1 ? ask : `${index + 1}. ${ask}`));
  const greeting = other ? other.greeting(name) : name ? `Hello ${name},` : 'Hello,';
  const lead = other ? other.lead(piece, words.length) : englishLead(piece, words.length);
  const thanks = other?.thanks ?? 'Thank you very much for your help.';
  return [greeting, '', lead, '', ...list, '', thanks].join('\n');
}

const englishLead = (title: string | null, count: number): string =>
  `I am interested in ${title ? `“${title}”` : 'your piece'} and have ${count === 1 ? 'one question' : `${count} questions`} before I decide:`;

/** Whether all of it is asked without what the seller has told. */
const isPartlyTold = ({ asks }: Question): boolean => asks.every(({ data }) => 'told' in data && data.told === true);

function translated(question: Question, words: MessageWords, language: MessageLanguage): string {
  const subject = subjectOf(question.id);
  if (subject === null) return sayQuestion(question, 'en');
  const told = isPartlyTold(question);
  if ('part' in subject) return (told ? words.partTold : words.part)(words.parts[subject.part]);
  const { topic } = subject;
  const ask = told && isToldTopic(topic) ? words.told[topic] : words.asks[topic];
  const places = topic === 'stamp-photo' ? placesIn(question) : [];
  if (places.length === 0) return ask;
  const joined = new Intl.ListFormat(language, { type: 'disjunction' }).format(places.map(words.quote));
  return `${ask}${language === 'ja' ? '' : ' '}${words.codeSits(joined)}`;
}

/** Where the maker's file says that the code sits, each once; a question that was kept may hold anything there. */
function placesIn({ asks }: Question): string[] {
  const said = asks.flatMap(({ data: { where } }) => (Array.isArray(where) ? where : []));
  return [...new Set(said.filter((one) => typeof one === 'string').map(oneLine))].filter((one) => one !== '');
}

/** Page text on one line and of bounded length, so that a title cannot write the message. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim().slice(0, 120);
