import type { Change, WatchRow } from '../../watch';

/** The rows after a change. They stay where they are: a row that jumped to the top would leave the hand that changed it. */
export function afterChange(rows: WatchRow[], { rows: changed, gone }: Change): WatchRow[] {
  const byId = new Map(changed.map((row) => [row.id, row]));
  const known = new Set(rows.map(({ id }) => id));
  const ended = new Set(gone);
  return [
    ...changed.filter(({ id }) => !known.has(id)),
    ...rows.filter(({ id }) => !ended.has(id)).map((row) => byId.get(row.id) ?? row),
  ];
}
