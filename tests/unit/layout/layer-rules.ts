import { dirname, join } from 'node:path/posix';
import { type Import, nodesOf, parseFile, type SourceFile, type SyntaxNode } from './source-files';

/** A folder may import folders of a lower row, and those of its own row that stand to its left. */
const rows = [
  ['problem', 'source', 'span', 'place'],
  ['text'],
  ['photo', 'listing', 'stamp', 'code', 'mark'],
  ['maker', 'claim'],
  ['take'],
  ['evidence'],
  ['check'],
  ['question'],
  ['case'],
  ['words'],
  ['watch'],
  ['browser', 'message', 'store', 'reader', 'ui'],
  ['cli', 'entrypoints', 'packaging'],
];
export const order = rows.flat();
const core = order.slice(0, order.indexOf('browser'));
const above = (folder: string) => order.slice(order.indexOf(folder) + 1);
const stages = above('place');
/** The rooms of the extension around its screens. */
const rooms = ['browser', 'message', 'store', 'reader'];

/** Schemas and types are the shared words: a folder may use those of any other unless its limits say otherwise. */
const isTypesFile = (path: string) => /(^|\/)(types|schema|[a-z-]+-types)$/.test(path);

/** What one folder may not do, beyond running upwards. The words are those of the table in DEVELOPERS.md. */
interface Limits {
  /** Folders of which it may not even know the types. */
  knows?: readonly string[];
  /** Folders of which it may know the types and run nothing. */
  runs?: readonly string[];
  /** A file that `runs` does not bind, because no screen ever loads it. */
  unbound?: string;
  /** Packages that nothing it runs may reach, through whatever files, but for its own schemas. */
  reaches?: readonly string[];
  /** Global names that it may not use. */
  names?: readonly string[];
  /** Names of another folder that it may not take: what only a third folder does. */
  takes?: Readonly<Record<string, readonly string[]>>;
  /** Literals that only a folder of another task writes. */
  says?: readonly string[];
  /** Whether it may hold no lists of what people write, and no patterns of their denials: `text` reads words. */
  quotesNobody?: true;
}

const kindsOfFinding = ['contradiction', 'doubt', 'gap'];
const keepers = ['indexedDB', 'localStorage', 'sessionStorage', 'caches', 'cookieStore'];
const inRoom = {
  runs: ['claim', 'mark', 'evidence', 'check', 'question', 'case'],
  names: ['defineCheck', 'defineMark'],
};
/** Whatever holds one span against another; what makes, names or moves a single one is anybody's. */
const comparesSpans = [
  'meetSpans',
  'spansMeet',
  'spanHolds',
  'meetSets',
  'meetAll',
  'unionOf',
  'complementOf',
  'widenSpan',
];
const runsText = ['RegExp', 'Function', 'eval'];

export const limits: Record<string, Limits> = {
  problem: { knows: stages },
  source: { knows: stages },
  span: { knows: stages },
  place: { knows: stages },
  photo: { knows: stages.filter((stage) => stage !== 'photo') },
  text: { knows: ['photo', 'stamp', ...above('stamp')], reaches: ['zod', 'idb'], names: keepers },
  listing: { knows: ['photo', 'stamp', ...above('stamp')], reaches: ['zod', 'idb'], names: keepers },
  stamp: { knows: ['listing', ...above('stamp')] },
  code: { knows: ['photo', 'listing', 'mark', 'claim', ...above('claim')] },
  mark: { knows: ['stamp', 'code', ...above('mark')], says: kindsOfFinding },
  maker: { knows: above('claim'), runs: ['listing', 'stamp', 'mark', 'claim'], names: runsText },
  claim: { knows: above('claim'), says: kindsOfFinding },
  take: { knows: ['photo', 'stamp', 'mark', ...above('take')], runs: ['claim'], names: keepers },
  evidence: { knows: above('evidence'), runs: ['photo', 'listing', 'stamp', 'code', 'mark', 'claim'] },
  check: {
    knows: above('check'),
    runs: ['text', 'photo', 'listing', 'stamp'],
    takes: { span: [...comparesSpans, '*'], place: ['placesAgree', 'presentPlaces', '*'] },
    // Whoever counts days compares two of them.
    names: ['Date'],
    quotesNobody: true,
  },
  question: {
    knows: above('question'),
    runs: ['check', 'evidence', 'listing', 'photo', 'stamp'],
    says: kindsOfFinding,
  },
  case: { knows: above('case'), takes: { span: comparesSpans }, names: ['document', 'window', ...keepers] },
  words: {
    // What an import did is told in its own words.
    knows: above('watch'),
    runs: ['check', 'evidence', 'case', 'question'],
    // Writes docs/checks.md from what the checks say of themselves.
    unbound: 'src/words/checks-document.ts',
  },
  watch: {
    knows: above('watch'),
    runs: ['photo', 'stamp', 'code', 'mark', 'maker', 'claim', 'evidence', 'question'],
  },
  browser: { knows: stages.filter((stage) => stage !== 'browser'), ...inRoom },
  message: inRoom,
  store: inRoom,
  reader: inRoom,
  ui: { runs: ['claim', 'mark', 'listing', 'stamp'], names: ['defineCheck', 'defineMark'] },
  entrypoints: { runs: order.filter((folder) => ![...rooms, 'ui', 'listing', 'problem', 'words'].includes(folder)) },
  packaging: { knows: order.filter((folder) => folder !== 'packaging') },
  cli: { knows: [...rooms, 'ui', 'watch'], runs: ['claim', 'mark', 'evidence'] },
};

interface Crossing extends Import {
  file: string;
  folder: string;
  /** The imported file's path from `src`, without ending; null for a package. */
  path: string | null;
  to: string | null;
}

const folderOf = (path: string) => (path.startsWith('entrypoints/') ? 'entrypoints' : (path.split('/')[1] ?? ''));
const withoutEnding = (path: string) => path.replace(/\.tsx?$/, '');

function crossingsOf(file: SourceFile, imports: readonly Import[]): Crossing[] {
  return imports.map((one) => {
    const path = one.target.startsWith('.') ? withoutEnding(join(dirname(file.path), one.target)) : null;
    const inSource = path?.startsWith('src/') ? path.slice(4) : null;
    const to = inSource?.split('/')[0] ?? null;
    return { ...one, file: file.path, folder: folderOf(file.path), path: inSource, to };
  });
}

/**
 * Folders with a second door, for whom: the page takes single readers of words, so that its script stays small; generated files are made by
 * commands alone; the watch list compares addresses as the page does; and some folders have a door for each place
 * (page, worker, panel) that their parts run in.
 */
function isSecondDoor(folder: string, path: string): boolean {
  if (path.startsWith('text/')) return folder === 'listing';
  if (path === 'listing/tracking') return folder === 'watch';
  // The background loads two lines of a menu, and not every word of the screens.
  if (['words/menu', 'words/language'].includes(path)) return ['reader', 'store'].includes(folder);
  // How a hostile page is read stands in one place.
  if (path === 'listing/page/dom') return folder === 'take';
  if (path === 'words/checks-document' || path === 'maker/json-schema') return folder === 'cli';
  if (folder === 'entrypoints') return /^(browser|message|store|reader|ui)\//.test(path);
  if (['ui', ...rooms].includes(folder) && /^(browser|message|store|reader)\//.test(path)) return true;
  return ['cli', 'ui', ...rooms].includes(folder) && /^(stamp|listing|watch)\/[a-z-]+(\/index)?$/.test(path);
}

const isDoor = ({ folder, path, to }: Crossing) =>
  path === to || path === `${to}/index` || isTypesFile(path ?? '') || isSecondDoor(folder, path ?? '');

const isForCore = (target: string) => !/^(wxt|preact|@wxt-dev|webextension-polyfill|node:)/.test(target);

interface Words {
  names: Set<string>;
  texts: Set<string>;
  /** Lists of phrases and patterns of denials, as the file writes them. */
  quotes: string[];
}
const knownWords = new WeakMap<SyntaxNode, Words>();

/** Global names that a file uses, and texts that it writes. */
function wordsOf(program: SyntaxNode): Words {
  const known = knownWords.get(program) ?? readWords(program);
  knownWords.set(program, known);
  return known;
}

function readWords(program: SyntaxNode): Words {
  const [names, texts, quotes] = [new Set<string>(), new Set<string>(), [] as string[]];
  for (const node of nodesOf(program)) {
    if (node.type === 'MemberExpression' || node.type === 'CallExpression' || node.type === 'NewExpression') {
      const used = (node.object ?? node.callee) as SyntaxNode;
      if (used.type === 'Identifier') names.add(String(used.name));
    }
    // A value only: in a comparison or a type the word is read, not said.
    if (node.type === 'Property' && (node.value as SyntaxNode).type === 'Literal')
      texts.add(String((node.value as SyntaxNode).value));
    const quoted = quotedIn(node);
    if (quoted !== null) quotes.push(quoted);
  }
  return { names, texts, quotes };
}

/** A phrase has a blank in it, or letters that no name in the program has. */
const isPhrase = (text: unknown): text is string => typeof text === 'string' && /\p{L}\s\p{L}|[^\p{ASCII}]/u.test(text);
/** A pattern that looks for denials: "nicht|kein". */
const findsDenials = /(?:^|[(|:])(?:no|not|without|nicht|keine?|ohne|pas|sans|non|senza|sin|niet|geen|zonder)\|/u;

/** A list of phrases that people write, or a pattern of their denials; null for any other node. */
function quotedIn({ type, elements, regex }: SyntaxNode): string | null {
  if (type === 'ArrayExpression') {
    const values = (elements as (SyntaxNode | null)[]).map((one) => (one?.type === 'Literal' ? one.value : null));
    return values.filter(isPhrase).length > 0 && values.length > 1 ? String(values.find(isPhrase)) : null;
  }
  const pattern = type === 'Literal' && regex ? (regex as { pattern: string }).pattern : '';
  return findsDenials.test(pattern) ? `/${pattern}/` : null;
}

/** Everything in these files that the layers forbid, in words. */
export function violationsOf(files: readonly SourceFile[]): string[] {
  const parsed = files.map((file) => ({ file, ...parseFile(file) }));
  const crossings = parsed.flatMap(({ file, imports }) => crossingsOf(file, imports));
  const found: string[] = [];
  for (const one of crossings) {
    const { file, folder, target, typesOnly, path, to } = one;
    if (core.includes(folder) && path === null && !isForCore(target)) found.push(`${file} imports ${target}`);
    if (to === null || to === folder) continue;
    const { knows = [], runs = [], takes = {}, unbound } = limits[folder] ?? {};
    const taken = one.names.find((name) => takes[to]?.includes(name));
    if (taken !== undefined) found.push(`${file} takes ${taken} of ${path}`);
    if (knows.includes(to)) found.push(`${file} knows ${path}`);
    else if (runs.includes(to) && file !== unbound && !typesOnly && !isTypesFile(path ?? ''))
      found.push(`${file} runs ${path}`);
    else if (order.indexOf(to) > order.indexOf(folder) && !isTypesFile(path ?? ''))
      found.push(`${file} runs upwards to ${path}`);
    else if (!isDoor(one)) found.push(`${file} enters ${path} by no door`);
  }
  for (const { file, program } of parsed) {
    const { names: forbidden = [], says = [], quotesNobody } = limits[folderOf(file.path)] ?? {};
    const { names, texts, quotes } = wordsOf(program);
    if (core.includes(folderOf(file.path)))
      for (const name of ['chrome', 'browser']) if (names.has(name)) found.push(`${file.path} calls ${name}`);
    for (const name of forbidden) if (names.has(name)) found.push(`${file.path} uses ${name}`);
    for (const text of says) if (texts.has(text)) found.push(`${file.path} says ${text}`);
    if (quotesNobody) for (const quoted of quotes) found.push(`${file.path} lists ${quoted}`);
  }
  return [...found, ...packagesReached(parsed, crossings)];
}

/** Packages that a folder's files reach when they run, through any files; a folder's own schemas may reach them. */
function packagesReached(parsed: readonly { file: SourceFile }[], crossings: readonly Crossing[]): string[] {
  const running = crossings.filter(({ typesOnly }) => !typesOnly);
  const byFile = new Map<string, Crossing[]>();
  for (const one of running) {
    const file = withoutEnding(one.file);
    const others = byFile.get(file);
    if (others) others.push(one);
    else byFile.set(file, [one]);
  }
  const known = new Set(parsed.map(({ file }) => withoutEnding(file.path)));
  const fileOf = (path: string) => [`src/${path}`, `src/${path}/index`].find((one) => known.has(one)) ?? null;
  return parsed.flatMap(({ file }) => {
    const { reaches = [] } = limits[folderOf(file.path)] ?? {};
    const start = withoutEnding(file.path);
    if (reaches.length === 0 || isTypesFile(start)) return [];
    const way = new Map<string, string[]>([[start, []]]);
    for (const [at, steps] of way)
      for (const { target, path } of byFile.get(at) ?? []) {
        if (path === null && reaches.includes(target))
          return [`${[file.path, ...steps].join(' > ')} reaches ${target}`];
        const next = path === null ? null : fileOf(path);
        if (next !== null && !way.has(next)) way.set(next, [...steps, next]);
      }
    return [];
  });
}
