import type { FindingKind } from '../../check/types';
import { strings } from '../../words';

/** A finding's kind as sign and word: never by colour alone, and never with a number. */
export const Kind = ({ kind }: { kind: FindingKind }) => (
  <span class={`kind kind-${kind}`}>
    <span class="kind-sign" aria-hidden="true">
      {strings.kinds[kind].sign}
    </span>{' '}
    {strings.kinds[kind].one}
  </span>
);
