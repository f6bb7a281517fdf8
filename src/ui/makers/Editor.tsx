import { type Draft, inspectDraft, redoStep, undoStep } from '../../maker';
import type { Problem } from '../../problem';
import { strings } from '../../words';
import { ProblemNote, saidProblem, sentence } from '../parts/ProblemNote';
import { BesideMarks, Carriers } from './CarrierEntries';
import { casesBehind } from './dated-cases';
import { EntryFields } from './EntryFields';
import { editingOf } from './editing';
import { FieldProblems, TextField } from './fields';
import { hasField, placeOf, useGoToField } from './go-to-field';
import { LearnSystem } from './LearnSystem';
import { LinesField } from './list-fields';
import { Models } from './Models';
import { Numbers, Prices } from './NumberEntries';
import { ConstructionFacts, Trade } from './OtherEntries';
import { Plants } from './Plants';
import { Systems } from './Systems';
import { Typefaces } from './Typefaces';
import { useDatedCases } from './use-dated-cases';

const words = strings.makers;

interface Props {
  fileId: string;
  /** A code with its date to begin with. */
  known?: string;
  draft: Draft;
  onChange: (draft: Draft) => void;
}

/** One maker file, field by field; what is wrong stands at its field, and every change can be taken back. */
export function Editor({ fileId, known = '', draft, onChange }: Props) {
  const inspection = inspectDraft(draft);
  const { maker, aliases } = draft.value;
  const cases = useDatedCases(
    [maker, ...(Array.isArray(aliases) ? aliases : [])].filter((one) => typeof one === 'string'),
  );
  const behind = inspection.file ? casesBehind(inspection.file, cases) : new Map<string, number>();
  const edit = editingOf(draft, inspection, onChange);
  const [back, forth] = [draft.past.at(-1), draft.future[0]];
  const { editor, goTo } = useGoToField();
  const whole = inspection.byField.get('the file') ?? [];
  return (
    <div class="maker-editor" ref={editor}>
      <div class="row editor-bar">
        <p role="status" class="spread">
          {inspection.file ? words.finished : words.unfinished(inspection.problems.length)}{' '}
          <span class="muted">{words.saved}</span>
        </p>
        <button type="button" disabled={!back} onClick={() => onChange(undoStep(draft))}>
          {back ? words.undoStep(back.what) : words.undoNothing}
        </button>
        <button type="button" disabled={!forth} onClick={() => onChange(redoStep(draft))}>
          {forth ? words.redoStep(forth.what) : words.redoNothing}
        </button>
      </div>
      {whole.map((problem) => (
        <ProblemNote key={saidProblem(problem).what} problem={problem} />
      ))}
      <AllProblems problems={inspection.problems} onGoTo={goTo} />
      <div class="fields">
        <TextField edit={edit} path={['maker']} label={words.maker} required />
        <LinesField edit={edit} path={['aliases']} label={words.aliases} />
        <LinesField edit={edit} path={['sources']} label={words.sources} />
        <LinesField edit={edit} path={['authors']} label={words.authors} />
        <TextField edit={edit} path={['licence']} label={words.licence} />
        <TextField edit={edit} path={['note']} label={words.note} />
      </div>
      <Stamped edit={edit} />
      <Systems edit={edit} behind={behind} />
      <LearnSystem key={fileId} edit={edit} fileId={fileId} known={known} cases={cases} />
      <Plants edit={edit} />
      <Carriers edit={edit} />
      <BesideMarks edit={edit} />
      <ConstructionFacts edit={edit} />
      <Models edit={edit} />
      <Numbers edit={edit} />
      <Typefaces edit={edit} />
      <Prices edit={edit} />
      <Trade edit={edit} />
    </div>
  );
}

/**
 * Everything to correct in one list, for a long file, and for what was written by hand and has no field here. The name
 * of a field leads to it.
 */
function AllProblems({ problems, onGoTo }: { problems: readonly Problem[]; onGoTo: (where: string) => void }) {
  if (problems.length === 0) return null;
  return (
    <details>
      <summary>{words.allProblems}</summary>
      <ul class="field-problems">
        {problems.map(saidProblem).map(({ where, what, expected, remedy }) => (
          <li key={where + what}>
            {hasField(where) ? (
              <button type="button" class="link" onClick={() => onGoTo(where)}>
                {words.place(where)}
              </button>
            ) : (
              words.place(where)
            )}
            : {sentence(expected === undefined ? what : words.expected(what, expected))} {remedy}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** When the maker stamped codes at all: a period that is taken out when both its dates are emptied. */
function Stamped({ edit }: { edit: ReturnType<typeof editingOf> }) {
  const stamped = (edit.at(['stamped']) ?? {}) as { from?: string; to?: string | null };
  const set = (part: Partial<typeof stamped>) => {
    const next = { from: '', to: null, ...stamped, ...part };
    edit.set(['stamped'], next.from === '' && !next.to && Object.keys(next).length === 2 ? undefined : next, true);
  };
  return (
    <>
      <fieldset class="field period" {...placeOf(['stamped'])}>
        <legend>{words.stamped}</legend>
        <div class="row">
          {(['from', 'to'] as const).map((end) => (
            <input
              {...placeOf(['stamped', end])}
              key={end}
              type="text"
              aria-label={`${words.stamped}, ${end === 'from' ? words.stampedFrom : words.stampedTo}`}
              placeholder={end === 'from' ? words.period.hint : words.period.to}
              value={stamped[end] ?? ''}
              onInput={({ currentTarget: { value } }) => set({ [end]: end === 'to' && value === '' ? null : value })}
            />
          ))}
        </div>
        {(['stamped', 'stamped.from', 'stamped.to'] as const).map((where) => (
          <FieldProblems key={where} edit={edit} path={where.split('.')} />
        ))}
      </fieldset>
      {edit.at(['stamped']) !== undefined && <EntryFields edit={edit} path={['stamped']} />}
    </>
  );
}
