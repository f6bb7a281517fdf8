import type { Evidence } from '../evidence';

type Says = Extract<Evidence, { about: 'quality' }>['says'];

/** A statement of how the piece is, and the claim that it comes from, if one does. */
interface Quality<K extends Says['kind']> {
  id: string;
  says: Extract<Says, { kind: K }>;
  claims: string[];
}

/** The statements of one kind, as the listing says them. */
export const qualitiesOf = <K extends Says['kind']>(evidence: readonly Evidence[], kind: K): Quality<K>[] =>
  evidence.flatMap(({ id, from, says }) =>
    says.kind === kind
      ? [{ id, says: says as Quality<K>['says'], claims: from.kind === 'claim' ? [from.id] : [] }]
      : [],
  );
