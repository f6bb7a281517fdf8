import type { Part } from '../claim/types';
import type { Ask } from './types';

type None = Record<never, never>;

/** What a listing says of its piece that can change between two looks. */
export type ChangedSubject = 'made' | 'origin' | 'condition' | 'code' | 'model' | 'maker';

/** Everything that checks ask for, and what each question is made with. */
export interface AskData {
  /** `where`: where the maker's file says that it sits, in its own words. */
  'stamp-photo': { where?: string[] };
  /** All of a stamp of which a photo may show only a part. */
  'whole-stamp': None;
  /** Where `told` stands in one of them, the seller has told the part of it that is easily told. Here: when it was bought. */
  'made-date': { told?: true };
  origin: None;
  measures: None;
  returns: None;
  /** What holds where returns are refused and the piece turns out to be another than described. */
  'not-as-described': None;
  /** A paper of the purchase, or a photo of the one that is told of. */
  purchase: { told?: true };
  payment: None;
  'larger-photos': None;
  'lower-price': None;
  price: None;
  'parts-not-shown': None;
  /** What of a bag to photograph; the stamp with it. */
  'parts-to-show': { parts: string[] };
  'first-photos': None;
  'own-photo': None;
  /** Which of several pieces is shown and sent, with photos of it. */
  'which-one': None;
  'gone-photos': None;
  description: None;
  'why-changed': { subject: ChangedSubject };
  'changed-hands': None;
  /** A sharp photo of a part, and whether it was repaired where the seller has not said so. */
  part: { part: Part; told?: true };
  /** A sharp photo of a part as the maker's file names it, straight from above, so that it can be measured. */
  'measured-part': { part: string };
  authorship: None;
  /** Who remade it, and out of what. */
  'remade-by': None;
  /** What of the piece and its packaging is on sale. */
  'what-comes': None;
  trader: None;
  /** Whether the seller sold such pieces before. */
  seller: None;
  /** What an assurance rests on. */
  assurance: None;
  condition: None;
  leather: None;
  /** The metal where it is most worn. */
  'worn-metal': None;
  /** What darkens or dulls with age, and whether it was replaced where the seller has not said so. */
  aging: { told?: true };
  /** How it is known which model it is. */
  model: None;
}
export type AskId = keyof AskData;

type Wants = Ask['wants'];
/** What each asks for, and the topic under which the asks of several findings are one question. */
const kinds: { [A in AskId]: { wants: Wants; topic?: string | ((data: AskData[A]) => string) } } = {
  'stamp-photo': { wants: 'photo' },
  'whole-stamp': { wants: 'photo' },
  'made-date': { wants: 'fact' },
  origin: { wants: 'fact' },
  measures: { wants: 'photo' },
  returns: { wants: 'fact' },
  'not-as-described': { wants: 'fact' },
  purchase: { wants: 'fact' },
  payment: { wants: 'fact' },
  'larger-photos': { wants: 'photo' },
  'lower-price': { wants: 'fact', topic: 'price' },
  price: { wants: 'fact' },
  'parts-not-shown': { wants: 'photo', topic: 'parts' },
  'parts-to-show': { wants: 'photo', topic: 'parts' },
  'first-photos': { wants: 'photo', topic: 'parts' },
  'own-photo': { wants: 'photo' },
  'which-one': { wants: 'photo' },
  'gone-photos': { wants: 'photo' },
  description: { wants: 'fact' },
  'why-changed': { wants: 'fact', topic: 'changes' },
  'changed-hands': { wants: 'fact', topic: 'changes' },
  part: { wants: 'photo', topic: ({ part }) => `part-${part}` },
  'measured-part': { wants: 'photo', topic: ({ part }) => `part-${part}` },
  authorship: { wants: 'fact' },
  'remade-by': { wants: 'fact' },
  'what-comes': { wants: 'fact' },
  trader: { wants: 'fact' },
  seller: { wants: 'fact' },
  assurance: { wants: 'fact' },
  condition: { wants: 'photo' },
  leather: { wants: 'photo' },
  'worn-metal': { wants: 'photo', topic: 'part-hardware' },
  aging: { wants: 'photo' },
  model: { wants: 'fact' },
};

/**
 * Every topic that is asked about; `part-` stands for those of the parts.
 * @internal
 */
export const askedTopics = Object.entries(kinds).map(([ask, { topic }]) =>
  typeof topic === 'function' ? 'part-' : (topic ?? ask),
);

/** A question with its data: `askFor('part', { part: 'lining' })`. */
export function askFor<A extends AskId>(ask: A, data: AskData[A]): Ask {
  const { wants, topic } = kinds[ask];
  return { ask, topic: typeof topic === 'function' ? topic(data) : (topic ?? ask), wants, data };
}
