import { type Folded, sourceRange } from './fold';
import { labelNear, labelsLead, templateNear } from './measure-label';
import type { Term } from './measure-term';

/**
 * Gives each number of a run the side that its label, or the template before the run, names. `plain` is the folded text
 * folded by `foldWords`; `letters`: the label letters of the text's language.
 */
export function nameSides(folded: Folded, plain: string, terms: readonly Term[], letters: Set<string>): void {
  const template = templateNear(plain, terms[0]!.start, terms.at(-1)!.end, terms.length);
  const lead = labelsLead(plain, terms[0]!, letters);
  for (const [index, term] of terms.entries()) {
    const closes = closesSentence(folded, term.end);
    const label = template?.[index] ?? labelNear(plain, { ...term, closes }, letters, lead);
    term.dimension = label?.dimension ?? null;
    term.letter = label?.letter ?? null;
  }
  if (!template) shareSides(folded.text, terms);
}

/** "3.9 in. Strap up to 47 in.": the full stop of the unit closes the sentence too. */
function closesSentence(folded: Folded, end: number): boolean {
  const next = sourceRange(folded, end - 1, end).end;
  return folded.text[end - 1] === '.' && /^\s+\p{Lu}/u.test(folded.source.slice(next, next + 8));
}

/** `12" (30 cm) wide`: both say the same side. */
function shareSides(text: string, terms: readonly Term[]): void {
  for (const [index, term] of terms.entries()) {
    const other = terms[index + 1];
    if (!other || !/^\s?[(/=]\s?$/.test(text.slice(term.end, other.start))) continue;
    if (term.unit === null || term.unit === other.unit) continue;
    term.dimension ??= other.dimension;
    other.dimension = term.dimension;
  }
}

/** Beside a length, the breadth is the depth ("L x B x H"), and so is the second of two lengths. Common practice, no source. */
export function settleDepth(terms: readonly Term[]): void {
  const letters = terms.map(({ letter }) => letter);
  if (letters.includes('l') && letters.includes('b'))
    for (const term of terms) if (term.letter === 'b') term.dimension = 'depth';
  if (letters.filter((letter) => letter === 'l').length === 2) terms[letters.lastIndexOf('l')]!.dimension = 'depth';
  secondWidthIsDepth(terms);
}

/** "Länge 30, Höhe 21, Breite 17": beside a length, a clearly smaller width is the depth. Common practice, no source. */
function secondWidthIsDepth(terms: readonly Term[]): void {
  const widths = terms.filter((term) => term.dimension === 'width');
  if (widths.length !== 2 || terms.some((term) => term.dimension === 'depth')) return;
  const [first, second] = widths as [Term, Term];
  if (first.unit !== second.unit && first.unit && second.unit) return;
  if (Math.max(first.value, second.value) < Math.min(first.value, second.value) * 1.15) return;
  (first.value < second.value ? first : second).dimension = 'depth';
}
