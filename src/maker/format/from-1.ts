import { plainName } from '../name';

type Group = Record<string, unknown>;

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const groupsOf = (value: unknown): unknown[] => (Array.isArray(value) ? value : []);

/** The one source of an entry as the first of several; an empty one is none. */
function sourced(entry: unknown): unknown {
  if (!isGroup(entry) || !('source' in entry)) return entry;
  const { source, ...rest } = entry;
  const { note, ...others } = rest;
  const sources = source === undefined || source === '' ? {} : { sources: [source] };
  return { ...others, ...sources, ...('note' in rest ? { note } : {}) };
}

/**
 * A file or draft of the first format as one of the second. What is unfinished or wrong is taken along as it is, so
 * that the editor still shows it; nothing that was written is lost. Years and size of a model become its first run, and
 * models that were written twice under one name become runs of one; where the stamps of a system sit becomes a carrier;
 * the smallest new prices become prices.
 */
export function fromFormat1(value: Readonly<Group>): Group {
  const { plants, codeSystems, construction, models, trade, stamped, ...rest } = value;
  const systems = groupsOf(codeSystems).map(systemOf);
  const carriers = carriersOf(groupsOf(codeSystems));
  const prices = isGroup(trade) ? pricesOf(trade) : [];
  return {
    ...rest,
    format: 2,
    ...(stamped === undefined ? {} : { stamped: sourced(stamped) }),
    ...(plants === undefined ? {} : { plants: listed(plants, sourced) }),
    ...(codeSystems === undefined ? {} : { codeSystems: Array.isArray(codeSystems) ? systems : codeSystems }),
    ...(carriers.length > 0 ? { carriers } : {}),
    ...(construction === undefined ? {} : { construction: listed(construction, sourced) }),
    ...(models === undefined ? {} : { models: Array.isArray(models) ? modelsOf(models) : models }),
    ...(prices.length > 0 ? { prices } : {}),
    ...(trade === undefined ? {} : { trade: isGroup(trade) ? tradeOf(trade) : trade }),
  };
}

const listed = (value: unknown, each: (entry: unknown) => unknown): unknown =>
  Array.isArray(value) ? value.map(each) : value;

function systemOf(system: unknown): unknown {
  if (!isGroup(system)) return system;
  const { where, ...rest } = system;
  return sourced(typeof where === 'string' || where === undefined ? rest : system);
}

/** Stamps by where they sit, each with the systems that sit there. */
function carriersOf(systems: readonly unknown[]): unknown[] {
  const byPlace = new Map<string, unknown[]>();
  for (const system of systems) {
    if (!isGroup(system) || typeof system.where !== 'string' || system.where === '') continue;
    byPlace.set(system.where, [...(byPlace.get(system.where) ?? []), system.id]);
  }
  return [...byPlace].map(([where, ids]) => ({ kind: 'stamp', where, systems: ids }));
}

/** Models with their years and size as a run; those of one name joined, each run with what stood at its own entry. */
function modelsOf(models: readonly unknown[]): unknown[] {
  const known = new Map<string, number>();
  const next: unknown[] = [];
  for (const model of models) {
    const own = modelOf(model);
    const name = isGroup(own) && typeof own.name === 'string' ? plainName(own.name) : '';
    const at = known.get(name);
    if (name === '' || at === undefined || !isGroup(own)) {
      if (name !== '') known.set(name, next.length);
      next.push(own);
    } else next[at] = joined(next[at] as Group, own);
  }
  return next;
}

function modelOf(model: unknown): unknown {
  if (!isGroup(model)) return model;
  const { made, size, parts, aliases, name, ...rest } = model;
  const run = { ...(made === undefined ? {} : { made }), ...(size === undefined ? {} : { size }) };
  return {
    ...(name === undefined ? {} : { name }),
    ...(aliases === undefined ? {} : { aliases }),
    ...(Object.keys(run).length > 0 ? { runs: [run] } : {}),
    ...(parts === undefined ? {} : { parts }),
    ...(sourced(rest) as Group),
  };
}

/** What a model of a name that was there already adds: its runs with what stood at its entry, or that at the model itself. */
function joined(first: Group, again: Group): Group {
  const { runs: _runs, sources: _sources, note: _note, ...whole } = first;
  const told = ({ runs, ...more }: Group): Group[] => (groupsOf(runs) as Group[]).map((run) => ({ ...more, ...run }));
  const saying = (model: Group): Group => ({
    runs: model.runs,
    ...(model.sources === undefined ? {} : { sources: model.sources }),
    ...(model.note === undefined ? {} : { note: model.note }),
  });
  const [own, other] = [told(saying(first)), told(saying(again))];
  const loose = [...(own.length > 0 ? [] : [first]), ...(other.length > 0 ? [] : [again])];
  const looseSources = loose.flatMap((model) => groupsOf(model.sources));
  const looseNotes = loose.flatMap((model) => (model.note === undefined ? [] : [model.note]));
  const names = [
    ...groupsOf(first.aliases),
    ...(again.name === first.name ? [] : [again.name]),
    ...groupsOf(again.aliases),
  ];
  const parts = [...groupsOf(first.parts), ...groupsOf(again.parts)];
  const runs = [...own, ...other];
  return {
    ...whole,
    ...(names.length > 0 ? { aliases: [...new Set(names)] } : {}),
    ...(runs.length > 0 ? { runs } : {}),
    ...(parts.length > 0 ? { parts: [...new Set(parts)] } : {}),
    ...(looseSources.length > 0 ? { sources: looseSources } : {}),
    ...(looseNotes.length > 0 ? { note: looseNotes.join('\n') } : {}),
  };
}

/** Amounts that the smallest new piece cost, with the source of the price habits that they stood under. */
function pricesOf({ newPriceFloor, source }: Group): unknown[] {
  return groupsOf(newPriceFloor).map((floor) => {
    if (!isGroup(floor)) return floor;
    const { amount, ...rest } = floor;
    return {
      condition: 'new',
      least: amount,
      ...rest,
      ...(typeof source === 'string' && source !== '' ? { sources: [source] } : {}),
    };
  });
}

function tradeOf({ newPriceFloor, ...trade }: Group): unknown {
  return sourced(Array.isArray(newPriceFloor) || newPriceFloor === undefined ? trade : { ...trade, newPriceFloor });
}
