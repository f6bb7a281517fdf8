import { fromMakerFile, makerFileSource } from './frame';
import { namedModel } from './models';
import { mmWords, modelMm, namedSides, sides, statedSide } from './sizes';
import { commonAsks, listWords, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** Sellers measure a soft body with a loose tape. Common practice, no source. */
const tapeMm = 5;

export const sizeAgainstModel = defineWritten({
  id: 'size-against-model',
  family: 'size',
  title: "The stated measurements are the model's",
  failureTitle: "The stated measurements are not the model's",
  kinds: ['doubt', 'agreement'],
  basis: 'A model has one size; the measurements of a piece stay within its tolerance.',
  innocent: 'The seller may have measured at the top instead of the base, or named another size of the model.',
  settles: 'The width, height and depth with the tape in the photo.',
  source: makerFileSource,
  needs: { maker: ['models'], claims: ['model', 'measure'], listing: ['model', 'title', 'measures'] },
  run(facts) {
    const { listing, claims, maker } = facts;
    const named = namedModel(maker.models, { model: claims.model, fields: [listing.model, listing.title] });
    if (!named) return { notApplicable: 'the listing names no model of the maker file' };
    const { model } = named;
    if (!model.size) return { notApplicable: `the maker file gives no size of ${model.name}` };
    const expected = modelMm(model.size);
    const measures = namedSides(
      listing.measures.map(({ value }) => value),
      claims.measure.map(({ measure }) => measure),
      expected.mm,
    );
    const off: string[] = [];
    const fits: string[] = [];
    for (const side of sides) {
      const mm = expected.mm[side];
      const stated = statedSide(measures, side);
      if (mm === undefined || !stated) continue;
      const allowed = expected.toleranceMm + stated.precisionMm + tapeMm;
      if (Math.abs(stated.mm - mm) <= allowed) fits.push(`${side} ${mmWords(stated.mm)}`);
      else off.push(`${side} ${quote(stated.words)} = ${mmWords(stated.mm)} and not ${mmWords(mm)}`);
    }
    if (off.length + fits.length === 0) return { cannotTell: 'the page does not state width, height or depth' };
    const ids = [...named.claims, ...claims.measure.map(({ id }) => id)];
    const common = { claims: ids, source: fromMakerFile(maker.name, `size of ${model.name}`, model.source) };
    const speech: WrittenSpeech =
      off.length > 0
        ? {
            kind: 'doubt',
            statement: `The listing says ${model.name}, but states ${listWords(off)}.`,
            ...common,
            asks: [commonAsks.measures],
          }
        : {
            kind: 'agreement',
            statement: `The listing states ${listWords(fits)}, which a ${model.name} has.`,
            ...common,
          };
    return [speech];
  },
});
