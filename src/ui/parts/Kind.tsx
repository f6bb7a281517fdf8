import type { FindingKind } from '../../check/types';
import { strings } from '../../words';

/** A finding's kind as sign and word: never by colour alone. */
export const Kind = ({ kind, number }: { kind: FindingKind; number?: number }) => (
  <span class={`kind kind-${kind}`}>
    <span class="kind-sign" aria-hidden="true">
      {strings.kinds[kind].sign}
    </span>{' '}
    {number === undefined ? strings.kinds[kind].one : strings.counted(kind, number)}
  </span>
);
