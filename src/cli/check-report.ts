import type { Case } from '../case';
import { findingsOf, headOf, tellingsOf } from '../case';
import { type Finding, type FindingKind, photoNumber } from '../check';
import type { Decoding } from '../code/types';
import type { Problem } from '../problem';
import {
  composeMessage,
  messageLanguageOf,
  readingWords,
  sayFinding,
  sayHead,
  sayProblem,
  sayReason,
  saySource,
  sayTellings,
  strings,
  systemWords,
} from '../words';

const titles: [FindingKind, string][] = [
  ['contradiction', 'Speaks against: two hard facts that cannot both hold'],
  ['doubt', 'Speaks against: unusual'],
  ['gap', 'Still open'],
  ['agreement', 'Fits'],
];

/** A case in plain words for the terminal: findings by kind, what could not be told, the message to the seller. */
export function reportOf(built: Case): string {
  const findings = findingsOf(built);
  const lines = [
    built.listing.title[0]?.value ?? 'Page without a title',
    `Maker file: ${built.maker ?? 'none fits'}${built.makerInvented ? ' (invented, for demonstration)' : ''}`,
    '',
    ...sayHead(headOf(built)).map(({ name, sentences }) => `${name}: ${sentences.join(' ')}`),
  ];
  const codes = built.decodings.filter(({ accepted }) => accepted);
  if (codes.length > 0) lines.push('', strings.stamp.title, ...codes.flatMap((one) => codeLines(one, built)));
  for (const [kind, title] of titles) {
    const own = findings.filter((finding) => finding.kind === kind);
    if (own.length > 0) lines.push('', title, ...own.flatMap((finding) => findingLines(finding, built)));
  }
  const unsure = untold(built);
  if (unsure.length > 0) lines.push('', 'Cannot tell', ...unsure);
  const failed = built.outcomes.flatMap((one) => (one.outcome === 'failed' ? [one] : []));
  if (failed.length > 0)
    lines.push('', 'Failed', ...failed.map(({ check, why }) => `- ${strings.findings.failed(check, why)}`));
  if (built.skipped.length > 0)
    lines.push('', 'Not read or not done', ...built.skipped.map((problem) => `- ${problemWords(problem)}`));
  const message = composeMessage(built.questions, {
    sellerName: built.listing.seller.name[0]?.value,
    title: built.listing.title[0]?.value,
    language: messageLanguageOf(built.listing.language),
  });
  if (message !== '') lines.push('', 'Message to the seller', '', message);
  lines.push('', caution);
  return lines.join('\n');
}

/** A problem in two sentences: what happened, what can be done. */
export function problemWords(problem: Problem): string {
  const { what, remedy } = sayProblem(problem, 'en');
  return `${what.replace(/\.$/, '')}. ${remedy}`;
}

/** The checks that cannot tell, by the reason that they share. */
function untold(built: Case): string[] {
  const unsure = built.outcomes.flatMap((one) =>
    one.outcome === 'cannot-tell' ? [{ check: one.check, why: sayReason(one.why, 'en') }] : [],
  );
  const reasons = [...new Set(unsure.map(({ why }) => why))];
  return reasons.map((why) => {
    const checks = unsure.filter((one) => one.why === why).map(({ check }) => check);
    return `- ${why}: ${checks.length > 10 ? `${checks.length} checks` : checks.join(', ')}`;
  });
}

/** A code that counts as read, where it stands, and what it may say: without a file several things at once. */
function codeLines({ code, from, readings }: Decoding, { listing }: Case): string[] {
  const where =
    from.kind === 'photo' ? strings.stamp.inPhoto(photoNumber(listing, from.photoId) ?? 0) : strings.stamp.inListing;
  const says = [...new Set(readings.map((one) => `    ${readingWords(one)} (${systemWords(one.system)})`))];
  return [`- ${code} (${where})`, ...(says.length > 0 ? says : [`    ${strings.stamp.noSystem}`])];
}

/** Shown under every report. */
const caution =
  'This is no authentication. Ask a qualified authenticator before paying, pay inside the marketplace, and report a listing to the marketplace, not in public.';

function findingLines(finding: Finding, built: Case): string[] {
  const { kind, source } = finding;
  const { statement, innocent, settles } = sayFinding(finding, 'en');
  if (kind === 'agreement')
    return [`- ${statement}`, ...sayTellings(tellingsOf(finding, built), 'en').map((line) => `    ${line}`)];
  const standing = saySource(source, 'en');
  return [`- ${statement}`, `    It may be that: ${innocent}`, `    Settled by: ${settles}`, `    Source: ${standing}`];
}
