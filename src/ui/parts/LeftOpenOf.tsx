import type { Decoding, LeftOpen } from '../../code/types';
import { strings } from '../../words';

/** What of a code that was seen is left open. */
export const LeftOpenOf = ({ decoding }: { decoding: Decoding }) => (
  <>
    {(decoding.open ?? []).map((open) => (
      <p class="muted" key={JSON.stringify(open)}>
        {openWords(open)}
      </p>
    ))}
  </>
);

function openWords(open: LeftOpen): string {
  if (open.kind === 'may-go-on') return strings.stamp.mayGoOn;
  if (open.kind === 'too-long') return strings.stamp.tooLong;
  if (open.kind === 'other-number') return strings.stamp.otherNumber[open.as];
  if (open.kind === 'upside-down') return strings.stamp.upsideDown(open.text);
  return strings.stamp.alike(open.place + 1, open.may);
}
