import { useEffect, useState } from 'preact/hooks';
import { grantedHosts, onGrants, takeBackHost } from '../../browser/permissions';
import { strings } from '../../words';
import { useFocusKept } from '../use-focus-kept';

/** Addresses that the buyer allowed, each with the way to take it back. */
export function Allowed() {
  const [patterns, setPatterns] = useState<readonly string[]>([]);
  const room = useFocusKept<HTMLDivElement>();
  useEffect(() => {
    const show = async () => setPatterns(await grantedHosts());
    show();
    return onGrants(show);
  }, []);
  if (patterns.length === 0) return <p>{strings.start.allowedNone}</p>;
  return (
    <div ref={room}>
      <p>{strings.start.allowed}</p>
      <ul>
        {patterns.map((pattern) => (
          <li key={pattern}>
            {hostOf(pattern)}{' '}
            <button
              type="button"
              class="small"
              aria-label={strings.start.takeBackFrom(hostOf(pattern))}
              onClick={() => takeBackHost(pattern)}
            >
              {strings.start.takeBack}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** The host of a match pattern, which has no query. */
const hostOf = (pattern: string): string => pattern.split('/')[2] ?? pattern;
