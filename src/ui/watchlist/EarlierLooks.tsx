import { useState } from 'preact/hooks';
import type { KeptPicture, Look } from '../../watch';
import { strings } from '../../words';
import { priceWords } from '../claim-words';
import { dayWords } from '../day-words';
import { CaseView } from '../parts/CaseView';

/** The picture that was kept of a stamped line. */
export const pictureOfLine =
  (pictures: KeptPicture[]) =>
  (photoId: string, lineId: string): string | null =>
    pictures.find((kept) => kept.photoId === photoId && kept.lineId === lineId)?.picture ?? null;

/** What was there at earlier times, by day and price; each is drawn when it is opened. */
export const EarlierLooks = ({ looks }: { looks: Look[] }) =>
  looks.length === 0 ? null : (
    <section aria-labelledby="earlier-looks">
      <h3 id="earlier-looks">{strings.watch.earlierLooks}</h3>
      {looks.map((look) => (
        <EarlierLook look={look} key={look.case.listing.readAt} />
      ))}
    </section>
  );

function EarlierLook({ look: { case: kase, pictures } }: { look: Look }) {
  const [open, setOpen] = useState(false);
  const { readAt, price, title } = kase.listing;
  const facts = [dayWords(readAt), price[0] && priceWords(price[0].value), title[0]?.value];
  return (
    <details class="quiet" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{facts.filter(Boolean).join(' · ')}</summary>
      {open && <CaseView kase={kase} pictureOfLine={pictureOfLine(pictures)} />}
    </details>
  );
}
