import { useCallback } from 'preact/hooks';
import type { Case } from '../../case';
import { strings } from '../../words';
import { numberOf } from '../number-of';
import type { ByHand } from '../parts/by-hand';
import { useFocusWhen } from '../use-focus-when';
import { OpenedBench } from './OpenedBench';
import type { UseFileOf } from './SideBySide';
import { useShownAddress } from './use-file-address';

interface Props {
  kase: Case;
  photoId: string;
  file: string;
  byHand: ByHand;
  /** Addresses of the case's photos inside this document. */
  files: Readonly<Record<string, string>>;
  /** Opens it in a tab of its own; null where there is none. */
  onTab: (() => void) | null;
  onBack: () => void;
}

/** The bench in the place of the photo that was looked at. It takes the focus when it opens. */
export function BenchHere({ kase, photoId, file, files, byHand, onTab, onBack }: Props) {
  const useFileOf = useCallback<UseFileOf>(
    (other) => useShownAddress(other === null ? null : (files[other] ?? null)),
    [files],
  );
  const heading = useFocusWhen<HTMLHeadingElement>(true);
  return (
    <div class="bench-here">
      <h3 ref={heading} tabIndex={-1}>
        {strings.bench.title(numberOf(kase, photoId), '')}
      </h3>
      <div class="row">
        {onTab && (
          <button type="button" class="small" onClick={onTab}>
            {strings.bench.tab}
          </button>
        )}
        <button type="button" class="small" onClick={onBack}>
          {strings.bench.back}
        </button>
      </div>
      <OpenedBench kase={kase} photoId={photoId} file={file} byHand={byHand} useFileOf={useFileOf} />
    </div>
  );
}
