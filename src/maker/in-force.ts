import type { Entry, MakerFile } from './schema';

/** Whether an entry was not taken back. */
const stands = ({ standing }: Pick<Entry, 'standing'>): boolean => standing?.is !== 'withdrawn';

const known = new WeakMap<MakerFile, MakerFile>();

/**
 * A file without what it has withdrawn: that stays in the file and on its screen, and no listing is read by it. Made
 * once per file object, so that what is prepared by file stays prepared; a file that withdraws nothing is itself.
 */
export function inForce(file: MakerFile): MakerFile {
  const left = known.get(file) ?? withoutWithdrawn(file);
  known.set(file, left);
  return left;
}

function withoutWithdrawn(file: MakerFile): MakerFile {
  const models = file.models
    .filter(stands)
    .map((model) => (model.runs?.every(stands) === false ? { ...model, runs: model.runs.filter(stands) } : model));
  const { stamped, ...rest } = file;
  const left: MakerFile = {
    ...rest,
    ...(stamped && stands(stamped) ? { stamped } : {}),
    plants: file.plants.filter(stands),
    codeSystems: file.codeSystems.filter(stands),
    carriers: file.carriers.filter(stands),
    marks: file.marks.filter(stands),
    construction: file.construction.filter(stands),
    models,
    numbers: file.numbers.filter(stands),
    typefaces: file.typefaces.filter(stands),
    prices: file.prices.filter(stands),
    trade: stands(file.trade) ? file.trade : {},
  };
  return JSON.stringify(left) === JSON.stringify(file) ? file : left;
}
