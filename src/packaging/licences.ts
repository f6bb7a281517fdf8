import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { compiledIn, type KeptText, keptTexts } from './kept-licences';
import { fromPackage } from './packaged-files';

/** Names of the packages that a file's path runs through, the innermost last: `…/node_modules/zod/v4/index.js` → zod. */
const packageOf = (path: string): string | null =>
  [...path.matchAll(/node_modules\/((?:@[^/]+\/)?[^/]+)/g)].at(-1)?.[1] ?? null;

/** What bundlers write into bundles themselves. */
const writtenBy: readonly (readonly [RegExp, string])[] = [
  [/^\0rolldown\//, 'rolldown'],
  [/^\0vite\//, 'vite'],
];

/** Notes which packages' code goes into the bundles. One for all bundles of a build, its workers included. */
export function noteBundled(): { plugin: () => Plugin; packages: () => string[] } {
  const found = new Set<string>();
  const note = (id: string) => {
    const made = writtenBy.find(([pattern]) => pattern.test(id));
    for (const name of made ? [made[1]] : packagesIn(id.replace(/[?\0].*/s, ''))) found.add(name);
  };
  return {
    plugin: () => ({
      name: 'note-bundled',
      generateBundle(_, bundle) {
        for (const chunk of Object.values(bundle)) if (chunk.type === 'chunk') chunk.moduleIds.forEach(note);
      },
    }),
    packages: () => [...found],
  };
}

/** The package of a file, and those that are bundled in it already, as the map beside it tells. */
export function packagesIn(file: string): string[] {
  const own = packageOf(file);
  if (own === null) return [];
  const map = `${file}.map`;
  const sources: string[] = existsSync(map) ? JSON.parse(readFileSync(map, 'utf8')).sources : [];
  return [own, ...sources.flatMap((source) => packageOf(source) ?? [])];
}

/** The text of all licences of what the packages hold: each with its name, version, short name and whole text. */
export function thirdPartyTexts(packages: readonly string[]): string {
  const names = [...new Set(packages)].sort();
  const natives = names.flatMap((name) => compiledIn[name] ?? []);
  const parts = [...names.map(textOfPackage), ...natives.map(sectionOf)];
  return `Tellstamp contains the following works of others, each under its own licence. Tellstamp's own is in LICENSE.txt.\n${parts.join('')}`;
}

const section = (title: string, text: string) => `\n${'='.repeat(78)}\n${title}\n${'-'.repeat(78)}\n${text.trim()}\n`;

const sectionOf = (kept: KeptText) => section(`${kept.name} (${kept.licence})`, readKept(kept));

function textOfPackage(name: string): string {
  const folder = fromPackage(name);
  const kept = keptTexts[name];
  const manifest = join(folder, 'package.json');
  const { version = '', license = '' } = existsSync(manifest) ? JSON.parse(readFileSync(manifest, 'utf8')) : {};
  const files = existsSync(folder) ? readdirSync(folder).filter(isLicence).sort() : [];
  // Where a tool lists after its own licence those of its parts, only what it writes itself is in a bundle.
  const own = files.map((file) => readFileSync(join(folder, file), 'utf8').split('\n# Licenses of bundled')[0] ?? '');
  const texts = own.length > 0 ? own : kept ? [readKept(kept)] : [];
  if (texts.length === 0) throw new Error(`${name} is packaged, and no text of its licence was found`);
  return section(`${name} ${version} (${license || kept?.licence})`.replace('  ', ' '), texts.join('\n\n'));
}

const isLicence = (file: string) => /^(licen[cs]e|copying|notice)([.-].*)?$/i.test(file);

const readKept = ({ file }: KeptText) => readFileSync(resolve(import.meta.dirname, 'licences', file), 'utf8');
