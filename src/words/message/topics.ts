/** Everything that checks ask about; a test holds the list against the checks. `part` stands for any named part. */
export const topics = [
  'stamp-photo',
  'made-date',
  'origin',
  'measures',
  'returns',
  'purchase',
  'payment',
  'part',
  'parts',
  'leather',
  'aging',
  'own-photo',
  'larger-photos',
  'gone-photos',
  'authorship',
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
  asks: Record<Topic, string>;
}

/** The topic of a question's id: `part-lining` and its like are one topic. */
export function topicOf(id: string): Topic | null {
  const topic = id.startsWith('part-') ? 'part' : id;
  return (topics as readonly string[]).includes(topic) ? (topic as Topic) : null;
}
