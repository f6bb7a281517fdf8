import { writeFileSync } from 'node:fs';
import sharp from 'sharp';
import { fromMirrors } from '../from-mirrors';
import { listedPhotos } from './real';

/**
 * Rebuilds the real photographs from bare mirrors of the repositories that `real-photos.json` names:
 * `npx tsx tests/bench/stamp/collect-real.ts MIRRORS FOLDER`. Most state no licence, so none is kept here, and none trains.
 */
await fromMirrors(listedPhotos(), async ({ cut }, bytes, target) => {
  if (cut === undefined) return writeFileSync(target, bytes);
  const [left, top, right, bottom] = cut;
  await sharp(bytes)
    .extract({ left, top, width: right - left, height: bottom - top })
    .png()
    .toFile(target);
});
