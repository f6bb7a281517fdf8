import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** A photograph of a public repository: where it is to lie, and where it is from. */
interface Listed {
  file: string;
  source: string;
  commit: string;
  path: string;
}

/**
 * Writes listed photographs from bare mirrors of their repositories, MIRRORS/owner+name/repo being a repository each,
 * as the arguments of the command name them; says which mirrors are missing.
 */
export async function fromMirrors<Photo extends Listed>(
  photos: readonly Photo[],
  write: (photo: Photo, bytes: Buffer, target: string) => void | Promise<void>,
): Promise<void> {
  const [mirrors, folder] = process.argv.slice(2);
  if (mirrors === undefined || folder === undefined) throw new Error('usage: MIRRORS FOLDER');
  const missing = new Set<string>();
  for (const photo of photos) {
    const repository = join(mirrors, photo.source.replace('/', '+'), 'repo');
    if (!existsSync(repository)) {
      missing.add(photo.source);
      continue;
    }
    const shown = ['-C', repository, 'show', `${photo.commit}:${photo.path}`];
    const bytes = execFileSync('git', shown, { maxBuffer: 1 << 28 });
    const target = join(folder, photo.file);
    mkdirSync(dirname(target), { recursive: true });
    await write(photo, bytes, target);
  }
  for (const source of missing) console.log(`no mirror of ${source}`);
}
