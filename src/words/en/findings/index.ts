import type { FindingCatalogue } from '../../finding-words';
import { changes } from './changes';
import { photos } from './photos';
import { price } from './price';
import { size } from './size';
import { text } from './text';

export const findings: FindingCatalogue = { ...changes, ...photos, ...price, ...size, ...text };
