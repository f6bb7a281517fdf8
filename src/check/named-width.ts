import { practice } from './frame';
import { mmWords, namedSides, namedWidthCm, statedSide } from './sizes';
import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** How far the width of a piece lies from the number in its name, at most. Common practice, no source. */
const nearMm = 30;

export const namedWidth = defineWritten({
  id: 'named-width',
  family: 'size',
  title: "The number in the model's name is its width",
  failureTitle: "The number in the model's name is not its width",
  kinds: ['doubt', 'agreement'],
  basis: "A model's number is often its width in centimetres.",
  innocent: 'The number may be a year, a series, or a width taken elsewhere.',
  settles: 'The width at the base with the tape in the photo.',
  source: practice,
  needs: { claims: ['model', 'measure'], listing: ['model', 'measures'], models: true },
  run({ claims, listing, models }) {
    const names = [...claims.model.map(({ model }) => model), ...listing.model.slice(0, 1).map(({ value }) => value)];
    const name = names.find((one) => namedWidthCm(one) !== null);
    const width = name ? namedWidthCm(name) : null;
    if (!name || width === null) return { notApplicable: 'the listing names no model with such a number' };
    if (models.some((model) => model.size && name.toLowerCase().includes(model.name.toLowerCase())))
      return { notApplicable: 'the maker file gives the size of the model itself' };
    const measures = namedSides(
      listing.measures.map(({ value }) => value),
      claims.measure.map(({ measure }) => measure),
      { width: width * 10 },
    );
    const stated = statedSide(measures, 'width');
    if (!stated) return { cannotTell: 'the page does not state the width' };
    const off = Math.abs(stated.mm - width * 10) - stated.precisionMm;
    const ids = [...claims.model, ...claims.measure].map(({ id }) => id);
    const speech: WrittenSpeech =
      off <= nearMm
        ? {
            kind: 'agreement',
            statement: `${quote(name)} is ${mmWords(stated.mm)} wide, as its number says.`,
            claims: ids,
          }
        : {
            kind: 'doubt',
            statement: `${quote(name)} is said to be ${mmWords(stated.mm)} wide, but its number says about ${width} cm.`,
            claims: ids,
            asks: [commonAsks.measures],
          };
    return [speech];
  },
});
