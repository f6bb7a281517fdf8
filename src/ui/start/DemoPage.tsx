import { useEffect, useRef, useState } from 'preact/hooks';
import { browser } from '../../browser/api';
import { demoListing } from '../../case';
import { fail, problem, succeed } from '../../problem';
import { strings } from '../../words';
import { countCopies } from '../copies';
import { byHandOf, CasePhotos, useLookedAt } from '../panel/CasePhotos';
import { createSession } from '../panel/session';
import { blankState, isBusy, type PanelState } from '../panel/state';
import { CaseView } from '../parts/CaseView';
import { Cautions } from '../parts/Cautions';
import { ListingHeader } from '../parts/ListingHeader';
import { Progress } from '../parts/Progress';
import { cropOf } from '../parts/StampSection';
import { portsWithoutPage } from './loose-session';
import { bytesOf } from './photo-of-file';

/** A photo of the demo listing, which comes with the extension. */
async function demoPhoto(id: string) {
  try {
    const packaged = await fetch(browser.runtime.getURL(`demo/${id}.jpg`));
    return succeed(bytesOf(await packaged.arrayBuffer(), 'image/jpeg'));
  } catch {
    return fail(problem('photo-file-gone', id));
  }
}

const openDemo = (publish: (state: PanelState) => void) =>
  createSession(
    -1,
    portsWithoutPage({
      readPage: async () => succeed({ listing: demoListing(new Date().toISOString()), incognito: false, picks: [] }),
      fetchPhoto: (_, photoId) => demoPhoto(photoId),
    }),
    publish,
  );

/** A made-up listing with its case beside it, read as any other: what is done here is kept nowhere. */
export function DemoPage() {
  const [state, publish] = useState<PanelState>(blankState);
  const [session] = useState(() => openDemo(publish));
  const room = useRef<HTMLDivElement>(null);
  const looking = useLookedAt(room);
  useEffect(() => {
    session.read();
    return () => session.end();
  }, [session]);
  const { case: kase, listing, stage, views } = state;
  const byHand = byHandOf(session);
  return (
    <section ref={room} aria-label={strings.start.demo}>
      <p class="notice">{strings.start.demoNote}</p>
      {listing && (
        <div class="piece">
          <ListingHeader listing={listing} />
          <Progress
            stage={stage}
            copies={countCopies(Object.values(views).map(({ read }) => read))}
            onStop={session.stop}
            onGoOn={session.goOn}
            onAgain={session.read}
          />
        </div>
      )}
      {listing?.description[0] && <blockquote class="demo-words">{listing.description[0].value}</blockquote>}
      {kase && (
        <CaseView
          kase={kase}
          pictureOfLine={cropOf(views)}
          isReading={isBusy(stage)}
          byHand={byHand}
          lookAt={looking.look}
          photos={<CasePhotos kase={kase} state={state} session={session} byHand={byHand} looking={looking} />}
        />
      )}
      <Cautions />
    </section>
  );
}
