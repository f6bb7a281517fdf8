import type { Case } from '../../case';
import type { MarkRead } from '../../mark';
import { chosenLanguage, sayCaution, sayMark, strings } from '../../words';
import { groupBy } from '../group-by';
import { numberOf } from '../number-of';
import { Fold } from './Fold';

/**
 * Public marks found on the piece or in the words, each with what it says, its source, and whether its row was
 * verified. The same words of one mark stand once, wherever they were found.
 */
export function Marks({ kase, folded = false }: { kase: Case; folded?: boolean }) {
  const found = groupBy(kase.marks, ({ mark, words }) => `${mark}: ${words}`);
  if (found.length === 0) return null;
  const list = (
    <ul class="marks">
      {found.map(([key, marks]) => (
        <MarkEntry key={key} marks={marks} kase={kase} />
      ))}
    </ul>
  );
  if (folded)
    return (
      <Fold part="marks" title={strings.marks.title}>
        {list}
      </Fold>
    );
  return (
    <section aria-labelledby="marks-title">
      <h2 id="marks-title">{strings.marks.title}</h2>
      {list}
    </section>
  );
}

function MarkEntry({ marks, kase }: { marks: MarkRead[]; kase: Case }) {
  const [first] = marks;
  if (!first) return null;
  const places = [...new Set(marks.map((mark) => whereWords(mark, kase)))];
  const statements = groupBy(marks, ({ says }) => sayMark(says, chosenLanguage()));
  const cautions = [...new Set(marks.map(cautionOf))].filter((caution) => caution !== '');
  return (
    <li>
      <q>{first.words}</q> <span class="muted">{places.join(' · ')}</span>
      {statements.map(([statement, [mark]]) => (
        <p key={statement}>
          {statement}. {mark && <SourceOf mark={mark} />}
        </p>
      ))}
      {cautions.map((caution) => (
        <p key={caution} class="muted">
          {caution}
        </p>
      ))}
    </li>
  );
}

const cautionOf = ({ cautions }: MarkRead) =>
  cautions.map((caution) => sayCaution(caution, chosenLanguage())).join(' ');

const SourceOf = ({ mark }: { mark: MarkRead }) => (
  <small class="muted">
    {`${strings.findings.source}: ${mark.source.text}. `}
    {mark.verified ? '' : <strong>{strings.marks.notVerified}</strong>}
  </small>
);

const whereWords = ({ photoId }: MarkRead, kase: Case): string =>
  photoId === null ? strings.marks.inListing : strings.stamp.inPhoto(numberOf(kase, photoId));
