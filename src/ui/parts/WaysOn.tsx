import { useState } from 'preact/hooks';
import { type Case, makerGuessed, makerNamed } from '../../case';
import { strings } from '../../words';
import { NameMaker } from './NameMaker';

interface Props {
  kase: Case;
  /** Opens a maker file begun from this listing. */
  onStartFile: () => void;
  /** Opens where a maker file is taken from a page that tells of it. */
  onTakeFromPage: () => void;
  /** Opens the maker files, to bring one in. */
  onBringFile: () => void;
  /** Takes the maker as the buyer types it. */
  onNameMaker: (maker: string) => void;
  /** Leads to where the maker is pointed at on the page. */
  onPointAtMaker: () => void;
}

/** Where no maker's file speaks: the ways on, in the order of what most buyers can do. */
export function WaysOn({ kase, onStartFile, onTakeFromPage, onBringFile, onNameMaker, onPointAtMaker }: Props) {
  const words = strings.waysOn;
  const maker = makerNamed(kase);
  const guess = makerGuessed(kase);
  const [naming, setNaming] = useState(false);
  const open = naming || maker === '';
  return (
    <section class="ways-on" aria-labelledby="ways-on-title">
      <h3 id="ways-on-title">{words.title}</h3>
      <ul>
        {maker !== '' && (
          <li>
            <button type="button" onClick={onStartFile}>
              {words.start}
            </button>{' '}
            <span class="muted hint">{words.startHint}</span>
          </li>
        )}
        <li>
          <button type="button" onClick={onTakeFromPage}>
            {strings.take.way}
          </button>{' '}
          <span class="muted hint">{strings.take.wayHint}</span>
        </li>
        <li>
          <button type="button" onClick={onBringFile}>
            {words.bring}
          </button>{' '}
          <span class="muted hint">{words.bringHint}</span>
        </li>
        <li>
          {!open && (
            <button type="button" onClick={() => setNaming(true)}>
              {words.other}
            </button>
          )}{' '}
          <span class="muted hint">{words.otherHint(maker, guess)}</span>
          {open && (
            <NameMaker
              key={guess}
              guess={guess}
              asked={naming}
              onPoint={onPointAtMaker}
              onName={(name) => {
                setNaming(false);
                onNameMaker(name);
              }}
            />
          )}
        </li>
      </ul>
    </section>
  );
}
