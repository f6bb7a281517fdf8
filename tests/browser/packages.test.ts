import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const output = join(root, '.output');

const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .sort();

const licenceTexts = /^(heif\/)?(LICENSE|THIRD-PARTY-LICENSES)\.txt$/;

/** Every host name in shipped code, and why it is there. Nothing of it is ever asked for anything. */
const namedHosts: Record<string, string> = {
  'www.w3.org': 'names of SVG, MathML and XHTML, by which elements are made',
  'json-schema.org': 'names of the versions of JSON Schema',
  'schema.org': 'name of the vocabulary in pages',
  'attic-arcade.example': 'the invented marketplace of the demo listing, which comes with the extension',
  'by-hand.invalid': 'where a code or photo came from that no listing shows',
  'purl.org': 'name of a vocabulary in pages',
  'web.dev': "a sentence in the net runtime's warning on threads",
  'rolldown.rs': "a sentence in the bundler's error for modules that are not there",
};
/** In the net runtime's WASM: descriptions of operators, which it carries as text. */
const namedInNets: Record<string, string> = {
  'arxiv.org': 'an operator’s paper',
  'ieeexplore.ieee.org': 'an operator’s paper',
  'docs.nvidia.com': 'a description of a matrix’s order',
  'github.com': 'a description of the form of patterns',
  'tinyurl.com': 'a description of an operator',
};

/** Packages that code for the browser imports, as the sources say it: what a person would look for in the package. */
function importedPackages(): string[] {
  const files = [
    ...filesUnder(join(root, 'src')),
    ...filesUnder(join(root, 'entrypoints')).map((one) => `../entrypoints/${one}`),
  ];
  const shipped = files.filter((file) => /\.tsx?$/.test(file) && !/^(cli|packaging|stamp\/training)\//.test(file));
  const names = shipped.flatMap((file) =>
    [
      ...readFileSync(join(root, 'src', file), 'utf8').matchAll(
        /(?:^|\n)(?:import|export)(?!\s+type\b)[^'";]*from '([^'.][^']*)'|import\('([^'.][^']*)'\)/g,
      ),
    ].map((match) =>
      (match[1] ?? match[2] ?? '')
        .split('/')
        .slice(0, match[1]?.startsWith('@') ? 2 : 1)
        .join('/'),
    ),
  );
  return [...new Set(names)].filter((name) => !name.startsWith('node:'));
}

/** What is inside the print engine's ready-made worker, as its map tells. */
function packagesInWorker(): string[] {
  const map = readFileSync(join(root, 'node_modules/tesseract.js/dist/worker.min.js.map'), 'utf8');
  const found = (JSON.parse(map).sources as string[]).flatMap(
    (source) => /node_modules\/([^/]+)/.exec(source)?.[1] ?? [],
  );
  return [...new Set(found)];
}

describe.each(['chrome-mv3', 'firefox-mv3'])('the package for %s', (target) => {
  const folder = join(output, target);
  const files = filesUnder(folder);
  const read = (file: string) => readFileSync(join(folder, file), 'latin1');
  const licences = readFileSync(join(folder, 'THIRD-PARTY-LICENSES.txt'), 'utf8');

  it('holds our own licence, and the licence of every package in it, with its whole text', () => {
    expect(readFileSync(join(folder, 'LICENSE.txt'), 'utf8')).toBe(readFileSync(join(root, 'LICENSE'), 'utf8'));
    const imported = importedPackages();
    expect(imported).toEqual(expect.arrayContaining(['preact', 'zod', 'tesseract.js', 'onnxruntime-web', 'ipaddr.js']));
    const inWorker = packagesInWorker();
    expect(inWorker).toEqual(expect.arrayContaining(['zlibjs', 'buffer', 'regenerator-runtime']));
    const parts = ['tesseract.js-core', '@tesseract.js-data/eng', ...imported, ...inWorker];
    for (const name of parts) {
      const titled = new RegExp(`\\n${name.replaceAll('.', '\\.')} (\\d[^\\n]* )?\\([A-Z][^\\n]*\\)\\n-{78}\\n`);
      expect(licences, `${name} has no licence in the package`).toMatch(titled);
      const home = join(root, 'node_modules', name);
      const texts = existsSync(home) ? readdirSync(home).filter((file) => /^(licen[cs]e|copying)/i.test(file)) : [];
      for (const text of texts) expect(licences).toContain(readFileSync(join(home, text), 'utf8').trim());
    }
  });

  it('holds the licences of what is compiled into its WASM', () => {
    const words = {
      leptonica: 'Copyright (C) 2001 Leptonica',
      libjpeg: 'this software is based in part on the work of the Independent JPEG Group',
      libpng: 'The PNG Reference Library Authors',
      libtiff: 'Sam Leffler',
      zlib: 'Jean-loup Gailly and Mark Adler',
      musl: 'Rich Felker',
      protobuf: 'Copyright 2008 Google Inc.',
      libde265: 'Dirk Farin',
    };
    for (const text of Object.values(words)) expect(licences.toLowerCase()).toContain(text.toLowerCase());
  });

  it('names no host but those that are explained here', () => {
    const found = files
      .filter((file) => !licenceTexts.test(file))
      .flatMap((file) =>
        [...read(file).matchAll(/(?:https?|wss?):\/\/([a-z\d][a-z\d.-]*)/gi)].flatMap(([, host = '']) => {
          const known = { ...namedHosts, ...(/^ort\/.*\.wasm$/.test(file) && namedInNets) };
          return host in known ? [] : [`${file}: ${host}`];
        }),
      );
    expect(found).toEqual([]);
    const networks = /jsdelivr|unpkg|cdnjs|esm\.sh|skypack|projectnaptha/;
    expect(files.filter((file) => !licenceTexts.test(file) && networks.test(read(file)))).toEqual([]);
  });

  it('points to no file that is not in it', () => {
    const pointed = files
      .filter((file) => /\.(m?js|css|html)$/.test(file))
      .flatMap((file) =>
        [
          ...read(file).matchAll(
            /sourceMappingURL=([\w./-]+)|license information please see ([\w./-]+)|(?:src|href)="\/([^"]+)"/gi,
          ),
        ].map(([, map, text, asset]) => ({ file, to: map ?? text ?? asset ?? '' })),
      );
    expect(pointed.filter(({ to }) => to === 'THIRD-PARTY-LICENSES.txt')).not.toEqual([]);
    const missing = pointed.filter(
      ({ file, to }) => ![to, join(dirname(file), to)].some((path) => files.includes(path)),
    );
    expect(missing).toEqual([]);
  });
});

describe('the files for the stores', () => {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const archive = (name: string) => {
    const file = join(output, `tellstamp-${version}-${name}.zip`);
    if (!existsSync(file)) throw new Error(`${file} is missing: run "npm run zip" first.`);
    return unzipSync(readFileSync(file));
  };

  it.each([
    ['chrome', 'chrome-mv3'],
    ['firefox', 'firefox-mv3'],
  ])('for %s holds what was built, and nothing else', (name, target) => {
    const packed = archive(name);
    expect(Object.keys(packed).sort()).toEqual(filesUnder(join(output, target)));
    for (const [file, bytes] of Object.entries(packed))
      expect(readFileSync(join(output, target, file)).equals(bytes), file).toBe(true);
  });

  it('as sources hold no weights that only training reads', () => {
    expect(Object.keys(archive('sources')).filter((file) => file.endsWith('.pt'))).toEqual([]);
  });

  it('as sources build the very same package for Firefox', () => {
    const folder = mkdtempSync(join(tmpdir(), 'tellstamp-sources-'));
    try {
      for (const [file, bytes] of Object.entries(archive('sources'))) {
        mkdirSync(dirname(join(folder, file)), { recursive: true });
        writeFileSync(join(folder, file), bytes);
      }
      symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
      // The test runner's mode is not the build's.
      const { NODE_ENV: _, ...env } = process.env;
      const command = ['wxt', 'build', '-b', 'firefox', '--mv3'];
      const built = spawnSync('npx', command, { cwd: folder, encoding: 'utf8', env: env as NodeJS.ProcessEnv });
      expect(built.status, built.stdout + built.stderr).toBe(0);
      const [ours, theirs] = [join(output, 'firefox-mv3'), join(folder, '.output/firefox-mv3')];
      expect(filesUnder(theirs)).toEqual(filesUnder(ours));
      const differing = filesUnder(ours).filter(
        (file) => !readFileSync(join(ours, file)).equals(readFileSync(join(theirs, file))),
      );
      expect(differing).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
