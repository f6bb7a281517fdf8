import { type CodeSystem, type FieldPath, liveExamples, type Plant } from '../../maker';
import { strings } from '../../words';
import { Entries, textOf } from './Entries';
import { EntryFields } from './EntryFields';
import type { Editing } from './editing';
import { PeriodField, TextField, TickField } from './fields';
import { Layout } from './Layout';

const words = strings.makers;

/** The code systems: slots built by clicking, the examples decoding beside them at every change. */
export const Systems = ({ edit, behind }: { edit: Editing; behind: ReadonlyMap<string, number> }) => (
  <Entries
    edit={edit}
    list={['codeSystems']}
    title={words.systems}
    add={words.addSystem}
    fresh={() => ({
      id: `system-${edit.list(['codeSystems']).length + 1}`,
      used: ['1990', null],
      layout: [],
      examples: [],
    })}
    nameOf={(entry) => textOf(entry, 'id', words.system)}
  >
    {(path, entry) => (
      <>
        <CasesBehind number={behind.get(textOf(entry, 'id', '')) ?? 0} />
        <div class="fields">
          <TextField edit={edit} path={[...path, 'id']} label={words.id} required />
          <TextField edit={edit} path={[...path, 'name']} label={words.name} />
          <PeriodField edit={edit} path={[...path, 'used']} label={words.used} words={words.period} />
          <TickField edit={edit} path={[...path, 'reversed']} label={words.rightToLeft} />
        </div>
        <EntryFields edit={edit} path={path} />
        <Layouts edit={edit} path={path} system={entry} />
        <Examples edit={edit} path={path} system={entry} />
      </>
    )}
  </Entries>
);

const CasesBehind = ({ number }: { number: number }) =>
  number === 0 ? null : <p class="hint">{words.casesBehind(number)}</p>;

/** The layouts of a system: most have one; a second turns the field into a list, and the last left stays one. */
function Layouts({ edit, path, system }: { edit: Editing; path: FieldPath; system: unknown }) {
  const { layout, layouts, ...others } = (system ?? {}) as Record<string, unknown>;
  const all: unknown[] = Array.isArray(layouts) ? layouts : [layout ?? []];
  const put = (what: string, next: unknown[]) =>
    edit.change(what, path, next.length === 1 ? { ...others, layout: next[0] } : { ...others, layouts: next });
  return (
    <>
      {all.map((_, index) => (
        <div key={index}>
          <Layout
            edit={edit}
            path={Array.isArray(layouts) ? [...path, 'layouts', index] : [...path, 'layout']}
            title={all.length > 1 ? words.layoutOf(index + 1) : words.layout}
          />
          {all.length > 1 && (
            <button
              type="button"
              class="small"
              onClick={() =>
                put(
                  words.steps.removeLayout(index + 1),
                  all.filter((_, at) => at !== index),
                )
              }
            >
              {words.remove(words.layoutName(index + 1))}
            </button>
          )}
        </div>
      ))}
      <p class="row">
        <button type="button" class="small" onClick={() => put(words.steps.addLayout, [...all, []])}>
          {words.addLayout}
        </button>
      </p>
    </>
  );
}

/** Known codes with what they read, each beside what the system makes of it now. */
function Examples({ edit, path, system }: { edit: Editing; path: FieldPath; system: unknown }) {
  const live = decodeLive(system, edit.list(['plants']));
  return (
    <Entries
      edit={edit}
      list={[...path, 'examples']}
      title={words.examplesOf(textOf(system, 'id', words.system))}
      add={words.addExample}
      fresh={() => ({ code: '', reads: '' })}
      nameOf={(entry, index) => textOf(entry, 'code', `${index + 1}`)}
      level={4}
    >
      {(place, _, index) => (
        <div class="fields">
          <TextField edit={edit} path={[...place, 'code']} label={words.code} required />
          <TextField edit={edit} path={[...place, 'reads']} label={words.reads} hint={words.readsHint} required />
          <p class={`live live-${live?.[index]?.state.replaceAll(' ', '-') ?? 'unknown'}`} role="status">
            {live?.[index]
              ? `${words.live[live[index].state]}${live[index].says.length > 0 ? `: ${live[index].says.join(' / ')}` : ''}`
              : ''}
          </p>
        </div>
      )}
    </Entries>
  );
}

/** A system that is half written cannot decode yet: then nothing is said, and the fields say what is missing. */
function decodeLive(system: unknown, plants: unknown[]) {
  try {
    return liveExamples(system as CodeSystem, plants as Plant[]);
  } catch {
    return null;
  }
}
