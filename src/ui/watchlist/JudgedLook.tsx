import { useMemo } from 'preact/hooks';
import {
  caseOf,
  compareFound,
  type Found,
  type MeasuredPhoto,
  measuredOn,
  type SavedCase,
  type SavedLook,
} from '../../watch';
import { chosenLanguage, sayFinding, strings } from '../../words';
import { dayWords } from '../day-words';
import type { AskedBefore } from '../message/Message';
import { Replies } from '../message/Replies';
import type { MessageLimit } from '../message/use-limit';
import { CaseView } from '../parts/CaseView';
import { Fold } from '../parts/Fold';
import { MeasuredPhotos } from '../parts/MarkedPhoto';
import { ProblemNote } from '../parts/ProblemNote';
import { pictureOfLine } from '../pictures';

interface Props {
  saved: SavedCase;
  at: number;
  asked?: AskedBefore | undefined;
  limit?: MessageLimit | undefined;
  /** Keeps another reply of the seller, where the look may get one. */
  onReply?: ((text: string) => Promise<boolean>) | undefined;
}

/** One look of a saved case as it is judged today; where something else was found then, that stands before it. */
export function JudgedLook({ saved, at, asked, limit, onReply }: Props) {
  const look = saved.looks[at];
  const kase = useMemo(() => caseOf(saved, at), [saved, at]);
  if (look?.state !== 'readable' || !kase) {
    return look?.state === 'newer' || look?.state === 'damaged' ? (
      <div data-look={look.state}>
        <p>{strings.watch[look.state]}</p>
        <ProblemNote problem={look.problem} />
      </div>
    ) : null;
  }
  const { then, now } = compareFound(look.look, kase);
  const measured = measuredOn({ case: kase, pictures: look.pictures });
  return (
    <>
      {then.length + now.length > 0 && (
        <details class="then-and-now">
          <summary>{strings.watch.foundOtherwise(dayWords(look.judgedAt))}</summary>
          <p class="muted">{judgesWords(look)}</p>
          <Findings title={strings.watch.foundThen} found={then} />
          <Findings title={strings.watch.foundNow} found={now} />
        </details>
      )}
      <CaseView
        kase={kase}
        pictureOfLine={pictureOfLine(look.pictures)}
        asked={asked}
        limit={limit}
        photos={measured.length > 0 && <Measured measured={measured} />}
        replies={onReply && <Replies replies={kase.replies ?? []} onReply={onReply} />}
      />
    </>
  );
}

/** What the buyer measured on the look's photos, where the panel shows the photos themselves. */
const Measured = ({ measured }: { measured: readonly MeasuredPhoto[] }) => (
  <Fold part="photos" title={strings.bench.dossier}>
    <MeasuredPhotos measured={measured} />
  </Fold>
);

function judgesWords({ look: { judged }, makerFile }: Extract<SavedLook, { state: 'readable' }>): string {
  const program = strings.watch.judgedBy(judged.rules);
  return judged.maker === null ? program : `${program} ${strings.watch.makerFile[makerFile](judged.maker.name)}`;
}

const Findings = ({ title, found }: { title: string; found: Found[] }) => (
  <>
    <h3>{title}</h3>
    {found.length === 0 ? (
      <p>{strings.watch.nothingElse}</p>
    ) : (
      <ul>
        {found.map((one) => (
          <li key={`${one.check} ${JSON.stringify(one.data)}`} data-check={one.check}>
            <span class="muted">{kindWords(one.kind)}:</span> {sayFinding(one, chosenLanguage()).statement}
          </li>
        ))}
      </ul>
    )}
  </>
);

const kindWords = (kind: Found['kind']): string => {
  const { contradictions, doubts, gaps, agreements } = strings.findings;
  return { contradiction: contradictions, doubt: doubts, gap: gaps, agreement: agreements }[kind];
};
