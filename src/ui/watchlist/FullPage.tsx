import { useEffect, useState } from 'preact/hooks';
import { strings } from '../strings';
import { WatchSection } from './WatchSection';

const sections = { watch: WatchSection } as const;
type Section = keyof typeof sections;
const names = Object.keys(sections) as Section[];

/** What the address shows: `#makers`, or `#case=ID` for an opened case of the watch list. */
function readAddress(): { section: Section; openCase: string | null } {
  const fragment = location.hash.slice(1);
  const openCase = new URLSearchParams(fragment).get('case');
  return { section: names.find((name) => name === fragment) ?? 'watch', openCase };
}

/** The full page: watch list, maker files, settings. The section is in the address, so that reload keeps it. */
export function FullPage() {
  const [address, setAddress] = useState(readAddress);
  useEffect(() => {
    const follow = () => setAddress(readAddress());
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return (
    <main>
      <header class="full-page-header">
        <h1>{strings.product}</h1>
      </header>
      <nav aria-label={strings.tabs.label}>
        <ul class="tabs">
          {names.map((name) => (
            <li key={name}>
              <a href={`#${name}`} aria-current={name === address.section ? 'page' : undefined}>
                {strings.tabs[name]}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      {address.section === 'watch' && <WatchSection openCase={address.openCase} />}
    </main>
  );
}
