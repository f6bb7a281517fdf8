import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { asideFor, type Case, isOfCorrection } from '../../case';
import type { Finding } from '../../check';
import type { Claim } from '../../claim/types';
import { strings } from '../../words';
import { type AskedBefore, Message } from '../message/Message';
import type { MessageLimit } from '../message/use-limit';
import { useMessage } from '../message/use-message';
import { TimeAxis } from '../TimeAxis';
import { useFocusKept } from '../use-focus-kept';
import type { ByHand } from './by-hand';
import { Changes } from './Changes';
import { Claims } from './Claims';
import { Corrections } from './Corrections';
import { type CaseActions, CaseRoomContext } from './case-room';
import { Against, StillOpen, WhatFits } from './Findings';
import { Fold, goToPart } from './Fold';
import { Head } from './Head';
import { LotChoice } from './LotChoice';
import { Marks } from './Marks';
import { NextStep } from './NextStep';
import { NotRead } from './NotRead';
import { SetAside } from './SetAside';
import { StampSection } from './StampSection';

interface Props extends CaseActions {
  kase: Case;
  pictureOfLine: (photoId: string, lineId: string) => string | null;
  /** While photos are still being read. */
  isReading?: boolean;
  byHand?: ByHand;
  /** What is offered to see more of the stamp and the listing, where the screen can. */
  offers?: ComponentChildren;
  /** Whether `offers` tells of photos that were read from small copies. */
  copiesTold?: boolean;
  /** What is offered where no maker's file speaks. */
  waysOn?: ComponentChildren;
  /** The photos, where the screen has them. */
  photos?: ComponentChildren;
  /** What was asked before, and who keeps what is asked now. */
  asked?: AskedBefore | undefined;
  /** How long a message the site's box takes, where the screen remembers it. */
  limit?: MessageLimit | undefined;
  /** What the seller replied, where the screen keeps it. */
  replies?: ComponentChildren;
  /** What corrects the reading of the page, where the screen can. */
  corrections?: ComponentChildren;
  /** Whether what the listing says was corrected, so that it stands open. */
  correctionsOpen?: boolean;
}

/**
 * A case from what a buyer must know first to what can wait: what changed since the last look, what the stamp says
 * against what the listing says, the three lines of the head, the next step; then, folded, what they rest on. Where there is
 * room, the two stand beside each other.
 */
export function CaseView(props: Props) {
  const { kase, pictureOfLine, isReading, byHand, offers, waysOn, photos, corrections, showWords, lookAt } = props;
  const room = useRef<HTMLDivElement>(null);
  const said = useFocusKept<HTMLDivElement>();
  const found = useFocusKept<HTMLDivElement>();
  const draft = useMessage(kase);
  const go = (part: string) => goToPart(room.current, part);
  const actions: CaseActions = {
    ...(showWords && { showWords }),
    ...(lookAt && { lookAt }),
    ...(byHand && { setAside: setAside(byHand) }),
  };
  return (
    <CaseRoomContext.Provider value={{ kase, draft, ...actions }}>
      <div class="case-room">
        <div class="case" ref={room}>
          <div class="case-answer">
            <Changes kase={kase} />
            {kase.lot && <LotChoice kase={kase} lot={kase.lot} byHand={byHand} />}
            <StampSection
              kase={kase}
              pictureOfLine={pictureOfLine}
              isReading={isReading}
              byHand={byHand}
              onLook={lookAt}
              offers={offers}
            />
            <Head kase={kase} onGo={go} />
            <NextStep kase={kase} draft={draft} onLook={() => go('message')} />
            {kase.maker === null && waysOn}
          </div>
          <div class="case-evidence">
            <div ref={found}>
              <Against kase={kase} />
              <StillOpen kase={kase} />
              <SetAside kase={kase} onUndo={byHand?.undo} />
            </div>
            <NotRead kase={kase} copiesTold={props.copiesTold ?? false} />
            {kase.reasoning && <TimeAxis evidence={kase.evidence} reasoning={kase.reasoning} folded />}
            <WhatFits kase={kase} />
            <Marks kase={kase} folded />
            {photos}
            <div ref={said}>
              <Fold
                part="claims"
                title={strings.claims.title}
                open={(props.correctionsOpen ?? false) || kase.skipped.some(isOfCorrection)}
              >
                <Claims claims={kase.claims} onStrike={byHand && strikeClaim(byHand)} />
                <Corrections kase={kase} onUndo={byHand?.undo} />
                {corrections}
              </Fold>
            </div>
            <Message kase={kase} draft={draft} asked={props.asked} limit={props.limit} />
            {props.replies}
          </div>
        </div>
      </div>
    </CaseRoomContext.Provider>
  );
}

const setAside =
  ({ correct }: ByHand) =>
  (finding: Finding, reason: string) => {
    const made = asideFor(finding, reason);
    if (made) correct(made);
  };

const strikeClaim =
  ({ correct }: ByHand) =>
  (target: Claim) =>
    correct({ of: 'claim', target, to: null });
