import type { PartTells, PlaceOfCode, ReadingReason } from '../code';
import type { Kit } from './kit';

type Kinds<T extends { kind: string }> = T['kind'];
type OfKind<T extends { kind: string }, K extends string> = T extends unknown
  ? K extends T['kind']
    ? Omit<T, 'kind'> & { kind: K }
    : never
  : never;

/** What a code's characters say and why it reads so, in one language: without a full stop. */
export interface ReadingWords {
  tells: { [K in Kinds<PartTells>]: (tells: OfKind<PartTells, K>, kit: Kit) => string };
  reasons: { [K in Kinds<ReadingReason>]: (reason: OfKind<ReadingReason, K>, kit: Kit) => string };
  /** A place of the code, as the subject of a line. */
  places: Record<PlaceOfCode, string>;
}
