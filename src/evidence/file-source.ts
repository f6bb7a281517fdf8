import type { MakerFile } from '../maker/types';
import type { MakerPart, Source } from '../source';

/** A maker file as the source of a fact, with the sources that it gives; an invented one is always called so. */
export const fileSource = (
  maker: Pick<MakerFile, 'maker' | 'invented'> | null,
  sources: readonly string[],
  part: MakerPart | null = null,
): Source => ({
  kind: 'maker-file',
  maker: maker?.maker ?? null,
  invented: maker?.invented ?? false,
  part,
  sources: [...sources],
});
