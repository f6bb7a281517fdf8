import type { ComponentChildren } from 'preact';
import {
  type Case,
  type CaseAnswer,
  type FormReading,
  isLoose,
  makerGuessed,
  makerNamed,
  type SeenIn,
} from '../../case';
import { kit, readingWords, strings } from '../../words';
import { BesideCode } from './BesideCode';
import { CodeRows } from './CodeRows';
import { OtherReadings } from './OtherReadings';

interface Props {
  kase: Case;
  answer: CaseAnswer;
  /** The stamped line cut from its photo, as a data address. */
  pictureOfLine: (photoId: string, lineId: string) => string | null;
  /** While photos are still being read, a stamp that was not seen so far is still looked for. */
  isReading?: boolean;
  /** On paper nothing opens: every way to read a code by its form stands in the open. */
  whole?: boolean;
  /** What can be done about it: type the code, look closer. */
  children?: ComponentChildren;
}

/**
 * What stands first: what the stamp says and what the listing says, in one sentence each, over the stamp's picture; how
 * its code is built; and by whose file. The reader draws the line between the two.
 */
export function Answer({ kase, answer, pictureOfLine, isReading = false, whole = false, children }: Props) {
  const { stamp } = answer;
  const from = 'decoding' in stamp ? stamp.decoding.from : null;
  const picture = from?.kind === 'photo' ? pictureOfLine(from.photoId, from.lineId) : null;
  const number = 'seenIn' in stamp && stamp.seenIn.kind === 'photo' ? stamp.seenIn.number : null;
  const code = 'code' in stamp ? stamp.code : null;
  return (
    <section class="answer" aria-labelledby="stamp-title" data-answer={stamp.kind} aria-live="polite">
      <h2 id="stamp-title" tabIndex={-1}>
        {answerWords(answer, kase, isReading)}
      </h2>
      {stamp.kind === 'reads' && (
        <p class="muted hint">
          {strings.answer.byFile(stamp.reading.system.maker ?? '', stamp.reading.system.invented === true)}
        </p>
      )}
      {(picture !== null || code !== null) && (
        <figure class="stamp-shown">
          {picture !== null && (
            <img class="stamp-crop" src={picture} alt={number === null ? '' : strings.stamp.pictureOf(number)} />
          )}
          {code !== null && (
            <figcaption>
              <strong class="code stamp-text">{code}</strong>{' '}
              <span class="muted">{'seenIn' in stamp && seenWords(stamp.seenIn)}</span>
            </figcaption>
          )}
        </figure>
      )}
      {stamp.kind === 'reads' && <CodeRows reading={stamp.reading} />}
      {stamp.kind === 'reads' && <BesideCode decoding={stamp.decoding} />}
      {stamp.kind === 'unexplained' && stamp.forms.length > 0 && (
        <Forms forms={stamp.forms} said={answer.said} onScreen={!whole} />
      )}
      {children}
    </section>
  );
}

/** The sentences: what the stamp says, then what the listing says. */
export function answerWords({ stamp, said }: CaseAnswer, kase: Case, isReading: boolean): string {
  const words = strings.answer;
  const what = (seenIn: SeenIn) =>
    seenIn.kind === 'photo' ? words.seenIn.photo(seenIn.number, seenIn.copy) : words.seenIn[seenIn.kind];
  const listing = saidWords(said);
  const alone = isLoose(kase.listing);
  const says = alone ? '' : listing === '' ? saysNoMaking(kase, said) : words.said(listing);
  switch (stamp.kind) {
    case 'reads':
      return `${words.reads(what(stamp.seenIn), readingWords(stamp.reading))} ${says}`;
    case 'several':
      return `${words.several(kit.list(stamp.codes))} ${says}`;
    case 'unexplained': {
      const noFile = alone
        ? words.unexplainedAlone
        : words.unexplained(makerNamed(kase).slice(0, longestMaker), guessedMaker(kase));
      const unexplained = kase.maker === null ? noFile : words.noneFits(kase.maker);
      return `${words.readsOnly(what(stamp.seenIn), stamp.code)} ${unexplained}`;
    }
    case 'unsure':
      return `${words.unsure(what(stamp.seenIn), kit.either(stamp.texts.slice(0, 2)))} ${says}`;
    case 'none':
      return `${isReading ? words.looking : words.none(stamp.read, stamp.unread)} ${says}`;
    case 'unopened':
      return `${isReading && stamp.photos > 0 ? words.looking : words.unopened(stamp.photos)} ${says}`;
  }
}

/** Nothing of its making that counts: only when it was acquired, or of several pieces none is chosen yet. */
const saysNoMaking = ({ lot }: Case, { bought }: CaseAnswer['said']): string => {
  if (bought.length > 0) return strings.answer.saidAcquired(kit.either(bought.map(kit.span)));
  if (!lot) return strings.answer.saidNothing;
  return lot.chosen === null
    ? lot.pieces.length === 0
      ? ''
      : strings.answer.choose
    : strings.answer.saidNothingOf(lot.chosen);
};

const longestMaker = 60;
const guessedMaker = (kase: Case): string | null => makerGuessed(kase)?.slice(0, longestMaker) ?? null;

const saidWords = ({ dates, places }: CaseAnswer['said']): string =>
  [kit.either(dates.map(kit.span)), kit.either(places.map(kit.place))].filter(Boolean).join(', ');

const seenWords = (seenIn: SeenIn): string => {
  if (seenIn.kind === 'listing') return strings.stamp.inListing;
  if (seenIn.kind === 'typed') return strings.answer.byHand;
  return seenIn.number === null ? '' : strings.stamp.inPhoto(seenIn.number, seenIn.copy ? strings.copies.small : '');
};

/** More ways than these would bury the likely ones. */
const mostForms = 4;

/** Of several ways, how often each is meant: behind a step, for a habit of the trade decides nothing of this piece. */
const FormShares = ({ forms }: { forms: readonly FormReading[] }) => (
  <details class="quiet">
    <summary>{strings.answer.formShares}</summary>
    <ul class="forms">
      {forms.map(({ reading }) => (
        <li key={`${reading.system.id} ${reading.text}`}>
          {reading.span === null ? strings.answer.noDate : readingWords(reading)}:{' '}
          {strings.answer.formShare(reading.probability)}
        </li>
      ))}
    </ul>
  </details>
);

/** Every way to read the code by its form alone, and whether it fits the claim. */
function Forms({
  forms,
  said,
  onScreen,
}: {
  forms: readonly FormReading[];
  said: CaseAnswer['said'];
  onScreen: boolean;
}) {
  const most = onScreen ? mostForms : forms.length;
  const words = strings.answer;
  const dates = kit.either([...said.dates, ...said.boughtBy].map(kit.span));
  return (
    <>
      <h3>{words.forms}</h3>
      <ul class="forms">
        {forms.slice(0, most).map(({ reading, fits }) => (
          <li key={`${reading.system.id} ${reading.text}`}>
            {reading.span === null ? words.noDate : readingWords(reading)}.{' '}
            {fits !== null && (fits ? words.formFits(dates) : words.formFitsNot(dates))}
          </li>
        ))}
      </ul>
      {onScreen && forms.length > 1 && <FormShares forms={forms.slice(0, most)} />}
      <OtherReadings readings={forms.slice(most).map(({ reading }) => reading)} />
      <p class="muted hint">{words.formsNote}</p>
    </>
  );
}
