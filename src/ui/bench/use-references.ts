import { useEffect, useState } from 'preact/hooks';
import type { Case } from '../../case';
import { type MakerFile, makersFor, plainName } from '../../maker';
import { finishedMakers } from '../../store/maker-files';
import { type KeptLettering, listingKey } from '../../watch';
import { inWatchList } from '../in-watch-list';

/** What lines of characters of the case's maker there are to compare with. */
export interface References {
  /** Measured by the buyer in other cases of this maker. */
  lines: readonly KeptLettering[];
  typefaces: MakerFile['typefaces'];
}
const none: References = { lines: [], typefaces: [] };

/** The references of a case whose maker is known; none until they are read. */
export function useReferences({ maker, listing }: Case): References {
  const [found, setFound] = useState<References>(none);
  useEffect(() => {
    setFound(none);
    if (maker === null) return;
    let current = true;
    const isOurs = (name: string) => plainName(name) === plainName(maker);
    Promise.all([inWatchList((list) => list.lettering(listingKey(listing.url))), finishedMakers()]).then(
      ([lines, files]) => {
        if (!current) return;
        const file = makersFor(listing.url, files).find((one) => isOurs(one.maker));
        setFound({
          lines: lines.ok ? lines.value.filter((line) => line.maker !== null && isOurs(line.maker)) : [],
          typefaces: file?.typefaces ?? [],
        });
      },
    );
    return () => {
      current = false;
    };
  }, [maker, listing.url]);
  return found;
}
