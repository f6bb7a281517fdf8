import { type Folded, type Hit, isAboutAnother, isLeftOpen, isOfFormerPart, polarityOf, type Topic } from '../text';
import { type Passage, saidIn } from './passage';
import { isOfAccessory } from './subject';

type Polarity = ReturnType<typeof polarityOf>;
interface SaidWords<T extends Topic> {
  hit: Hit<T>;
  polarity: Polarity;
  said: ReturnType<typeof saidIn>;
}

/** The words of some topics in a passage, but for those said of another thing, asked or supposed. */
export function saidWords<T extends Topic>(from: Passage, find: (text: Folded) => Hit<T>[]): SaidWords<T>[] {
  const { text } = from.folded;
  return find(from.folded)
    .filter(
      ({ foldedStart, foldedEnd }) =>
        !isAboutAnother(text, foldedStart, foldedEnd) &&
        !isLeftOpen(text, foldedStart, foldedEnd) &&
        !isOfFormerPart(text, foldedStart, foldedEnd) &&
        !isOfAccessory(text, foldedStart, from.title),
    )
    .map((hit) => ({
      hit,
      polarity: polarityOf(text, hit.foldedStart, hit.foldedEnd),
      said: saidIn(from, hit, 0.85),
    }));
}
