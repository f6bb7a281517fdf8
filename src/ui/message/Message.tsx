import { useEffect, useRef, useState } from 'preact/hooks';
import type { Case } from '../../case';
import {
  chosenLanguage,
  composeMessage,
  languageNames,
  type MessageLanguage,
  messageLanguageOf,
  messageLanguages,
  strings,
} from '../../words';
import { Fold } from '../parts/Fold';
import { ToAsk } from './ToAsk';
import type { MessageDraft } from './use-message';

const words = strings.message;

/** The message to the seller as it will go: its questions chosen and put in order, its words seen and edited, then copied. */
export function Message({ kase, draft }: { kase: Case; draft: MessageDraft }) {
  const [chosen, setChosen] = useState<MessageLanguage | null>(null);
  const written = chosen ?? messageLanguageOf(kase.listing.language);
  const compose = (language: MessageLanguage) =>
    composeMessage(draft.asked, {
      sellerName: kase.listing.seller.name[0]?.value,
      title: kase.listing.title[0]?.value,
      language,
      own: draft.own,
      reworded: draft.reworded,
    });
  const own = messageLanguageOf(chosenLanguage());
  return (
    <Fold part="message" title={words.title}>
      <p class="muted hint">{words.notSent}</p>
      <ToAsk kase={kase} draft={draft} />
      <label class="row">
        {words.language}
        <select
          value={written}
          onChange={({ currentTarget }) =>
            setChosen(messageLanguages.find((one) => one === currentTarget.value) ?? null)
          }
        >
          {messageLanguages.map((one) => (
            <option key={one} value={one} lang={one}>
              {languageNames[one]}
            </option>
          ))}
        </select>
      </label>
      <Text key={written} composed={compose(written)} language={written} />
      {written !== own && (
        <details class="quiet">
          <summary>{words.inYours}</summary>
          <p class="message-own" lang={own}>
            {compose(own)}
          </p>
        </details>
      )}
    </Fold>
  );
}

/** Questions that a message has and the one before had not, as lines. */
const newLines = (before: string, now: string) => now.split('\n').filter((line) => !before.split('\n').includes(line));

/**
 * The words themselves. What was edited by hand is kept: a later tick changes nothing by itself, and asks whether to add
 * what is new at the end or to write anew.
 */
function Text({ composed, language }: { composed: string; language: MessageLanguage }) {
  const [edited, setEdited] = useState<{ text: string; from: string } | null>(null);
  const [outcome, setOutcome] = useState<'none' | 'copied' | 'failed'>('none');
  const field = useRef<HTMLTextAreaElement>(null);
  const text = edited?.text ?? composed;
  useEffect(() => setOutcome('none'), [text]);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setOutcome('copied');
    } catch {
      field.current?.select();
      setOutcome('failed');
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
        {words.length([...text].length)}
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
      <button type="button" class="main" disabled={text.trim() === ''} onClick={copy}>
        {words.copy}
      </button>
      <p role="status" class="muted hint">
        {outcome === 'copied' && words.copied}
        {outcome === 'failed' && words.notCopied}
      </p>
    </>
  );
}
