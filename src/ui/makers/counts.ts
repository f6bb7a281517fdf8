import type { MakerFile } from '../../maker';
import { strings } from '../../words';

/** What a file holds, in numbers. */
export const countsOf = ({ codeSystems, plants, models }: MakerFile) =>
  strings.makers.counts(codeSystems.length, plants.length, models.length);
