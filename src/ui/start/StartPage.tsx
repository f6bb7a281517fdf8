import { useEffect, useState } from 'preact/hooks';
import { browser } from '../../browser/api';
import { strings } from '../../words';
import { Cautions } from '../parts/Cautions';
import { Allowed } from './Allowed';
import { ReadCode } from './ReadCode';
import { ChoosePhoto } from './ReadPhoto';

/** The first page: what it does and does not, something to try, and the ways to begin. It asks for nothing. */
export function StartPage({ onPhotos }: { onPhotos: (files: readonly File[]) => void }) {
  const words = strings.start;
  return (
    <section class="start" aria-labelledby="start-title">
      <h2 id="start-title">{words.title}</h2>
      <p>{words.about}</p>
      <div class="start-cards">
        <Card title={words.demo} class="start-first">
          <p>{words.demoAbout}</p>
          <p>
            <a class="button main" href="#demo">
              {words.openDemo}
            </a>
          </p>
        </Card>
        <Card title={words.code}>
          <ReadCode />
        </Card>
        <Card title={words.photo}>
          <ChoosePhoto onPhotos={onPhotos} />
        </Card>
        <Card title={words.files}>
          <p>{words.filesAbout}</p>
          <ul>
            <li>
              <a href="#makers">{words.bring}</a>
            </li>
            <li>
              <a href="#makers&take">{words.take}</a>
            </li>
            <li>
              <a href="#makers">{words.workOut}</a>
            </li>
            <li>{words.fromListing}</li>
          </ul>
        </Card>
        <Card title={words.beside}>
          <p>{words.besideHow}</p>
          <Shortcut />
          <p class="muted">{words.noButton}</p>
        </Card>
        <Card title={words.kept}>
          <p>{words.keptWhat}</p>
          <Allowed />
        </Card>
      </div>
      <Cautions />
    </section>
  );
}

function Card({
  title,
  class: name = '',
  children,
}: {
  title: string;
  class?: string;
  children: preact.ComponentChildren;
}) {
  return (
    <section class={`start-card ${name}`}>
      <h3>{title}</h3>
      {children}
    </section>
  );
}

/** The keys that do what the button does, as they are set in this browser. */
function Shortcut() {
  const [keys, setKeys] = useState<string | null>(null);
  useEffect(() => {
    browser.commands
      .getAll()
      .then((all) => setKeys(all.find(({ name }) => name === '_execute_action')?.shortcut ?? ''));
  }, []);
  if (keys === null) return null;
  return <p>{keys === '' ? strings.start.noKeys : strings.start.keys(keys)}</p>;
}
