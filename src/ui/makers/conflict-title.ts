import type { Conflict, MakerFile } from '../../maker';
import { kit, partNamer, strings } from '../../words';

const words = strings.makers;

type List = Exclude<Conflict['group'], 'trade' | 'file'>;
const titles: { [L in List]: (entry: MakerFile[L][number]) => string } = {
  plants: ({ code, place }) => words.differs.plant(code, kit.place(place)),
  codeSystems: ({ id, name }) => words.differs.system(name ?? id),
  carriers: ({ kind, where }) => words.differs.carrier(words.carrierKinds[kind], where),
  marks: ({ texts }) => words.differs.mark(texts.join(', ')),
  parts: ({ id }) => words.differs.part(id),
  construction: ({ part, is }) => words.differs.construction(partName(part), is),
  models: ({ name }) => words.differs.model(name),
  numbers: ({ of, part }) => words.differs.number(kit.sentence(words.numberKinds[of]), partName(part)),
  typefaces: ({ looks }) => words.differs.typeface(looks),
  prices: ({ model, condition, year, currency }) =>
    words.differs.price(model ?? null, strings.claims.says.conditions[condition], year, currency),
};

/** A part of a file; one of the file's own is called by its own name. */
const partName = (part: string): string => partNamer(strings.parts)(part);

/** Which entry of a list two files differ in. */
export const entryTitle = (list: List, entry: unknown): string => kit.sentence(titles[list](entry as never));
