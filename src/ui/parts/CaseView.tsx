import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Case } from '../../case';
import type { Claim } from '../../claim/types';
import { composeMessage, type HeadLine, messageLanguageOf } from '../../words';
import { TimeAxis } from '../TimeAxis';
import { useFocusKept } from '../use-focus-kept';
import type { ByHand } from './by-hand';
import { Changes } from './Changes';
import { Claims } from './Claims';
import { Corrections } from './Corrections';
import { Against, StillOpen, WhatFits } from './Findings';
import { Head } from './Head';
import { Marks } from './Marks';
import { NotRead } from './NotRead';
import { Questions } from './Questions';
import { StampSection } from './StampSection';

interface Props {
  kase: Case;
  pictureOfLine: (photoId: string, lineId: string) => string | null;
  byHand?: ByHand;
  /** What is offered to see more of the stamp and the listing, where the screen can. */
  offers?: ComponentChildren;
  /** The photos, where the screen has them. */
  photos?: ComponentChildren;
}

/**
 * A case from what a buyer must know first to what can wait: what changed since the last look, the three lines of the
 * head, what speaks against it, the stamp, what to ask, what is open, what was not looked at, then what fits, photos and
 * claims.
 */
export function CaseView({ kase, pictureOfLine, byHand, offers, photos }: Props) {
  const room = useRef<HTMLDivElement>(null);
  const said = useFocusKept<HTMLDivElement>('#claims-title');
  return (
    <div class="case" ref={room}>
      <Changes kase={kase} />
      <Head kase={kase} onGo={(line) => goTo(room.current, line)} />
      <Against kase={kase} />
      <StampSection kase={kase} pictureOfLine={pictureOfLine} byHand={byHand} />
      {offers}
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
      <StillOpen kase={kase} />
      <NotRead kase={kase} />
      <WhatFits kase={kase} />
      {photos}
      <div ref={said}>
        <Claims claims={kase.claims} onStrike={byHand && strikeClaim(byHand)} />
        <Corrections kase={kase} onUndo={byHand?.undo} />
      </div>
    </div>
  );
}

const strikeClaim =
  ({ correct }: ByHand) =>
  (target: Claim) =>
    correct({ of: 'claim', target, to: null });

/** Takes sight and keyboard to the heading of a part. */
function goTo(room: HTMLElement | null, line: HeadLine): void {
  const heading = room?.querySelector<HTMLElement>(`[data-part="${line}"] h2`);
  if (!heading) return;
  heading.tabIndex = -1;
  heading.focus();
  heading.scrollIntoView?.({ block: 'start' });
}
