import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { realPhotos } from './photos';

/**
 * Rebuilds the real photographs from bare mirrors of the repositories that `photos.json` names:
 * `npx tsx tests/measure/real/collect.ts MIRRORS FOLDER`, MIRRORS/owner+name/repo being a repository each. They are
 * measured on, and none is kept here.
 */
const [mirrors, folder] = process.argv.slice(2);
if (mirrors === undefined || folder === undefined) throw new Error('usage: collect.ts MIRRORS FOLDER');
const missing = new Set<string>();
for (const { file, source, commit, path, sha256 } of realPhotos()) {
  const repository = join(mirrors, source.replace('/', '+'), 'repo');
  if (!existsSync(repository)) {
    missing.add(source);
    continue;
  }
  const bytes = execFileSync('git', ['-C', repository, 'show', `${commit}:${path}`], { maxBuffer: 1 << 28 });
  if (createHash('sha256').update(bytes).digest('hex') !== sha256) throw new Error(`${path} is another file`);
  const target = join(folder, file);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, bytes);
}
for (const source of missing) console.log(`no mirror of ${source}`);
