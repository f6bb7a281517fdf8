import { useEffect, useMemo, useState } from 'preact/hooks';
import { bringToFront } from '../../../browser/compat';
import { currentFormat, type Draft, draftOf, plainName } from '../../../maker';
import { showWords } from '../../../reader/page/show-words';
import type { OwnMakerFile } from '../../../store/maker-files';
import { readTaken, type Taken } from '../../../store/taken';
import { draftWith, type Proposal, piecesOf } from '../../../take';
import { kit, strings } from '../../../words';
import { useFocusWhen } from '../../use-focus-when';
import { AskAmong } from './AskAmong';
import { AskMaker } from './AskMaker';
import { BringPage } from './BringPage';
import { Proposals } from './Proposals';
import { TryCode } from './TryCode';

const words = strings.take;

interface Props {
  /** Where what a page proposed lies; empty to bring a page. */
  id: string;
  /** The maker of the listing that a page is brought for; empty where none is known. */
  known: string;
  own: readonly OwnMakerFile[];
  begin: (draft: Draft) => void;
  /** A file of the user's with what was ticked written into it, as one step that can be taken back. */
  onAdded: (id: string, draft: Draft) => void;
}

/** What a page that tells of makers proposes, to be ticked and opened as a draft: nothing is saved before. */
export function TakeFromPage({ id, known, own, begin, onAdded }: Props) {
  const [taken, setTaken] = useState<Taken | null>(null);
  const [gone, setGone] = useState(false);
  const heading = useFocusWhen<HTMLHeadingElement>(taken);
  useEffect(() => {
    if (id === '') return;
    readTaken(id).then((found) => {
      setTaken(found);
      setGone(found === null);
    });
  }, [id]);
  return (
    <div class="take">
      <a href="#makers">{strings.makers.done}</a>
      <h2 ref={heading} tabIndex={-1}>
        {words.title}
      </h2>
      {gone && <p role="alert">{words.gone}</p>}
      {taken === null || taken.proposals.length === 0 ? (
        <>
          <p>{words.about}</p>
          <BringPage known={known} onRead={setTaken} />
          <p role="status">{taken && words.nothing}</p>
        </>
      ) : (
        <ByMaker taken={taken} own={own} begin={begin} onAdded={onAdded} />
      )}
    </div>
  );
}

function ByMaker({ taken, own, begin, onAdded }: Omit<Props, 'id' | 'known'> & { taken: Taken }) {
  const { tab, open, among } = taken;
  const [only, setOnly] = useState<string | null>(null);
  const proposals = useMemo(() => ofOne(taken.proposals, only), [taken, only]);
  const [name, setName] = useState(open?.likely ?? '');
  const [ticked, setTicked] = useState(() => new Set(proposals.flatMap((one, at) => (one.ticked ? [at] : []))));
  const makers = useMemo(() => [...new Set(proposals.map(({ maker }) => maker))], [proposals]);
  const change = (places: readonly number[], on: boolean) =>
    setTicked((present) => {
      const next = new Set(present);
      for (const at of places) on ? next.add(at) : next.delete(at);
      return next;
    });
  return (
    <>
      <p class="take-says">{words.found(proposals.length, makers.length)}</p>
      <p class="muted">{words.from(taken.title, taken.address, kit.day(taken.day))}</p>
      <p class="muted">{words.nothingSaved}</p>
      {among.length > 1 && <AskAmong names={among} only={only} onChange={setOnly} />}
      {makers.map((maker) => {
        const named = maker ?? name.trim();
        const chosen = proposals.filter((one, at) => one.maker === maker && ticked.has(at));
        return (
          <section key={maker ?? ''} aria-label={maker ?? words.noMaker}>
            {maker === null ? (
              <AskMaker
                names={open !== null && open.likely !== ''}
                likely={name}
                others={open ? [open.likely, ...open.others].filter((one) => one !== '' && one !== name) : []}
                onChange={setName}
              />
            ) : (
              <h3>{maker}</h3>
            )}
            <Proposals
              proposals={proposals}
              of={maker}
              ticked={ticked}
              onChange={change}
              show={tab === null ? null : (proposal) => showOnPage(tab, proposal)}
            />
            <TryCode maker={named} chosen={chosen} today={taken.day} />
            <Into maker={named} chosen={chosen} own={own} title={taken.title} begin={begin} onAdded={onAdded} />
          </section>
        );
      })}
    </>
  );
}

/** All that a page proposes as of one maker, where the buyer says that it is of that one alone. */
const ofOne = (proposals: readonly Proposal[], maker: string | null): readonly Proposal[] =>
  maker === null
    ? proposals
    : proposals.map((one) => ({ ...one, maker, doubts: one.doubts.filter((doubt) => doubt !== 'which-maker') }));

/** The page's own words, marked where they stand, with the tab in front; false when the page shows them no more. */
const showOnPage = async (tab: number, { words, at }: Proposal): Promise<boolean> =>
  (await showWords(tab, { words: piecesOf({ words, at }), selector: at.selector })) && bringToFront(tab);

interface IntoProps extends Omit<Props, 'id' | 'known'> {
  maker: string;
  chosen: readonly Proposal[];
  title: string;
}

/** Opens what is ticked as a new draft, or adds it to the user's own file of that maker. */
function Into({ maker, chosen, own, title, begin, onAdded }: IntoProps) {
  const nameOf = ({ draft }: OwnMakerFile) => (typeof draft.value.maker === 'string' ? draft.value.maker : '');
  const mine = maker === '' ? undefined : own.find((file) => plainName(nameOf(file)) === plainName(maker));
  const add = () => {
    if (!mine) return;
    const { value, past } = mine.draft;
    onAdded(mine.id, { ...draftOf(draftWith(value, chosen)), past: [...past, { value, what: words.step(title) }] });
  };
  return (
    <div class="row watch-actions">
      {mine && (
        <button type="button" class="main" disabled={chosen.length === 0} onClick={add}>
          {words.addTo(chosen.length, nameOf(mine))}
        </button>
      )}
      <button
        type="button"
        class={mine ? undefined : 'main'}
        disabled={chosen.length === 0}
        onClick={() => begin(draftOf(draftWith({ format: currentFormat, maker }, chosen)))}
      >
        {words.open(chosen.length, maker)}
      </button>
    </div>
  );
}
