import { useState } from 'preact/hooks';
import type { MakerFile } from '../../../maker';
import type { FileAt } from '../../../reader/file/read-file';
import { kit, strings } from '../../../words';
import { useFocusWhen } from '../../use-focus-when';
import { countsOf } from '../counts';

const words = strings.travel;

interface Props {
  fetched: FileAt;
  onUse: (daily: boolean) => void;
  onLeave: () => void;
}

/** A file that was fetched, to be looked at first: nothing of it is kept yet. */
export function FetchedFile({ fetched, onUse, onLeave }: Props) {
  const [daily, setDaily] = useState(false);
  const heading = useFocusWhen<HTMLHeadingElement>(true);
  const { file, address, sha256, bytes } = fetched;
  return (
    <section class="notice" aria-labelledby="fetched-title">
      <h2 id="fetched-title" ref={heading} tabIndex={-1}>
        {words.fetched(file.maker)}
      </h2>
      <p>
        {countsOf(file)}. {words.kilobytes(kit.number(Math.ceil(bytes / 1000)))}
      </p>
      <p>{termsOf(file)}</p>
      <p class="muted hint">{words.fromAddress(address)}</p>
      <p class="muted hint">{words.sha256(sha256)}</p>
      <label class="tick">
        <input type="checkbox" checked={daily} onChange={({ currentTarget }) => setDaily(currentTarget.checked)} />
        <span>{words.daily}</span>
      </label>
      <div class="row">
        <button type="button" class="main" onClick={() => onUse(daily)}>
          {words.use}
        </button>
        <button type="button" onClick={onLeave}>
          {words.leave}
        </button>
      </div>
    </section>
  );
}

/** By whom a file is and how it may be passed on, as it says itself. */
export const termsOf = ({ authors, licence }: Pick<MakerFile, 'authors' | 'licence'>): string =>
  `${authors && authors.length > 0 ? words.by(kit.list(authors)) : words.byNobody} ${licence ? words.licence(licence) : words.noLicence}`;
