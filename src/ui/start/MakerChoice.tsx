import { useEffect, useState } from 'preact/hooks';
import { inventedMakers } from '../../maker';
import { finishedMakers } from '../../store/maker-files';
import { strings } from '../../words';

/** Whose rules a code is read by: those of a file that is here, an invented one, or nobody's. */
export function MakerChoice({ maker, onChoose }: { maker: string; onChoose: (maker: string) => void }) {
  const [own, setOwn] = useState<readonly string[]>([]);
  useEffect(() => {
    finishedMakers().then((files) => setOwn([...new Set(files.map((file) => file.maker))]));
  }, []);
  const invented = inventedMakers()
    .map((file) => file.maker)
    .filter((name) => !own.includes(name));
  return (
    <label class="field-label">
      {strings.start.whose}
      <select value={maker} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        <option value="">{strings.start.nobody}</option>
        {own.map((name) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
        {invented.map((name) => (
          <option key={name} value={name}>
            {strings.inventedName(name)}
          </option>
        ))}
      </select>
    </label>
  );
}
