import { useId, useState } from 'preact/hooks';
import { decodeText } from '../../../code';
import { currentFormat, draftOf, inspectDraft } from '../../../maker';
import { draftWith, type Proposal } from '../../../take';
import { readingWords, strings } from '../../../words';

const words = strings.take.tryCode;
const longestCode = 60;

interface Props {
  maker: string;
  chosen: readonly Proposal[];
  /** The day of today, after which nothing is made. */
  today: string;
}

/** What a code would read by what is ticked, before any of it is opened: ticks show at once what they change. */
export function TryCode({ maker, chosen, today }: Props) {
  const id = useId();
  const [code, setCode] = useState('');
  return (
    <div class="field take-try">
      <label for={id}>{words.label}</label>
      <input
        id={id}
        type="text"
        class="code"
        autocomplete="off"
        autocapitalize="characters"
        spellcheck={false}
        maxLength={longestCode}
        value={code}
        onInput={({ currentTarget: { value } }) => setCode(value)}
      />
      <p role="status" class="hint">
        {code.trim() !== '' && saidOf(code, maker, chosen, today)}
      </p>
    </div>
  );
}

function saidOf(code: string, maker: string, chosen: readonly Proposal[], today: string): string {
  // A file has to have a name; which one makes no difference to what its codes read.
  const { file } = inspectDraft(draftOf(draftWith({ format: currentFormat, maker: maker || 'X' }, chosen)));
  if (!file) return words.unfinished;
  const { readings } = decodeText(code, { makers: [file], maker: file.maker, now: today });
  const [best] = readings.filter(({ system }) => system.maker !== null);
  return best ? words.reads(readingWords(best)) : words.nothing;
}
