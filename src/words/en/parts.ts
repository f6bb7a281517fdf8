import type { PartNames } from '../parts';

export const parts: PartNames = {
  body: 'the front',
  lining: 'the inside',
  stitching: 'the stitching',
  trim: 'the trim',
  hardware: 'the metal parts',
  zip: 'the zip',
  handle: 'the handles',
  strap: 'the strap',
  base: 'the base',
  edge: 'the corners and edges',
  tab: 'the handle tabs',
  lock: 'the lock',
  'dust-bag': 'the dust bag',
  pattern: 'the back',
};
