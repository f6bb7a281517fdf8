import type { MeasuredPhoto } from '../../watch';
import { strings } from '../../words';
import { MeasuredPhotos } from '../parts/MarkedPhoto';

/** What the buyer measured: each photo with its marks drawn on it, and what each measures under its number. */
export const DossierMeasured = ({ measured }: { measured: readonly MeasuredPhoto[] }) =>
  measured.length === 0 ? null : (
    <section aria-labelledby="dossier-measured">
      <h2 id="dossier-measured">{strings.bench.dossier}</h2>
      <MeasuredPhotos measured={measured} />
    </section>
  );
