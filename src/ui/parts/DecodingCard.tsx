import type { Decoding } from '../../code/types';
import { strings } from '../../words';
import { BesideCode } from './BesideCode';
import { LeftOpenOf } from './LeftOpenOf';
import { OtherReadings } from './OtherReadings';
import { ReadingTable } from './ReadingTable';
import { Unexplained } from './Unexplained';

/** More ways in which a code fits nothing would bury it. */
const mostTold = 3;

interface Props {
  decoding: Decoding;
  /** The stamped line cut from its photo, as a data address. */
  picture: string | null;
  where: string;
  pictureLabel: string;
  onRemove?: (() => void) | undefined;
  /** What was read in photos is no code. */
  onStrike?: (() => void) | undefined;
}

/** One code: its picture, the text, whether it counts as read, and what it says. */
export function DecodingCard({ decoding, picture, where, pictureLabel, onRemove, onStrike }: Props) {
  const [best, ...others] = decoding.readings;
  return (
    <article class="decoding">
      {picture && <img class="stamp-crop" src={picture} alt={pictureLabel} />}
      <header>
        {decoding.accepted ? (
          <strong class="code stamp-text">{best?.text ?? decoding.code}</strong>
        ) : (
          <span>{strings.stamp.unsure}</span>
        )}
        <span class="muted">{where}</span>
        {onRemove && (
          <button type="button" class="small" onClick={onRemove}>
            {strings.stamp.remove(decoding.code)}
          </button>
        )}
        {onStrike && (
          <button type="button" class="small" onClick={onStrike}>
            {strings.byHand.noCode}
          </button>
        )}
      </header>
      {decoding.accepted ? best && <ReadingTable reading={best} /> : <Candidates decoding={decoding} />}
      <BesideCode decoding={decoding} />
      <LeftOpenOf decoding={decoding} />
      {decoding.accepted && <Unexplained decoding={decoding} most={mostTold} />}
      {/* Without a maker's file no reading stands out: all of them are the answer. */}
      {decoding.accepted && <OtherReadings readings={others} open={best?.system.maker === null} />}
    </article>
  );
}

function Candidates({ decoding }: { decoding: Decoding }) {
  const rows = decoding.readings.slice(0, 3).map(({ text, probability }) => ({ text, probability }));
  if (rows.length === 0) return decoding.code ? <p class="code">{decoding.code}</p> : null;
  return (
    <>
      <p class="muted">{strings.stamp.candidates}</p>
      <ul class="candidates">
        {rows.map(({ text, probability }) => (
          <li key={text}>
            <span class="code">{text}</span> <span class="muted">{strings.stamp.share(probability)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
