import { type Part, partSchema } from '../../claim/types';

/** Everything that checks ask about beside single parts (`part-lining`); a test holds the list against the checks. */
export const topics = [
  'stamp-photo',
  'whole-stamp',
  'made-date',
  'origin',
  'measures',
  'returns',
  'not-as-described',
  'purchase',
  'payment',
  'parts',
  'leather',
  'aging',
  'own-photo',
  'which-one',
  'larger-photos',
  'gone-photos',
  'authorship',
  'remade-by',
  'what-comes',
  'assurance',
  'condition',
  'description',
  'seller',
  'trader',
  'model',
  'price',
  'changes',
] as const;
export type Topic = (typeof topics)[number];

/** One language of the message to the seller: polite form, no accusation. */
export interface MessageWords {
  /** "Hello Mina," or, without a name, "Hello,". */
  greeting: (name: string | null) => string;
  /** Leads to the questions; `title` is the listing's, null when unknown. */
  lead: (title: string | null, count: number) => string;
  thanks: string;
  /** Asks for a photo of one part, by its name of `parts`, and after repairs. */
  part: (name: string) => string;
  /** Each part as the sentence of `part` names it. */
  parts: Record<Part, string>;
  /** Words that others wrote, in this language's quotation marks. */
  quote: (words: string) => string;
  /** Where the code should be, beside the question for its photo; quoted places, joined by "or". */
  codeSits: (places: string) => string;
  asks: Record<Topic, string>;
  /** The same where the seller has told a part of it: what is left to ask. */
  told: Record<ToldTopic, string>;
  partTold: (name: string) => string;
}

const toldTopics = ['made-date', 'purchase', 'aging'] as const satisfies readonly Topic[];
type ToldTopic = (typeof toldTopics)[number];

/** What a question's id asks about: a topic, or one part. */
export function subjectOf(id: string): { topic: Topic } | { part: Part } | null {
  if ((topics as readonly string[]).includes(id)) return { topic: id as Topic };
  const part = partSchema.safeParse(id.replace(/^part-/, ''));
  return id.startsWith('part-') && part.success ? { part: part.data } : null;
}

export const isToldTopic = (topic: Topic): topic is ToldTopic => (toldTopics as readonly string[]).includes(topic);
