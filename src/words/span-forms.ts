/** How a language says spans. `day` and the ends are said already ("4 March 1996", "1988"). */
export interface SpanForms {
  any: string;
  upTo: (end: string) => string;
  from: (start: string) => string;
  weekOf: (day: string) => string;
  /** `first` is the decade's first year, 1990 for the nineties. */
  decade: (first: string) => string;
  range: (start: string, end: string) => string;
  about: (words: string) => string;
  /** In a sentence after "made": "from 1988 to 2003". */
  during: { closed: (start: string, end: string) => string; one: (words: string) => string };
}
