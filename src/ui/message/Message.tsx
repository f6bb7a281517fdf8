import { useState } from 'preact/hooks';
import type { Case } from '../../case';
import type { AskedQuestion } from '../../watch';
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
import { Text } from './Text';
import { ToAsk } from './ToAsk';
import type { MessageLimit } from './use-limit';
import type { MessageDraft } from './use-message';

const words = strings.message;

/** What was asked before, and who is told what is asked now. */
export interface AskedBefore {
  questions: readonly AskedQuestion[];
  onAsked: (ids: readonly string[]) => void;
}

interface Props {
  kase: Case;
  draft: MessageDraft;
  asked?: AskedBefore | undefined;
  limit?: MessageLimit | undefined;
}

/** The message to the seller as it will go: its questions chosen and put in order, its words seen and edited, then copied. */
export function Message({ kase, draft, asked, limit }: Props) {
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
      <div class="message-columns">
        <ToAsk kase={kase} draft={draft} asked={asked?.questions ?? []} />
        <div>
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
          <Text
            key={written}
            composed={compose(written)}
            language={written}
            limit={limit}
            onCopied={asked && (() => asked.onAsked(draft.asked.map(({ id }) => id)))}
          />
          {written !== own && (
            <details class="quiet">
              <summary>{words.inYours}</summary>
              <p class="message-own" lang={own}>
                {compose(own)}
              </p>
            </details>
          )}
        </div>
      </div>
    </Fold>
  );
}
