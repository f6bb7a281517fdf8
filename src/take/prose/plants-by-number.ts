import { namesMonth } from '../said/month';
import { readPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import { placeNames } from './place-names';
import { plantBeside, type SaidPlant } from './said-plant';

const plantWords = tellingFinder('plant');
/** A figure by itself: no measure, no count of signs and no part of a date. */
const figures = /(?<![\p{L}\d.,/-])[1-9](?![\p{L}\d%°]|[.,/-]\d|\s?(?:cm|mm|in|x|×)(?!\p{L}))/gu;
/** "Stamped a 1", "with the number 2": a figure that pieces of a workshop bore. */
const borne =
  /(?<!\p{L})(?:stamped|stamps|used|uses|had|has|got|stempelte|stempelt|prägte|hatte|bekam|erhielt|frappait|marquait|avait|portait|timbrava|marcava|aveva|usava|marcaba|sellaba|tenía|usaba|stempelde|merkte|had|kreeg|with|mit|avec|con|met)\s(?:(?:an?|the|eine?[rn]?|der|die|das|un|une|le|la|il|lo|uno|el|een|het|de)\s)?(?:\p{L}{4,10}\s)?$/iu;
const farthest = 44;
const longest = 300;

/** What stands between a figure and the name of its town: "is", "celui de", a sign. */
const between = /^[\s,(=:–—-]{0,4}(?:\p{Ll}{1,9}['’]?[\s,(]{1,3}(?:[dl]['’])?){0,4}(?:[dl]['’])?$/u;

/** Workshops that bear numbers: "1 is Frome, 2 is Mere", "the first workshop stood in Calw and stamped a 1". */
export function plantsByNumber(sentence: string): SaidPlant[] {
  if (sentence.length > longest || plantWords(sentence).length === 0) return [];
  const { text, periods } = withoutPeriods(sentence);
  const numbers = [...text.matchAll(figures)];
  const [first, ...more] = numbers;
  if (!first) return [];
  if (more.length === 0) return onlyOne(text, first, periods);
  const found = numbers.map(({ 0: number, index }, at) => {
    const until = numbers[at + 1]?.index ?? text.length;
    const segment = text.slice(index + 1, until);
    const name = [...segment.matchAll(placeNames)].find(({ index: from }) => from <= farthest);
    if (!name || namesMonth(name[0]) || !between.test(segment.slice(0, name.index))) return null;
    const place = readPlace(segment.slice(name.index, name.index + 60).replace(/[);.].{0,60}$/su, ''));
    const own = periods.filter(({ start }) => start > index && start < until);
    return place && plantBeside(number, place, own, index);
  });
  const isList =
    found.every((one) => one !== null) && new Set(numbers.map(([number]) => number)).size === numbers.length;
  return isList ? found : [];
}

/** The one figure of a sentence that tells of one place. */
function onlyOne(
  text: string,
  { 0: number, index }: RegExpExecArray,
  periods: Parameters<typeof plantBeside>[2],
): SaidPlant[] {
  if (!borne.test(text.slice(Math.max(0, index - 40), index))) return [];
  const towns = [...text.matchAll(placeNames)].filter(
    ({ 0: name, index: at }) =>
      at > 0 && !namesMonth(name) && plantWords(name).length === 0 && inTown.test(text.slice(0, at)),
  );
  const [town, ...others] = towns;
  const place =
    town && others.length === 0 ? readPlace(text.slice(town.index, town.index + 60).split(/[,;()]/)[0]!) : null;
  return place ? [plantBeside(number, place, periods, index)] : [];
}
const inTown = /(?:(?<!\p{L})(?:at|in|à|en|a|te|aus|von)\s|\(|,\s)$/iu;
