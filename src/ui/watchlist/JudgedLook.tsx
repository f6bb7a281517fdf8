import { useMemo } from 'preact/hooks';
import { type Case, photoNotes } from '../../case';
import {
  caseOf,
  compareFound,
  type DossierSent,
  type Found,
  type MeasuredPhoto,
  measuredOn,
  type SavedCase,
  type SavedLook,
  sentTo,
} from '../../watch';
import { chosenLanguage, sayFinding, strings } from '../../words';
import { dayWords } from '../day-words';
import type { AskedBefore } from '../message/Message';
import { Replies } from '../message/Replies';
import type { MessageLimit } from '../message/use-limit';
import type { GivenPhoto } from '../panel/sent-photos';
import { CaseView } from '../parts/CaseView';
import { Fold } from '../parts/Fold';
import { MeasuredPhotos } from '../parts/MarkedPhoto';
import { PhotoNotes } from '../parts/PhotoNotes';
import { ProblemNote } from '../parts/ProblemNote';
import { pictureOfLine } from '../pictures';
import { AddSent } from '../sent/AddSent';
import { KeptSent, type OpenFile } from '../sent/KeptSent';
import { SentPhotos } from '../sent/SentPhotos';

interface Props {
  saved: SavedCase;
  at: number;
  asked?: AskedBefore | undefined;
  limit?: MessageLimit | undefined;
  /** Keeps another reply of the seller, where the look may get one. */
  onReply?: ((text: string) => Promise<boolean>) | undefined;
  /** Reads and keeps photos that came another way than by the page, and takes one out again. */
  sending?: Sending | undefined;
  openFile?: OpenFile | undefined;
}

interface Sending {
  add(given: readonly GivenPhoto[]): Promise<void>;
  remove(id: string): void;
}

/** One look of a saved case as it is judged today; where something else was found then, that stands before it. */
export function JudgedLook({ saved, at, asked, limit, onReply, sending, openFile }: Props) {
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
  const judged = { case: kase, pictures: look.pictures };
  const [measured, sent] = [measuredOn(judged), sentTo(judged)];
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
        photos={
          (sending || measured.length + sent.length > 0 || photoNotes(kase) !== null) && (
            <Photos
              kase={kase}
              measured={measured}
              sent={sent}
              files={new Map(look.files.map(({ photoId, file }) => [photoId, file]))}
              sending={sending}
              openFile={openFile}
            />
          )
        }
        replies={onReply && <Replies replies={kase.replies ?? []} onReply={onReply} />}
      />
    </>
  );
}

interface PhotosProps {
  kase: Case;
  measured: readonly MeasuredPhoto[];
  sent: readonly DossierSent[];
  files: ReadonlyMap<string, string>;
  sending: Sending | undefined;
  openFile: OpenFile | undefined;
}

/** Of the look's photos what was kept: what the buyer measured, what came another way than by the page, and what is noticed. */
const Photos = ({ kase, measured, sent, files, sending, openFile }: PhotosProps) => (
  <Fold part="photos" title={titleOf(measured, sent, sending)} open={sent.length > 0}>
    {measured.length > 0 && <MeasuredPhotos measured={measured} />}
    {sent.length > 0 &&
      (openFile ? (
        <KeptSent sent={sent} files={files} openFile={openFile} onRemove={sending?.remove} />
      ) : (
        <SentPhotos sent={sent} onRemove={sending?.remove} />
      ))}
    <PhotoNotes kase={kase} />
    {sending && <AddSent onGiven={sending.add} />}
  </Fold>
);

const titleOf = (
  measured: readonly MeasuredPhoto[],
  sent: readonly DossierSent[],
  sending: Sending | undefined,
): string => {
  if (measured.length > 0) return strings.bench.dossier;
  return sent.length > 0 || sending ? strings.sent.title : strings.photos.title;
};

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
