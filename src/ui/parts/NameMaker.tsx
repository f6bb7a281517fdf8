import { useEffect, useState } from 'preact/hooks';
import { finishedMakers } from '../../store/maker-files';
import { strings } from '../../words';
import { useFocusWhen } from '../use-focus-when';

const longestName = 120;

interface Props {
  onName: (maker: string) => void;
  onPoint: () => void;
  /** Who may have made it, to begin with. */
  guess: string | null;
  /** Whether it was asked for just now, and takes the focus. */
  asked: boolean;
}

/** Whose piece it is: typed, with the names of the files that are here at hand, or pointed at on the page. */
export function NameMaker({ onName, onPoint, guess, asked }: Props) {
  const [name, setName] = useState(guess ?? '');
  const [own, setOwn] = useState<readonly string[]>([]);
  const field = useFocusWhen<HTMLInputElement>(asked);
  useEffect(() => {
    finishedMakers().then((files) => setOwn([...new Set(files.map(({ maker }) => maker))]));
  }, []);
  const words = strings.waysOn;
  return (
    <form
      class="row"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== '') onName(name.trim());
      }}
    >
      <label class="field-label">
        {words.name}
        <input
          ref={field}
          type="text"
          list="names-on-file"
          maxLength={longestName}
          value={name}
          onInput={({ currentTarget: { value } }) => setName(value)}
        />
      </label>
      <datalist id="names-on-file">
        {own.map((maker) => (
          <option key={maker} value={maker} />
        ))}
      </datalist>
      <button type="submit" disabled={name.trim() === ''}>
        {words.use}
      </button>
      <button type="button" onClick={onPoint}>
        {words.point}
      </button>
    </form>
  );
}
