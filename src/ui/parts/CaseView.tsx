import type { ComponentChildren } from 'preact';
import type { Case } from '../../case';
import { composeMessage, messageLanguageOf } from '../../words';
import { TimeAxis } from '../TimeAxis';
import { Changes } from './Changes';
import { Claims } from './Claims';
import { Against, RestOfFindings } from './Findings';
import { Marks } from './Marks';
import { NotRead } from './NotRead';
import { Questions } from './Questions';
import { StampSection } from './StampSection';
import { Summary } from './Summary';

interface Props {
  kase: Case;
  pictureOfLine: (photoId: string, lineId: string) => string | null;
  onType?: (code: string) => void;
  onRemoveTyped?: (code: string) => void;
  /** The photos, where the screen has them. */
  photos?: ComponentChildren;
}

/**
 * A case from what a buyer must know first to what can wait: what changed since the last look, counts, what stands
 * against each other, the stamp, what to ask, then gaps, agreements, photos and claims.
 */
export const CaseView = ({ kase, pictureOfLine, onType, onRemoveTyped, photos }: Props) => (
  <div class="case">
    <Changes kase={kase} />
    <Summary summary={kase.summary} />
    <Against kase={kase} />
    <StampSection kase={kase} pictureOfLine={pictureOfLine} onType={onType} onRemoveTyped={onRemoveTyped} />
    {kase.reasoning && <TimeAxis evidence={kase.evidence} reasoning={kase.reasoning} />}
    <Marks kase={kase} />
    <Questions
      questions={kase.questions}
      language={messageLanguageOf(kase.listing.language)}
      messageIn={(language) =>
        composeMessage(kase.questions, {
          sellerName: kase.listing.seller.name[0]?.value,
          title: kase.listing.title[0]?.value,
          language,
        })
      }
    />
    <NotRead kase={kase} />
    <RestOfFindings kase={kase} />
    {photos}
    <Claims claims={kase.claims} />
  </div>
);
