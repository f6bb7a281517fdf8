import { useCallback, useEffect, useState } from 'preact/hooks';
import { strings } from '../../words';
import { BenchPage } from '../bench/BenchPage';
import { DossierPage } from '../dossier/DossierPage';
import { LanguageChoice } from '../LanguageChoice';
import { MakersSection } from '../makers/MakersSection';
import { DemoPage } from '../start/DemoPage';
import { useGivenPhotos } from '../start/given-files';
import { photoOfFile } from '../start/photo-of-file';
import { ReadPhoto } from '../start/ReadPhoto';
import { StartPage } from '../start/StartPage';
import { useLoose } from '../start/use-loose';
import { useDailyLook } from '../use-daily-look';
import { WatchSection } from './WatchSection';

const names = ['watch', 'makers', 'photo', 'start'] as const;
type Section = (typeof names)[number] | 'demo';

interface Address {
  section: Section;
  openCase: string | null;
  row: string | null;
  dossier: string | null;
  /** The key of a photo that another page lends to the bench. */
  bench: string | null;
  openFile: string | null;
  /** A known code to begin with, where a file was begun from a listing. */
  known: string | null;
  /** What a page proposed, by its id; empty to bring a page. */
  take: string | null;
  /** The maker of the listing that a page is brought for. */
  takeFor: string | null;
  /** Files that were dropped on the panel, by their id. */
  bring: string | null;
}

/**
 * What the address shows: `#makers`, `#makers&file=ID`, `#makers&take=ID` for what a page proposed, `#makers&bring=ID` for what was dropped on the panel, `#watch&row=ID` for a row of the watch list, `#case=ID` for the
 * opened case in the list's place, `#dossier=ID` for its document, or `#bench=KEY` for a photo that is measured. `#start` is the first page, `#demo` its made-up listing, and
 * `#photo` reads photos without a listing.
 */
function readAddress(): Address {
  const fragment = new URLSearchParams(location.hash.slice(1));
  const section = fragment.has('demo') ? 'demo' : (names.find((name) => fragment.has(name)) ?? 'watch');
  return {
    section,
    openCase: fragment.get('case'),
    row: fragment.get('row'),
    dossier: fragment.get('dossier'),
    bench: fragment.get('bench'),
    openFile: fragment.get('file'),
    known: fragment.get('known'),
    take: fragment.get('take'),
    takeFor: fragment.get('for'),
    bring: fragment.get('bring'),
  };
}

/** The full page: watch list, maker files, settings. The section is in the address, so that reload keeps it. */
export function FullPage() {
  const [address, setAddress] = useState(readAddress);
  useEffect(() => {
    const follow = () => setAddress(readAddress());
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  useDailyLook(true);
  const [photos, loose] = useLoose();
  const [maker, setMaker] = useState('');
  const takePhotos = useCallback(
    (files: readonly File[]) => {
      location.hash = 'photo';
      loose.add(files.map(photoOfFile));
    },
    [loose],
  );
  // Maker files are dropped on their own page, and a kept case takes photos that were sent itself.
  const isTaken = address.section === 'makers' || address.bench !== null || address.openCase !== null;
  useGivenPhotos(takePhotos, !isTaken);
  if (address.bench !== null) return <BenchPage key={address.bench} of={address.bench} />;
  if (address.dossier !== null) return <DossierPage id={address.dossier} />;
  return (
    <main>
      <header class="full-page-header">
        <h1>{strings.product}</h1>
        <LanguageChoice />
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
      {address.section === 'watch' && <WatchSection openCase={address.openCase} row={address.row} />}
      {address.section === 'start' && <StartPage onPhotos={takePhotos} />}
      {address.section === 'demo' && <DemoPage />}
      {address.section === 'photo' && (
        <ReadPhoto state={photos} loose={loose} maker={maker} onMaker={setMaker} onPhotos={takePhotos} />
      )}
      {address.section === 'makers' && (
        <MakersSection
          openFile={address.openFile}
          known={address.known}
          take={address.take}
          takeFor={address.takeFor}
          bring={address.bring}
        />
      )}
    </main>
  );
}
