import { type KnownPartNames, type PartNames, partNamer } from '../parts';

/** The parts themselves, as a question about one of them names it. */
export const namedParts: PartNames = {
  body: 'the outside',
  lining: 'the lining',
  stitching: 'the stitching',
  trim: 'the trim',
  hardware: 'the metal parts',
  zip: 'the zip',
  handle: 'the handles',
  strap: 'the strap',
  base: 'the base',
  edge: 'the edges',
  tab: 'the handle tabs',
  lock: 'the lock',
  'dust-bag': 'the dust bag',
  pattern: 'the pattern',
};

/** What a buyer looks at: the outside of a bag is seen from its front and its back. */
const looked: KnownPartNames = {
  ...namedParts,
  body: 'the front',
  lining: 'the inside',
  edge: 'the corners and edges',
  pattern: 'the back',
  clasp: 'the clasp',
  chain: 'the chain',
  feet: 'the feet',
  rivet: 'the rivets',
  screw: 'the screws',
  logo: 'the logo',
  label: 'the label',
  pocket: 'the pocket',
  card: 'the card',
};
export const parts = partNamer(looked);

/** The parts without an article: "lining of olive twill". */
export const bareParts: PartNames = {
  body: 'body',
  lining: 'lining',
  stitching: 'stitching',
  trim: 'trim',
  hardware: 'hardware',
  zip: 'zip',
  handle: 'handle',
  strap: 'strap',
  base: 'base',
  edge: 'edge',
  tab: 'handle tab',
  lock: 'lock',
  'dust-bag': 'dust bag',
  pattern: 'pattern',
};

/** Every part that a maker file can speak of without words of its own. */
export const fileParts: KnownPartNames = {
  ...bareParts,
  clasp: 'clasp',
  chain: 'chain',
  feet: 'feet',
  rivet: 'rivets',
  screw: 'screws',
  logo: 'logo',
  label: 'label',
  pocket: 'pocket',
  card: 'card',
};

/** A part of a maker file, as a question about it names it. */
export const namedPart = partNamer({ ...looked, ...namedParts });

/** A part as a maker file names it. */
export const filePart = partNamer(fileParts);
