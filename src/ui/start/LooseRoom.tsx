import { useRef } from 'preact/hooks';
import { strings } from '../../words';
import { byHandOf, CasePhotos, useLookedAt } from '../panel/CasePhotos';
import { isBusy, type PanelState } from '../panel/state';
import { Marks } from '../parts/Marks';
import { ProblemNote } from '../parts/ProblemNote';
import { cropOf, StampSection } from '../parts/StampSection';
import type { LooseSession } from './loose-session';
import { MakerChoice } from './MakerChoice';

interface Props {
  state: PanelState;
  loose: LooseSession;
  maker: string;
  onMaker: (maker: string) => void;
}

/** What photos without a listing say: their stamp, by whose rules, and the photos themselves to look closer. */
export function LooseRoom({ state, loose, maker, onMaker }: Props) {
  const room = useRef<HTMLDivElement>(null);
  const looking = useLookedAt(room);
  const { case: kase, stage, views } = state;
  if (!kase || kase.listing.photos.length === 0) return null;
  const byHand = byHandOf(loose.session);
  return (
    <div class="loose" ref={room}>
      <p class="progress-line" role="status" data-stage={stage.kind}>
        {stage.kind === 'photos' ? strings.stage.photos(stage.done, stage.of, stage.now) : ''}
      </p>
      <StampSection
        kase={kase}
        pictureOfLine={cropOf(views)}
        isReading={isBusy(stage)}
        byHand={byHand}
        onLook={looking.look}
      />
      <MakerChoice
        maker={maker}
        onChoose={(name) => {
          onMaker(name);
          loose.under(name);
        }}
      />
      <Marks kase={kase} />
      <Unread state={state} />
      <CasePhotos kase={kase} state={state} session={loose.session} byHand={byHand} looking={looking} open />
    </div>
  );
}

/** Photos that were not read, each with the reason: none is passed over in silence. */
function Unread({ state: { case: kase, views } }: { state: PanelState }) {
  return (
    <div role="alert">
      {kase?.listing.photos.map(({ id }, index) => {
        const read = views[id]?.read;
        if (read?.state !== 'unread') return null;
        return <ProblemNote key={id} problem={{ ...read.problem, where: strings.photos.alone(index + 1) }} named />;
      })}
    </div>
  );
}
