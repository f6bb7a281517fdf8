import { type MakerFile, readMakerFileText } from '../../maker';
import { type Problem, problem } from '../../problem';
import type { AskFile, FileAnswer } from './ask-file';

/** A maker file as it was at an address. */
export interface FileAt {
  address: string;
  /** When, as ISO date and time. */
  at: string;
  /** SHA-256 of its bytes, in hexadecimal. */
  sha256: string;
  bytes: number;
  file: MakerFile;
}

export interface FilePorts {
  ask: AskFile;
  /** SHA-256 in hexadecimal. */
  digest: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>;
  now: () => Date;
}

export type FileRead = { ok: true; value: FileAt } | { ok: false; problems: Problem[] };

/** Far above any maker file, pictures and all; a greater answer is ended while it comes. */
export const mostFileBytes = 5_000_000;

/** Fetches the maker file at an address and checks it whole. Nothing is kept of it. */
export async function readFileAt(address: string, { ask, digest, now }: FilePorts): Promise<FileRead> {
  const answer = await ask(address, mostFileBytes);
  const refused = refusalOf(address, answer);
  if (answer.kind !== 'answered' || refused) return { ok: false, problems: refused ? [refused] : [] };
  const { bytes } = answer;
  const text = textOf(bytes);
  if (text === null) return refuse('file-not-text', address);
  if (/^\s*</.test(text.slice(0, 1000))) return refuse('file-is-page', address);
  const read = readMakerFileText(text);
  if (!read.ok) return { ok: false, problems: read.problems };
  return {
    ok: true,
    value: { address, at: now().toISOString(), sha256: await digest(bytes), bytes: bytes.length, file: read.file },
  };
}

function textOf(bytes: Uint8Array<ArrayBuffer>): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Why an answer brings no file; null for one that may. */
function refusalOf(address: string, answer: FileAnswer): Problem | null {
  return answer.kind === 'answered' ? statusProblem(address, answer.status) : problem(`file-${answer.kind}`, address);
}

function statusProblem(address: string, status: number): Problem | null {
  if (status >= 200 && status < 300) return null;
  if (status === 404 || status === 410) return problem('file-missing', address);
  if (status === 401 || status === 403) return problem('file-refused', address);
  return problem('file-answer', address, { status });
}

const refuse = (code: 'file-not-text' | 'file-is-page', where: string): FileRead => ({
  ok: false,
  problems: [problem(code, where)],
});
