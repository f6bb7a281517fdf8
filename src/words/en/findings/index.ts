import type { FindingCatalogue } from '../../finding-words';
import { changes } from './changes';
import { code } from './code';
import { materials } from './materials';
import { photos } from './photos';
import { place } from './place';
import { price } from './price';
import { seller } from './seller';
import { size } from './size';
import { text } from './text';
import { time } from './time';

export const findings: FindingCatalogue = {
  ...changes,
  ...code,
  ...materials,
  ...photos,
  ...place,
  ...price,
  ...seller,
  ...size,
  ...text,
  ...time,
};
