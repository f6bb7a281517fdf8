import { plainName } from '../maker';
import type { MakerFile } from '../maker/types';
import { periodSpan, periodSpans, reachOfAbout, type Span, spansMeet } from '../span';

/** More places than this would be no help in a question. */
const mostPlaces = 2;

/**
 * Where a piece of this model and these dates carries its code, in the file's words: of the model's own carriers where it has
 * any. None where the file does not say, or says so many that it tells nothing.
 */
export function placesOfCode(maker: MakerFile, model: string | null, dates: readonly Span[]): string[] {
  const usedOf = new Map(maker.codeSystems.map(({ id, used }) => [id, periodSpan(used)]));
  const then = maker.carriers.filter(({ readable, used, systems }) => {
    if (readable === false) return false;
    const own = used ? periodSpans(used) : (systems ?? []).flatMap((id) => usedOf.get(id) ?? []);
    const meets = (date: Span) => own.some((span) => spansMeet(reachOfAbout(span), reachOfAbout(date)));
    return own.length === 0 || dates.length === 0 || dates.some(meets);
  });
  const named = model === null ? null : plainName(model);
  const ofModel = then.filter(({ models }) => models?.some((one) => plainName(one) === named));
  const found = ofModel.length > 0 ? ofModel : then.filter(({ models }) => models === undefined);
  const places = [...new Set(found.map(({ where }) => where))];
  return places.length > mostPlaces ? [] : places;
}
