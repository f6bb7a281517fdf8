import type { FindingCatalogue } from '../../finding-words';
import { changes } from './changes';
import { photos } from './photos';

export const findings: FindingCatalogue = { ...changes, ...photos };
