import type { MakerFile } from '../../src/maker/types';

/** A maker file that says nothing. */
export const blankMaker: MakerFile = {
  format: 2,
  maker: 'Ondrasse',
  aliases: [],
  sources: [],
  plants: [],
  codeSystems: [],
  carriers: [],
  marks: [],
  parts: [],
  construction: [],
  models: [],
  numbers: [],
  typefaces: [],
  prices: [],
  trade: {},
};
