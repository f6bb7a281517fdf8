import { andWords } from '../and-words';
import { readPeriods, usedOf } from '../said/period';
import { farthestTold, type SaidPlant } from './said-plant';

const joint = new RegExp(`(?:[,;、]|\\s(?:${andWords}))\\s?(?:(?:${andWords})(?!\\p{L}))?[\\s,(–—-]{0,4}$`, 'u');
/** What may stand between a time and the code that it is of: a comma, an article, "also". */
const opensNext =
  /^\s?[,)は–—-]?\s?(?:(?:also|too|auch|noch|aussi|encore|anche|también|ook|nog)\s)?(?:an?\s|the\s|une?\s|l[ae]?[\s'’]|eine?[mn]?\s|d(?:ie|er|as|en)\s|una?\s|il\s|el\s|een\s|de\s|het\s)?$/iu;
/** "SC for Scarborough and, from 1985, MA for Malta": a time between two codes that is of the second. */
export function timeAhead(sentence: string, from: number | undefined, to: number) {
  if (from === undefined || to - from > farthestTold) return null;
  const gap = sentence.slice(from, to);
  const period = readPeriods(gap).at(-1);
  if (!period || period.form === 'year' || !opensNext.test(gap.slice(period.end))) return null;
  const before = joint.exec(gap.slice(0, period.start));
  if (!before) return null;
  const { backwards, ...used } = usedOf([period]);
  return { start: from + before.index, used, backwards };
}

const farthestTime = 48;
/** "Since 2001 there is RO as well, which is Romania": the time that opens the clause of the only code. */
export function withTimeBefore(plant: SaidPlant, sentence: string): SaidPlant {
  if (plant.own.used) return plant;
  const ahead = sentence.slice(0, plant.at);
  const [period, ...more] = readPeriods(ahead);
  if (!period || more.length > 0 || period.form === 'year' || readPeriods(sentence).length > 1) return plant;
  const between = ahead.slice(period.end).replace(/^\s?,/, '');
  if (period.start > 3 || between.length > farthestTime || /[,;:.。、]/.test(between)) return plant;
  const { backwards, ...used } = usedOf([period]);
  return { ...plant, own: { ...plant.own, ...used }, doubts: [...plant.doubts, backwards && 'backwards'] };
}
