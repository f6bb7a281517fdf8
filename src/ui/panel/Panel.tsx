import { useRef, useState } from 'preact/hooks';
import { type Case, makerByHand } from '../../case';
import type { PickField } from '../../listing/pick-types';
import type { Listing } from '../../listing/types';
import { showWords } from '../../reader/page/show-words';
import { strings } from '../../words';
import { countCopies } from '../copies';
import { Replies } from '../message/Replies';
import { useMessageLimit } from '../message/use-limit';
import { CaseView } from '../parts/CaseView';
import { Cautions } from '../parts/Cautions';
import { goToPart } from '../parts/Fold';
import { ListingHeader } from '../parts/ListingHeader';
import { Notice } from '../parts/Notice';
import { saidProblem, sentence } from '../parts/ProblemNote';
import { Progress } from '../parts/Progress';
import { cropOf } from '../parts/StampSection';
import { WaysOn } from '../parts/WaysOn';
import { AddSent } from '../sent/AddSent';
import { ReadCode } from '../start/ReadCode';
import { useDailyLook } from '../use-daily-look';
import { AllowHosts } from './AllowHosts';
import { byHandOf, CasePhotos, useLookedAt } from './CasePhotos';
import { GivenHere } from './GivenHere';
import { openMakerFiles, openTaking, startFile } from './maker-file-ways';
import { PointAtPage } from './PointAtPage';
import { OtherPhoto, ReadThisPhoto } from './ReadThisPhoto';
import { SaveBar } from './SaveBar';
import type { Session } from './session';
import { isBusy, type PanelState } from './state';
import { PasteText, TakeThisPage } from './TakeThisPage';
import { type SavedCase, useSaved } from './use-saved';
import { useSession } from './use-session';
import { whatIsShown } from './what-is-shown';

/** The side panel of one tab. */
export function Panel({ tabId }: { tabId: number }) {
  const [state, session] = useSession(tabId);
  const saved = useSaved(state);
  const { stage, listing } = state;
  useDailyLook(stage.kind === 'done' && !state.incognito);
  const copies = countCopies(Object.values(state.views).map(({ read }) => read));
  return (
    <main>
      <h1 class="visually-hidden">{strings.product}</h1>
      <div class="piece">
        {listing?.kind === 'listing' && <ListingHeader listing={listing} />}
        {stage.kind !== 'lapsed' && stage.kind !== 'trouble' && (
          <Progress stage={stage} copies={copies} onStop={session.stop} onGoOn={session.goOn} onAgain={session.read} />
        )}
      </div>
      <Trouble state={state} session={session} />
      <GivenHere hasCase={state.case !== null} incognito={state.incognito} />
      {listing && listing.kind !== 'listing' && (
        <NoListing tabId={tabId} listing={listing} state={state} session={session} />
      )}
      {state.case ? (
        <Content tabId={tabId} state={state} session={session} saved={saved} />
      ) : (
        listing &&
        whatIsShown(listing) !== 'picture' && <PointAtPage tabId={tabId} state={state} onChanged={session.readFields} />
      )}
      <Cautions />
      <SaveBar state={state} saved={saved} />
    </main>
  );
}

/** The listing may stand in a frame of another site: then the right to that site is offered. */
function NoListing({
  tabId,
  listing,
  state,
  session,
}: {
  tabId: number;
  listing: Listing;
  state: PanelState;
  session: Session;
}) {
  const unread = listing.kind === 'none' && listing.problems.find(({ code }) => code === 'frame-not-read');
  const shown = whatIsShown(listing);
  return (
    <Notice text={strings.notListing[shown]}>
      {unread && <p>{sentence(saidProblem(unread).what)}</p>}
      {shown === 'picture' && <ReadThisPhoto tabId={tabId} listing={listing} />}
      {shown === 'pdf' && <PasteText />}
      {shown === 'pdf' && <OtherPhoto />}
      {unread && <AllowHosts state={state} onAllowed={session.read} />}
      {shown !== 'picture' && <WithoutListing photo={shown !== 'pdf'} />}
      {shown !== 'picture' && shown !== 'pdf' && !state.incognito && <TakeThisPage tabId={tabId} />}
    </Notice>
  );
}

/** Never an end: a code by itself and a photo by itself can be read anywhere. */
const WithoutListing = ({ photo }: { photo: boolean }) => (
  <div class="without-listing">
    <ReadCode />
    {photo && <OtherPhoto />}
  </div>
);

function Trouble({ state: { stage, moved }, session }: { state: PanelState; session: Session }) {
  if (stage.kind === 'lapsed') return <Notice title={strings.lapsed.title} text={strings.lapsed.first} strong />;
  if (stage.kind === 'trouble') {
    const { what, remedy } = saidProblem(stage.problem);
    const text = `${sentence(what)} ${remedy}`;
    return (
      <Notice title={strings.trouble.title} text={text} strong>
        {stage.problem.code === 'page-is-pdf' && <PasteText told />}
        {['page-not-readable', 'page-is-pdf'].includes(stage.problem.code) && <OtherPhoto />}
        <button type="button" onClick={session.read}>
          {strings.trouble.tryAgain}
        </button>
      </Notice>
    );
  }
  if (moved === 'no') return null;
  if (moved === 'lapsed') return <Notice title={strings.lapsed.title} text={strings.lapsed.moved} strong />;
  return (
    <Notice text={strings.moved.text}>
      <button type="button" onClick={session.read}>
        {strings.moved.read}
      </button>
    </Notice>
  );
}

interface ContentProps {
  tabId: number;
  state: PanelState;
  session: Session;
  saved: SavedCase;
}

function Content({ tabId, state, session, saved }: ContentProps) {
  const [asked, setAsked] = useState<{ field: PickField } | null>(null);
  const room = useRef<HTMLDivElement>(null);
  const looking = useLookedAt(room);
  const [copiesTold, setCopiesTold] = useState(false);
  const limit = useMessageLimit(state.incognito ? null : (state.listing?.url ?? null));
  const { case: kase, views } = state;
  if (!kase) return null;
  const isReading = isBusy(state.stage);
  const byHand = byHandOf(session);
  return (
    <div ref={room}>
      <CaseView
        kase={kase}
        pictureOfLine={cropOf(views)}
        isReading={isReading}
        byHand={byHand}
        showWords={(wanted) => showWords(tabId, wanted)}
        lookAt={looking.look}
        asked={{ questions: saved.asked, onAsked: saved.noteAsked }}
        waysOn={
          <WaysOn
            kase={kase}
            onStartFile={() => startFile(kase, state.incognito)}
            onTakeFromPage={() => openTaking(kase, state.incognito)}
            onBringFile={openMakerFiles}
            onNameMaker={(name) => {
              for (const { id } of namedByHand(kase)) session.undo(id);
              session.correct(makerByHand(name));
              // Its answer stands in the place of what was pressed.
              room.current?.querySelector<HTMLElement>('#stamp-title')?.focus();
            }}
            onPointAtMaker={() => {
              goToPart(room.current, 'claims');
              setAsked({ field: 'maker' });
            }}
          />
        }
        // Without photos too: a frame of another site may hold the description.
        offers={<AllowHosts state={state} onAllowed={session.read} onTold={setCopiesTold} />}
        copiesTold={copiesTold}
        limit={limit}
        replies={
          saved.record && (
            <Replies
              replies={kase.replies ?? []}
              onReply={async (text) => {
                const kept = await saved.keepReply(text);
                // What it claims is read with the listing's words; the photos stand as they are.
                if (kept) session.readFields();
                return kept;
              }}
            />
          )
        }
        correctionsOpen={state.picks.length > 0}
        corrections={<PointAtPage tabId={tabId} state={state} asked={asked} onChanged={session.readFields} />}
        photos={
          <CasePhotos
            kase={kase}
            state={state}
            session={session}
            byHand={byHand}
            looking={looking}
            adding={<AddSent onGiven={session.addSent} onCame={() => goToPart(room.current, 'photos')} />}
          />
        }
      />
    </div>
  );
}

/** What the buyer said before of whose piece it is. */
const namedByHand = ({ corrections }: Case) =>
  corrections.filter((one) => one.of === 'claim' && one.target === null && one.to?.kind === 'maker');
