import type { Proposal } from '../../../src/take/types';

const slotWords = (slot: object): string => {
  const [[name, value] = ['', '']] = Object.entries(slot);
  return name === 'separator' ? '·' : name === 'literal' ? String(value) : `${name} ${value}`;
};
const periodWords = (used: unknown): string =>
  used === undefined
    ? ''
    : Array.isArray((used as unknown[])[0])
      ? (used as unknown[]).map(periodWords).join(' and ')
      : (used as unknown[]).map((end) => end ?? '').join('–');

/** A proposal in one line: what it is, when, and why it is not ticked. */
export function compact(proposal: Proposal): string {
  const {
    maker: _maker,
    words: _words,
    at: _at,
    also: _also,
    source: _source,
    doubts,
    standing: _standing,
    ticked: _ticked,
    kind,
    ...own
  } = proposal;
  const parts = Object.entries(own).map(([name, value]) => {
    if (name === 'used' || name === 'made') return periodWords(value);
    if (name === 'about') return `about ${(value as string[]).join(', ')}`;
    if (name === 'layout') return (value as object[]).map(slotWords).join(' + ');
    if (name === 'examples')
      return (value as { code: string; reads: string }[]).map(({ code, reads }) => `${code} = ${reads}`).join(', ');
    if (name === 'size') return Object.values(value as object).join(' ');
    return String(value);
  });
  return [kind, ...parts.filter((part) => part !== ''), ...doubts.map((doubt) => `(${doubt})`)].join(' | ');
}
