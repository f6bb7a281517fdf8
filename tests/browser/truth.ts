/** One row of tests/market/truth.json: what is true of a demo listing. Parts that it leaves out are not judged. */
export interface Truth {
  page: string;
  title: string;
  truth: 'sound' | 'contradictory' | 'incomplete';
  code?: string | null;
  /** How many photos the listing shows. */
  photos?: number;
  /** Every finding of these kinds, by check. */
  exact?: Partial<Record<string, string[]>>;
  /** Findings that must be there; others may be too. */
  among?: Partial<Record<string, string[]>>;
}

interface Shown {
  title: string;
  codes: string[];
  findings: { check: string; kind: string }[];
}

/** What a user would see wrong, in sentences; none when the screen shows what is true. */
export function mismatches(listing: Truth, shown: Shown): string[] {
  const wrong: string[] = [];
  const checksOf = (kind: string) => shown.findings.filter((one) => one.kind === kind).map(({ check }) => check);
  if (shown.title !== listing.title) wrong.push(`the title is ${shown.title}, not ${listing.title}`);
  if (typeof listing.code === 'string' && !shown.codes.includes(listing.code)) {
    wrong.push(`the code ${listing.code} is not among those read: ${shown.codes.join(', ') || 'none'}`);
  }
  if (listing.truth === 'sound' && checksOf('contradiction').length > 0) {
    wrong.push(`a sound listing is contradicted by ${checksOf('contradiction').join(', ')}`);
  }
  if (listing.truth === 'contradictory' && checksOf('contradiction').length === 0)
    wrong.push('nothing is contradicted');
  for (const [kind, expected = []] of Object.entries(listing.exact ?? {})) {
    const checks = [...new Set(checksOf(kind))].sort();
    if (checks.join() !== [...new Set(expected)].sort().join()) {
      wrong.push(`${kind}: ${checks.join(', ') || 'none'} instead of ${expected.join(', ') || 'none'}`);
    }
  }
  for (const [kind, expected = []] of Object.entries(listing.among ?? {})) {
    for (const check of expected) if (!checksOf(kind).includes(check)) wrong.push(`${kind} by ${check} is missing`);
  }
  return wrong;
}
