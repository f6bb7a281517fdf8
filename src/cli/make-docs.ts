import { mkdirSync, writeFileSync } from 'node:fs';
import { checks } from '../check';
import { checksDocument } from '../words/checks-document';

/** Writes the documents that are made from the code's own wording. */
const target = new URL('../../docs/checks.md', import.meta.url);
mkdirSync(new URL('.', target), { recursive: true });
writeFileSync(target, checksDocument(checks));
