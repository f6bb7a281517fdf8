import { strings } from '../../words';

/** A period as its two fields show it: "1988 – 2003", "1996 – still". */
export const periodText = ([from, to]: readonly [string, string | null]): string =>
  `${from} – ${to ?? strings.makers.period.to}`;
