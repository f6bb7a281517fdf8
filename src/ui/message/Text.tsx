import { useEffect, useRef, useState } from 'preact/hooks';
import { lengthOf, type MessageLanguage, splitMessage, strings } from '../../words';
import { Limit, Parts } from './Parts';
import type { MessageLimit } from './use-limit';

const words = strings.message;

type Outcome = { kind: 'none' } | { kind: 'copied'; part: number | null } | { kind: 'failed' };

/** Questions that a message has and the one before had not, as lines. */
const newLines = (before: string, now: string) => now.split('\n').filter((line) => !before.split('\n').includes(line));

interface Props {
  composed: string;
  language: MessageLanguage;
  /** Of the site's box, where the screen remembers it. */
  limit?: MessageLimit | undefined;
  /** The message, or a part of it, is in the clipboard. */
  onCopied?: (() => void) | undefined;
}

/**
 * The words themselves. What was edited by hand is kept: a later tick changes nothing by itself, and asks whether to add
 * what is new at the end or to write anew.
 */
export function Text({ composed, language, limit, onCopied }: Props) {
  const [edited, setEdited] = useState<{ text: string; from: string } | null>(null);
  const [said, setSaid] = useState<number | null>(null);
  const { most, keep } = limit ?? { most: said, keep: setSaid };
  const [outcome, setOutcome] = useState<Outcome>({ kind: 'none' });
  const field = useRef<HTMLTextAreaElement>(null);
  const text = edited?.text ?? composed;
  useEffect(() => setOutcome({ kind: 'none' }), [text, most]);
  const parts = most === null ? [] : splitMessage(text, most);
  const copy = async (copied: string, part: number | null) => {
    try {
      await navigator.clipboard.writeText(copied);
      setOutcome({ kind: 'copied', part });
      onCopied?.();
    } catch {
      if (part === null) field.current?.select();
      setOutcome({ kind: 'failed' });
    }
  };
  return (
    <>
      <label class="message-text">
        {words.text}
        <textarea
          ref={field}
          rows={Math.min(14, text.split('\n').length + 2)}
          lang={language}
          value={text}
          onInput={({ currentTarget: { value } }) => setEdited({ text: value, from: edited?.from ?? composed })}
        />
      </label>
      <p class="muted hint">
        {words.length(lengthOf(text))}
        {edited && `. ${words.edited}`}
      </p>
      {edited && edited.from !== composed && (
        <div class="notice">
          <p>{words.later}</p>
          <div class="row">
            <button
              type="button"
              onClick={() =>
                setEdited({
                  text: [edited.text.trimEnd(), ...newLines(edited.from, composed)].join('\n'),
                  from: composed,
                })
              }
            >
              {words.addAtEnd}
            </button>
            <button type="button" onClick={() => setEdited(null)}>
              {words.writeAnew}
            </button>
          </div>
        </div>
      )}
      <Limit most={most} onLimit={keep} />
      {parts.length > 1 ? (
        <Parts parts={parts} language={language} onCopy={(part, at) => copy(part, at)} />
      ) : (
        <button type="button" class="main" disabled={text.trim() === ''} onClick={() => copy(text, null)}>
          {words.copy}
        </button>
      )}
      <p role="status" class="muted hint">
        {outcome.kind === 'copied' &&
          (outcome.part === null ? words.copied : words.copiedPart(outcome.part, parts.length))}
        {outcome.kind === 'failed' && words.notCopied}
      </p>
    </>
  );
}
