import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { listedPhotos } from './real';

/**
 * Rebuilds the real photographs from bare mirrors of the repositories that `real-photos.json` names:
 * `npx tsx tests/bench/stamp/collect-real.ts MIRRORS FOLDER`, MIRRORS/owner+name/repo being a repository each. Most
 * state no licence, so none is kept here, and none trains.
 */
const [mirrors, folder] = process.argv.slice(2);
if (mirrors === undefined || folder === undefined) throw new Error('usage: collect-real.ts MIRRORS FOLDER');
const missing = new Set<string>();
for (const { file, source, commit, path, cut } of listedPhotos()) {
  const repository = join(mirrors, source.replace('/', '+'), 'repo');
  if (!existsSync(repository)) {
    missing.add(source);
    continue;
  }
  const bytes = execFileSync('git', ['-C', repository, 'show', `${commit}:${path}`], { maxBuffer: 1 << 28 });
  const target = join(folder, file);
  mkdirSync(dirname(target), { recursive: true });
  if (cut === undefined) writeFileSync(target, bytes);
  else {
    const [left, top, right, bottom] = cut;
    await sharp(bytes)
      .extract({ left, top, width: right - left, height: bottom - top })
      .png()
      .toFile(target);
  }
}
for (const source of missing) console.log(`no mirror of ${source}`);
