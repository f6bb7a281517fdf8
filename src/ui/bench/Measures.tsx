import type { HandMeasure } from '../../photo';
import { kit, strings } from '../../words';
import { gapsAlong, measureName, measureWords } from './mark-words';

/** What was measured at one mark, each with its unit and how far off it may be; or why it was not measured. */
export const Measures = ({ measured }: { measured: readonly HandMeasure[] }) =>
  measured.length === 0 ? null : (
    <dl class="measures">
      {measured.map((one) => (
        <div key={one.what} data-what={one.what} data-value={one.value === null ? 'none' : 'told'}>
          <dt>{measureName(one)}</dt>
          <dd>
            {measureWords(one)}
            {one.what === 'skipped' && <GapsAlong measured={measured} />}
          </dd>
        </div>
      ))}
    </dl>
  );

const GapsAlong = ({ measured }: { measured: readonly HandMeasure[] }) => {
  const gaps = gapsAlong(measured);
  return gaps.length === 0 ? null : <small>{strings.bench.gapsAlong(kit.list(gaps))}</small>;
};
