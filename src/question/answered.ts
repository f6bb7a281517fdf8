import type { Ask, AskData, AskId } from '../check';
import type { Claim } from '../claim/types';

/** What of a question the seller has answered, by what was said: the question leaves it out. */
type Answered = { [A in AskId]?: (claims: readonly Claim[], data: AskData[A]) => AskData[A] };
const answered: Answered = {
  'made-date': (claims) => (claims.some(({ kind }) => kind === 'bought') ? { told: true } : {}),
  purchase: (claims) => (claims.some((claim) => claim.kind === 'bought' && claim.invoice) ? { told: true } : {}),
  part: (claims, { part }) => (isMended(claims, [part]) ? { part, told: true } : { part }),
  aging: (claims) => (isMended(claims, ['handle', 'trim', 'hardware']) ? { told: true } : {}),
};

const isMended = (claims: readonly Claim[], parts: readonly string[]): boolean =>
  claims.some((claim) => claim.kind === 'replaced' && claim.parts.some((part) => parts.includes(part)));

/** An ask without what the seller has told already. */
export function stillOpen(ask: Ask, claims: readonly Claim[]): Ask {
  const leave = answered[ask.ask as AskId] as ((claims: readonly Claim[], data: unknown) => never) | undefined;
  return leave ? { ...ask, data: leave(claims, ask.data) } : ask;
}
