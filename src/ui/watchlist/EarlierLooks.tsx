import { useState } from 'preact/hooks';
import type { SavedCase } from '../../watch';
import { strings } from '../../words';
import { priceWords } from '../claim-words';
import { dayWords } from '../day-words';
import type { OpenFile } from '../sent/KeptSent';
import { JudgedLook } from './JudgedLook';

interface Props {
  saved: SavedCase;
  openFile: OpenFile;
}

/** What was there at earlier times, by day and price; each is judged and drawn when it is opened. */
export const EarlierLooks = ({ saved, openFile }: Props) =>
  saved.looks.length < 2 ? null : (
    <section aria-labelledby="earlier-looks">
      <h3 id="earlier-looks">{strings.watch.earlierLooks}</h3>
      {saved.looks.map(({ readAt }, at) =>
        at === 0 ? null : <EarlierLook saved={saved} at={at} openFile={openFile} key={readAt} />,
      )}
    </section>
  );

function EarlierLook({ saved, at, openFile }: Props & { at: number }) {
  const [open, setOpen] = useState(false);
  const look = saved.looks[at];
  if (!look) return null;
  const { price, title } = look.state === 'readable' ? look.look.listing : { price: [], title: [] };
  const facts = [dayWords(look.readAt), price[0] && priceWords(price[0].value), title[0]?.value];
  return (
    <details class="quiet" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{facts.filter(Boolean).join(' · ')}</summary>
      {open && <JudgedLook saved={saved} at={at} openFile={openFile} />}
    </details>
  );
}
