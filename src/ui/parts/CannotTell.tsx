import type { Reason } from '../../check/types';
import { chosenLanguage, nameOfCheck, sayReason } from '../../words';
import { groupBy } from '../group-by';

/** Checks that could not tell, those that lack the same under one reason. */
export const CannotTell = ({ checks }: { checks: readonly { check: string; why: Reason }[] }) => (
  <ul>
    {groupBy(checks, ({ why }) => sayReason(why, chosenLanguage())).map(([reason, lacking]) => {
      const names = lacking.map(({ check }) => nameOfCheck(check, chosenLanguage()));
      if (names.length === 1)
        return (
          <li key={reason}>
            {names[0]}: {reason}
          </li>
        );
      return (
        <li key={reason}>
          {reason}:
          <ul>
            {names.map((name) => (
              <li key={name}>{name}</li>
            ))}
          </ul>
        </li>
      );
    })}
  </ul>
);
