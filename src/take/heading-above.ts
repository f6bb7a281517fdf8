import { makersOfHeading } from './name';
import type { Context } from './propose';
import type { Section } from './prose/said-system';
import { readNotation } from './said/layout';
import { partNamed } from './said/part';
import { countryOfHeading } from './said/place';
import { withoutPeriods } from './said/used-text';
import { asksWhere, isHeadingSize, isOfPeriod } from './section';
import { tellingFinder, wholeWords } from './words';

const linedWith = tellingFinder('lined-with');
const plantWords = tellingFinder('plant');
const headingWords = wholeWords('heading');
const longestName = 40;

/** What the last heading says of the blocks below it. */
export class HeadingAbove {
  /** The maker that they are of: null where none is named, undefined where several are. */
  maker: string | null | undefined;
  /** The heading itself, where it may be a name. */
  name: string | null = null;
  part: Context['part'] = null;
  /** The country that it is of. */
  country: string | null = null;
  /** Whether it is of workshops. */
  ofPlants = false;
  /** Whether it is of where codes sit. */
  ofPlaces = false;
  /** The period that it is, and the notation beside it. */
  section: Section | null = null;

  constructor(
    private readonly makers: string[],
    private readonly legend: Map<string, string>,
  ) {
    this.maker = makers.length > 1 ? undefined : (makers[0] ?? null);
  }

  enter(heading: string): void {
    const named = makersOfHeading(heading, this.makers);
    if (named.length > 0) this.maker = named.length === 1 ? named[0] : undefined;
    const names = heading.split(' ').every((word) => !headingWords.has(word.toLowerCase()));
    const { text, periods } = withoutPeriods(heading);
    const layout = readNotation(text.replace(/[()[\],:–—-]{1,9}/g, ' ').trim(), this.legend);
    const [period, ...more] = periods;
    const told = period && more.length === 0 && (layout !== null || isOfPeriod(heading, period));
    this.section = told ? { period, layout } : null;
    this.ofPlaces = asksWhere(heading);
    this.ofPlants = isHeadingSize(heading) && plantWords(heading).length > 0;
    this.country = countryOfHeading(text);
    this.part = periods.length > 0 ? null : linedWith(heading).length > 0 ? 'lining' : partNamed(heading);
    this.name = named.length === 0 && names && heading.length <= longestName ? heading : null;
  }

  /** What heads one paragraph says nothing of the next. */
  leave(): void {
    this.section = null;
    this.part = null;
  }
}
