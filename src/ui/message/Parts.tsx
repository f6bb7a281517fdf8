import { useState } from 'preact/hooks';
import { lengthOf, type MessageLanguage, type MessagePart, strings } from '../../words';

const words = strings.message;

/** What no field of a page is shorter than: one digit of a longer number, as it is typed, is no limit. */
const leastLimit = 50;

/** How many characters the marketplace's own field takes; empty where it has no limit. */
export function Limit({ most, onLimit }: { most: number | null; onLimit: (most: number | null) => void }) {
  // While it is typed, also what is no limit yet.
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <label class="row message-limit">
      <span>{words.limit}</span>
      <input
        type="number"
        inputMode="numeric"
        min={leastLimit}
        step={1}
        value={typed ?? most ?? ''}
        onInput={({ currentTarget: { value, valueAsNumber } }) => {
          setTyped(value);
          onLimit(valueAsNumber >= leastLimit ? Math.floor(valueAsNumber) : null);
        }}
      />
    </label>
  );
}

interface Props {
  parts: readonly MessagePart[];
  language: MessageLanguage;
  /** `at` counts from 1. */
  onCopy: (text: string, at: number) => void;
}

/** A message that is longer than the marketplace takes, in parts that are copied one by one. */
export const Parts = ({ parts, language, onCopy }: Props) => (
  <>
    <p>{words.split(parts.length)}</p>
    <ol class="message-parts">
      {parts.map(({ text, tooLong }, index) => (
        <li key={text}>
          <p class="muted hint">{words.part(index + 1, parts.length, lengthOf(text))}</p>
          <p class="message-own" lang={language}>
            {text}
          </p>
          {tooLong && <p class="problem">{words.partTooLong}</p>}
          <button type="button" onClick={() => onCopy(text, index + 1)}>
            {words.copyPart(index + 1)}
          </button>
        </li>
      ))}
    </ol>
  </>
);
