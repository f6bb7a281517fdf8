import { useState } from 'preact/hooks';
import { answerOf, type Case, fileFromCase, makerNamed } from '../../case';
import { spanReads } from '../../code';
import { plainName } from '../../maker';
import { readOwnMakers, writeOwnMaker } from '../../store/maker-files';
import type { DatedOtherwise as Dated } from '../../watch';
import { strings } from '../../words';
import { rowOfKnown } from '../makers/dated-cases';
import { readKnownRows } from '../makers/known-codes';
import { Fold } from '../parts/Fold';

const words = strings.watch.dated;
const ways = ['receipt', 'answer', 'own', 'elsewhere'] as const;

interface Props {
  kase: Case;
  dated: Dated | null;
  onDated: (dated: Omit<Dated, 'at'> | null) => void;
}

/**
 * When the piece was made, where a receipt, the seller's answer or the piece itself settles it: with its code that is an
 * example of how its maker wrote dates, and is offered to the maker's file.
 */
export function DatedOtherwise({ kase, dated, onDated }: Props) {
  return (
    <Fold part="dated" title={words.title} open={dated !== null}>
      {dated === null ? <Ask kase={kase} onDated={onDated} /> : <Settled kase={kase} dated={dated} onDated={onDated} />}
    </Fold>
  );
}

/** Any code, where a date is understood without one. */
const anyCode = 'X';

function Ask({ kase, onDated }: Pick<Props, 'kase' | 'onDated'>) {
  const answer = answerIn(kase);
  const [date, setDate] = useState(answer);
  const [country, setCountry] = useState('');
  const [by, setBy] = useState<Dated['by']>(answer === '' ? 'receipt' : 'answer');
  const [refused, setRefused] = useState('');
  const { stamp } = answerOf(kase);
  const code = 'code' in stamp ? stamp.code : '';
  const keep = () => {
    const [row] = readKnownRows([code || anyCode, date, country].join(';'));
    if (!row?.known) return setRefused(row?.problem ?? words.noDate);
    const maker = makerNamed(kase).slice(0, 120);
    onDated({ reads: row.known.reads, by, maker, code });
  };
  return (
    <form
      class="dated"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <p class="muted">{words.about}</p>
      <div class="row">
        <label class="field-label">
          {words.date}
          <input type="text" value={date} onInput={({ currentTarget: { value } }) => setDate(value)} />
        </label>
        <label class="field-label">
          {words.country}
          <input type="text" value={country} onInput={({ currentTarget: { value } }) => setCountry(value)} />
        </label>
        <label class="field-label">
          {words.by}
          <select value={by} onChange={({ currentTarget: { value } }) => setBy(value as Dated['by'])}>
            {ways.map((way) => (
              <option key={way} value={way}>
                {words.ways[way]}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" disabled={date.trim() === ''}>
          {words.keep}
        </button>
      </div>
      <div role="alert">{refused !== '' && <p class="problem">{refused}</p>}</div>
    </form>
  );
}

function Settled({ kase, dated, onDated }: Props & { dated: Dated }) {
  const { code, maker, reads, by } = dated;
  const [row] = readKnownRows(rowOfKnown({ code: code || anyCode, reads }));
  const give = async () => {
    const own = await readOwnMakers();
    const file = own.find(({ draft }) => plainName(String(draft.value.maker ?? '')) === plainName(maker));
    const id = file?.id ?? crypto.randomUUID();
    const begun = file ? null : fileFromCase(kase, '');
    if (begun) await writeOwnMaker(id, begun);
    location.hash = `makers&file=${id}&known=${encodeURIComponent(rowOfKnown(dated))}`;
  };
  return (
    <>
      <p>
        {words.says(row?.known ? row.says : reads, words.ways[by])}{' '}
        <button type="button" class="small" onClick={() => onDated(null)}>
          {words.takeBack}
        </button>
      </p>
      {code === '' || maker === '' ? (
        <p class="muted">{words.noExample}</p>
      ) : (
        <p class="row">
          <button type="button" onClick={give}>
            {words.give(code, maker)}
          </button>
        </p>
      )}
    </>
  );
}

/** The date that the seller's replies give; empty where they give none, or several. */
function answerIn({ claims }: Case): string {
  const said = claims.flatMap((claim) => (claim.kind === 'made' && claim.at.field === 'reply' ? [claim.span] : []));
  const dates = new Set(said.map((span) => `${span.about ? 'about ' : ''}${spanReads(span)}`));
  const [only] = dates;
  return dates.size === 1 && only !== undefined ? only : '';
}
