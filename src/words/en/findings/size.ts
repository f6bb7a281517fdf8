import type { CheckData } from '../../../check';
import type { Span } from '../../../span';
import type { WordsFor } from '../../finding-words';
import type { Kit } from '../../kit';
import { between, factor, inBoth } from '../../lengths';

type Sizes =
  | 'measures-stated'
  | 'measures-agree'
  | 'measures-proportion'
  | 'named-width'
  | 'size-against-model'
  | 'size-plausible';

type Mistaken = Extract<CheckData['measures-proportion'], { fault: 'unit' }>['mistaken'];
const mistaken: Record<Mistaken, string> = {
  'inches-as-cm': 'inches written as centimetres',
  'cm-as-inches': 'centimetres written as inches',
  'cm-as-mm': 'centimetres written as millimetres',
  'mm-as-cm': 'millimetres written as centimetres',
};
const long = (mm: number, kit: Kit) => inBoth(mm, 'in', kit);
const stated = ({ words, mm }: { words: string; mm: number }, kit: Kit) => `${kit.quote(words)} = ${long(mm, kit)}`;
const sided = ({ side, mm }: { side: string; mm: number }, kit: Kit) => `${side} ${long(mm, kit)}`;

/** Which of its sizes, where the model had several by year. */
const sizeOf = (made: Span | undefined, kit: Kit) => (made ? ` (the size made ${kit.during(made)})` : '');

export const size: WordsFor<Sizes> = {
  'measures-stated': {
    title: 'Measurements are stated',
    failureTitle: 'No measurements are stated',
    rule: 'Width, height and depth tell one model and one size from another.',
    statement: () => 'The listing states no width, height or depth.',
    innocent: 'The seller may expect that buyers know the model.',
    settles: 'Width, height and depth with the tape in the photo.',
  },
  'size-plausible': {
    title: 'The measurements are those of a piece that is carried',
    failureTitle: 'A measurement is hardly possible for a piece that is carried',
    rule: 'From a key ring to a trunk, no piece that is carried is under 1 cm or over 2 m wide or high.',
    statement: ({ side, limit, ...said }, kit) =>
      `The ${side} is stated as ${stated(said, kit)}, which is ${limit === 'largest' ? 'over 2 m' : 'under 1 cm'}.`,
    innocent: 'The unit may be wrong: inches written as centimetres, or millimetres as centimetres.',
    settles: 'The measurement with its unit.',
  },
  'measures-agree': {
    title: 'A measurement stated twice is the same in both units',
    failureTitle: 'One measurement is stated twice with different sizes',
    rule: '1 inch is 25.4 mm; the same side has one length.',
    statement: ({ side, one, other }, kit) =>
      `The ${side} is stated as ${stated(one, kit)} and as ${stated(other, kit)}.`,
    innocent: 'One of the two may be measured at the top and one at the base, or converted in the head.',
    settles: 'The side with the tape in the photo.',
  },
  'named-width': {
    title: "The number in the model's name is its width",
    failureTitle: "The number in the model's name is not its width",
    rule: "A model's number is often its width in centimetres.",
    statement: ({ name, mm, number }, kit, kind) =>
      kind === 'agreement'
        ? `${kit.quote(name)} is ${long(mm, kit)} wide, as its number says.`
        : `${kit.quote(name)} is said to be ${long(mm, kit)} wide, but its number says about ${number} cm.`,
    innocent: 'The number may be a year, a series, or a width taken elsewhere.',
    settles: 'The width at the base with the tape in the photo.',
  },
  'size-against-model': {
    title: "The stated measurements are the model's",
    failureTitle: "The stated measurements are not the model's",
    rule: 'A model has the size of its time; the measurements of a piece stay within its tolerance.',
    statement: ({ model, made, off, fits }, kit) =>
      off.length > 0
        ? `The listing says ${model}, but states ${kit.list(off.map(({ side, expectedMm, ...said }) => `${side} ${stated(said, kit)} and not ${long(expectedMm, kit)}`))}${sizeOf(made, kit)}.`
        : `The listing states ${kit.list(fits.map((one) => sided(one, kit)))}, which a ${model} has${sizeOf(made, kit)}.`,
    innocent: 'The seller may have measured at the top instead of the base, or named another size of the model.',
    settles: 'The width, height and depth with the tape in the photo.',
  },
  'measures-proportion': {
    title: 'The measurements stand in the proportion of the model',
    failureTitle: 'The measurements do not stand in the proportion of the model',
    rule: 'The sizes of one model keep its shape; a wrong unit makes every side wrong by the same factor.',
    statement: (data, kit) => {
      if (data.fault === 'unit') {
        const { factor: by } = data;
        const how = by > 1 ? `${factor(by, kit)} times` : `smaller by a factor of ${factor(1 / by, kit)} than`;
        return `The listing states ${kit.list(data.sides.map((one) => sided(one, kit)))}, each ${how} the side of a ${data.model}: ${mistaken[data.mistaken]} would explain it.`;
      }
      const { one, other, models, least, most } = data;
      return `${kit.sentence(sided(one, kit))} is ${kit.number(one.mm / other.mm, 1)} times the ${sided(other, kit)}; ${kit.list(models)} ${models.length === 1 ? 'has' : 'have'} ${between(least, most, 'to', kit)} times.`;
    },
    innocent: 'The seller may have mixed up inches and centimetres, or measured a soft body at its widest.',
    settles: 'The width, height and depth with the tape and its unit in the photo.',
  },
};
