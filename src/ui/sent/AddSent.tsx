import { useCallback, useState } from 'preact/hooks';
import type { SentPhoto } from '../../case';
import type { Problem } from '../../problem';
import { strings } from '../../words';
import type { GivenPhoto } from '../panel/sent-photos';
import { FileChooser, photoFiles } from '../parts/FileChooser';
import { ProblemNote } from '../parts/ProblemNote';
import { useGivenPhotos } from '../start/given-files';
import { givenPhoto, today } from './given-photo';

const ways: readonly SentPhoto['from'][] = ['seller-chat', 'seller-mail', 'own'];
const words = strings.sent;

interface Props {
  /** Whether the photos that were given are read and kept with the case. */
  onGiven: (given: readonly GivenPhoto[]) => Promise<void>;
  /** Called as soon as photos came, wherever on the page they were dropped. */
  onCame?: () => void;
}

/** Photos of the piece that the page does not show: dropped or pasted anywhere, or chosen here, with how and when they came. */
export function AddSent({ onGiven, onCame }: Props) {
  const [from, setFrom] = useState<SentPhoto['from']>('seller-chat');
  const [on, setOn] = useState(today);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [reading, setReading] = useState(0);
  const take = useCallback(
    async (files: readonly File[]) => {
      onCame?.();
      const results = await Promise.all(files.map((file) => givenPhoto(file, { from, on: on || today() })));
      setProblems(results.flatMap((one) => (one.ok ? [] : [one.problem])));
      const given = results.flatMap((one) => (one.ok ? [one.value] : []));
      if (given.length === 0) return;
      setReading((count) => count + given.length);
      await onGiven(given);
      setReading((count) => count - given.length);
    },
    [from, on, onGiven, onCame],
  );
  useGivenPhotos(take, true);
  return (
    <details class="quiet add-sent">
      <summary>{words.add}</summary>
      <p>{words.how}</p>
      <div class="row">
        <label class="field">
          <span>{words.from}</span>
          <select value={from} onChange={({ currentTarget }) => setFrom(currentTarget.value as SentPhoto['from'])}>
            {ways.map((way) => (
              <option key={way} value={way}>
                {words.ways[way]}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{words.on}</span>
          <input type="date" value={on} max={today()} onInput={({ currentTarget }) => setOn(currentTarget.value)} />
        </label>
        <FileChooser label={words.choose} accept={photoFiles} multiple onFiles={take} />
      </div>
      <p class="muted hint">{words.note}</p>
      <p role="status">{reading > 0 ? words.reading(reading) : ''}</p>
      {problems.map((problem) => (
        <ProblemNote key={`${problem.where} ${problem.code}`} problem={problem} named />
      ))}
    </details>
  );
}
