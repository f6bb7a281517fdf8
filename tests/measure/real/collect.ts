import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { fromMirrors } from '../../bench/from-mirrors';
import { realPhotos } from './photos';

/**
 * Rebuilds the real photographs from bare mirrors of the repositories that `photos.json` names:
 * `npx tsx tests/measure/real/collect.ts MIRRORS FOLDER`. They are measured on, and none is kept here.
 */
await fromMirrors(realPhotos(), ({ path, sha256 }, bytes, target) => {
  if (createHash('sha256').update(bytes).digest('hex') !== sha256) throw new Error(`${path} is another file`);
  writeFileSync(target, bytes);
});
