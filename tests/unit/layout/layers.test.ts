import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { limits, order, violationsOf } from './layer-rules';
import { filesUnder, parseFile } from './source-files';

const files = [...filesUnder('src'), ...filesUnder('entrypoints')];

describe('layers', () => {
  it('hold in the source', () => {
    expect(files.length).toBeGreaterThan(300);
    expect(violationsOf(files)).toEqual([]);
  });

  it('rest on nothing of the tests', () => {
    const onTests = files.filter((file) => parseFile(file).imports.some(({ target }) => /(^|\/)tests\//.test(target)));
    expect(onTests.map(({ path }) => path)).toEqual([]);
  });

  it('are those of the table in DEVELOPERS.md', () => {
    const text = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');
    const table = text.slice(text.indexOf('| folder | does | may not |'), text.indexOf('`tests/unit/layout/layers'));
    const folders = [...table.matchAll(/^\| (`[^|]+`) \|/gm)].flatMap(([, cell]) =>
      [...(cell as string).matchAll(/`([a-z]+)`/g)].map(([, name]) => name),
    );
    expect([...folders].sort()).toEqual([...order].sort());
    expect(Object.keys(limits).sort()).toEqual([...order].sort());
  });
});

/** For each line of the table, what breaks it and what is then said: a rule that nothing can break holds nothing. */
const planted: [line: string, path: string, code: string, said: string][] = [
  [
    'words know no stage',
    'src/span/x.ts',
    "import type { Claim } from '../claim/types';",
    'src/span/x.ts knows claim/types',
  ],
  ['a problem knows no stage', 'src/problem/x.ts', "import '../photo';", 'src/problem/x.ts knows photo'],
  ['a source knows no stage', 'src/source/x.ts', "import '../check';", 'src/source/x.ts knows check'],
  ['a place knows no stage', 'src/place/x.ts', "export { a } from '../mark';", 'src/place/x.ts knows mark'],
  ['a text reader uses no zod', 'src/text/x.ts', "import * as z from 'zod';", 'src/text/x.ts reaches zod'],
  ['a text reader does not judge', 'src/text/x.ts', "import '../check';", 'src/text/x.ts knows check'],
  [
    'a listing uses no zod at run time',
    'src/listing/x.ts',
    "import * as z from 'zod';",
    'src/listing/x.ts reaches zod',
  ],
  [
    'a listing uses no zod through its own schemas',
    'src/listing/page/x.ts',
    "import { priceSchema } from '../types';",
    'src/listing/page/x.ts > src/listing/types reaches zod',
  ],
  [
    'a listing uses no zod through another folder',
    'src/listing/x.ts',
    "import { sourceSchema } from '../source';",
    'src/listing/x.ts > src/source/index reaches zod',
  ],
  ['a listing does not judge', 'src/listing/x.ts', "import '../check';", 'src/listing/x.ts knows check'],
  [
    'a listing keeps nothing',
    'src/listing/x.ts',
    "localStorage.setItem('a', 'b');",
    'src/listing/x.ts uses localStorage',
  ],
  [
    'a photo knows no stamp',
    'src/photo/x.ts',
    "import type { Lattice } from '../stamp/types';",
    'src/photo/x.ts knows stamp/types',
  ],
  [
    'a stamp knows no code systems',
    'src/stamp/x.ts',
    "import type { Reading } from '../code/types';",
    'src/stamp/x.ts knows code/types',
  ],
  [
    'a stamp knows no makers',
    'src/stamp/x.ts',
    "import type { MakerFile } from '../maker/types';",
    'src/stamp/x.ts knows maker/types',
  ],
  [
    'a code knows not where its text came from',
    'src/code/x.ts',
    "import type { Listing } from '../listing/types';",
    'src/code/x.ts knows listing/types',
  ],
  [
    'a mark contradicts nothing',
    'src/mark/x.ts',
    "export const a = { kind: 'contradiction' };",
    'src/mark/x.ts says contradiction',
  ],
  [
    'a mark knows no findings',
    'src/mark/x.ts',
    "import type { Finding } from '../check/types';",
    'src/mark/x.ts knows check/types',
  ],
  [
    'a maker file holds no expressions',
    'src/maker/x.ts',
    'export const a = (b: string) => new RegExp(b);',
    'src/maker/x.ts uses RegExp',
  ],
  [
    'a maker file holds no code',
    'src/maker/x.ts',
    'export const a = (b: string) => new Function(b);',
    'src/maker/x.ts uses Function',
  ],
  ['a page that tells keeps nothing', 'src/take/x.ts', 'localStorage.clear();', 'src/take/x.ts uses localStorage'],
  [
    'a page that tells is no case',
    'src/take/x.ts',
    "import type { Case } from '../case/types';",
    'src/take/x.ts knows case/types',
  ],
  [
    'a claim weighs nothing',
    'src/claim/x.ts',
    "import { reason } from '../evidence';",
    'src/claim/x.ts knows evidence',
  ],
  [
    'evidence knows no checks',
    'src/evidence/x.ts',
    "import type { Finding } from '../check/types';",
    'src/evidence/x.ts knows check/types',
  ],
  [
    'a check reads no page',
    'src/check/x.ts',
    "import { readListing } from '../listing';",
    'src/check/x.ts runs listing',
  ],
  ['a check folds no words', 'src/check/x.ts', "import { foldWords } from '../text';", 'src/check/x.ts runs text'],
  [
    'a check holds no list of words',
    'src/check/x.ts',
    "export const words = { en: ['mirror quality', 'replica'] };",
    'src/check/x.ts lists mirror quality',
  ],
  [
    'a check knows no negation',
    'src/check/x.ts',
    'export const no = /(?:nicht|kein|keine)\\s/u;',
    'src/check/x.ts lists /(?:nicht|kein|keine)\\s/',
  ],
  [
    'a check holds no date against another',
    'src/check/x.ts',
    "import { spansMeet } from '../span';",
    'src/check/x.ts takes spansMeet of span',
  ],
  [
    'a check holds no date against another by all of a folder',
    'src/check/x.ts',
    "import * as span from '../span';",
    'src/check/x.ts takes * of span',
  ],
  [
    'a computed fact holds no country against another',
    'src/check/fact/x.ts',
    "import { placesAgree } from '../../place';",
    'src/check/fact/x.ts takes placesAgree of place',
  ],
  ['a check counts no days', 'src/check/x.ts', "Date.parse('2026-01-15');", 'src/check/x.ts uses Date'],
  ['a check reads no photo', 'src/check/x.ts', "import { hashOf } from '../photo';", 'src/check/x.ts runs photo'],
  [
    'a question invents no findings',
    'src/question/x.ts',
    "export const a = { kind: 'doubt' };",
    'src/question/x.ts says doubt',
  ],
  [
    'a question runs no checks',
    'src/question/x.ts',
    "import { runChecks } from '../check';",
    'src/question/x.ts runs check',
  ],
  [
    'a case holds no date against another',
    'src/case/x.ts',
    "import { spansMeet } from '../span';",
    'src/case/x.ts takes spansMeet of span',
  ],
  ['a case touches no browser', 'src/case/x.ts', 'chrome.tabs.query({});', 'src/case/x.ts calls chrome'],
  ['a case touches no document', 'src/case/x.ts', "document.querySelector('a');", 'src/case/x.ts uses document'],
  ['words decide nothing', 'src/words/x.ts', "import { runChecks } from '../check';", 'src/words/x.ts runs check'],
  [
    'the watch list changes no case',
    'src/watch/x.ts',
    "import { findClaims } from '../claim';",
    'src/watch/x.ts runs claim',
  ],
  [
    'the browser’s own room knows no stage',
    'src/browser/x.ts',
    "import { openWatchList } from '../watch';",
    'src/browser/x.ts knows watch',
  ],
  [
    'messages know no reader',
    'src/message/x.ts',
    "import { a } from '../reader/host';",
    'src/message/x.ts runs upwards to reader/host',
  ],
  ['stores hold no rules', 'src/store/x.ts', "import { reason } from '../evidence';", 'src/store/x.ts runs evidence'],
  [
    'readers hold no rules',
    'src/reader/x.ts',
    "import { reason } from '../evidence';",
    'src/reader/x.ts runs evidence',
  ],
  ['the screens hold no rules', 'src/ui/x.ts', "import { marks } from '../mark';", 'src/ui/x.ts runs mark'],
  ['the screens define no checks', 'src/ui/x.ts', 'export default defineCheck({});', 'src/ui/x.ts uses defineCheck'],
  [
    'entry points hold no rules',
    'entrypoints/x.ts',
    "import { buildCase } from '../src/case';",
    'entrypoints/x.ts runs case',
  ],
  [
    'what the build adds runs in no extension',
    'src/reader/x.ts',
    "import { licences } from '../packaging';",
    'src/reader/x.ts runs upwards to packaging',
  ],
  [
    'what the build adds knows no stage',
    'src/packaging/x.ts',
    "import { readListing } from '../listing';",
    'src/packaging/x.ts knows listing',
  ],
  ['commands take the same way', 'src/cli/x.ts', "import { findClaims } from '../claim';", 'src/cli/x.ts runs claim'],
  [
    'commands are no extension',
    'src/cli/x.ts',
    "import { send } from '../message/send';",
    'src/cli/x.ts knows message/send',
  ],
  ['imports run downwards', 'src/mark/x.ts', "import { a } from '../maker';", 'src/mark/x.ts knows maker'],
  [
    'imports run downwards within the core',
    'src/code/x.ts',
    "import { a } from '../maker';",
    'src/code/x.ts runs upwards to maker',
  ],
  [
    'a folder has one door',
    'src/case/x.ts',
    "import { a } from '../evidence/reason';",
    'src/case/x.ts enters evidence/reason by no door',
  ],
  [
    'the core runs in any place',
    'src/span/x.ts',
    "import { readFileSync } from 'node:fs';",
    'src/span/x.ts imports node:fs',
  ],
  ['the core knows no screens', 'src/check/x.ts', "import { h } from 'preact';", 'src/check/x.ts imports preact'],
];

describe('the layer test itself', () => {
  for (const [line, path, code, said] of planted)
    it(`fails when broken: ${line}`, () => {
      expect(violationsOf([...files.filter((file) => file.path !== path), { path, code }])).toContain(said);
    });

  it('breaks every folder of the table at least once', () => {
    const broken = new Set(
      planted.map(([, path]) => (path.startsWith('entrypoints') ? 'entrypoints' : path.split('/')[1])),
    );
    expect(order.filter((folder) => !broken.has(folder))).toEqual([]);
  });

  it('takes no type for a use, and no comment for a call', () => {
    const file = {
      path: 'src/listing/x.ts',
      code: "/* localStorage.clear() */ import type * as z from 'zod';\nimport type { Listing } from './types';\nexport type A = z.ZodType<Listing>;",
    };
    expect(violationsOf([...files, file])).toEqual([]);
  });
});
