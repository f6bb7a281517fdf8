import type { Case } from '../../case';
import { strings } from '../../words';
import type { MessageDraft } from '../message/use-message';

interface Props {
  kase: Case;
  draft: MessageDraft;
  onLook: () => void;
}

/** The one next step: what asking would clear up, and the button that shows the message. */
export function NextStep({ kase: { lot, summary }, draft: { asked }, onLook }: Props) {
  const words = strings.message;
  const photos = asked.filter(({ wants }) => wants === 'photo').length;
  const against = summary.contradictions + summary.doubts > 0;
  return (
    <section class="next-step" aria-labelledby="next-title">
      <h2 id="next-title">{words.next}</h2>
      <p>
        {!against && !lot && summary.agreements > 0 && `${words.sound} `}
        {asked.length === 0
          ? lot?.chosen === null
            ? words.choose
            : words.nothing
          : words.ask(asked.length - photos, photos, against)}
      </p>
      <button type="button" class="main" onClick={onLook}>
        {words.look}
      </button>
    </section>
  );
}
