import { type MakerFile, readMakerFileText } from '../../maker';
import type { Problem } from '../../problem';
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
  if (text === null) return refuse('file-not-text', address, 'what lies at the address is no text', otherAddress);
  if (/^\s*</.test(text.slice(0, 1000)))
    return refuse(
      'file-is-page',
      address,
      'the address shows a page, not a file',
      'Give the address of the file itself: on many sites it stands behind “raw” or “download”.',
    );
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

const later = 'Try again later. Your own file stays as it is.';
const otherAddress = 'Check the address. Your own file stays as it is.';

/** Why an answer brings no file; null for one that may. */
function refusalOf(address: string, answer: FileAnswer): Problem | null {
  switch (answer.kind) {
    case 'led-on':
      return problem(
        'file-led-on',
        address,
        'the address leads on to another, which was not asked',
        'Open it in a tab, and give the address that it ends at.',
      );
    case 'too-large':
      return problem(
        'file-too-large',
        address,
        'more than 5 MB lie at the address: that is no maker file',
        otherAddress,
      );
    case 'cut':
      return problem('file-cut', address, 'the answer broke off before its end', later);
    case 'late':
      return problem('file-late', address, 'the file did not arrive within 30 seconds', later);
    case 'offline':
      return problem(
        'file-offline',
        address,
        'this machine is not connected',
        'Connect it and ask again. Your own file stays as it is.',
      );
    case 'unreachable':
      return problem('file-unreachable', address, 'the server did not answer', later);
    case 'answered':
      return statusProblem(address, answer.status);
  }
}

function statusProblem(address: string, status: number): Problem | null {
  if (status >= 200 && status < 300) return null;
  if (status === 404 || status === 410)
    return problem('file-missing', address, 'there is no file at the address', otherAddress);
  if (status === 401 || status === 403)
    return problem(
      'file-refused',
      address,
      'the server gives the file to nobody it does not know',
      'Save the file yourself and import it.',
    );
  return problem('file-answer', address, `the server answered ${status}`, later);
}

const problem = (code: string, where: string, what: string, remedy: string): Problem => ({ code, where, what, remedy });

const refuse = (code: string, where: string, what: string, remedy: string): FileRead => ({
  ok: false,
  problems: [problem(code, where, what, remedy)],
});
