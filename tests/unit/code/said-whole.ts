import { changeWords } from '../../../src/cli/change-words';
import type { Decoding, Learned, Reading } from '../../../src/code';
import { expectedWords } from '../../../src/code';
import type { Span } from '../../../src/span/types';
import { sayLayoutPart, sayReadingReason, sayTells, strings } from '../../../src/words';

const spanText = (span: Span | null) =>
  span === null ? 'no date' : `${span.from ?? '…'} to ${span.to ?? '…'} (${span.precision})`;
const number = (value: number) => Number(value.toPrecision(6)).toString();

function readingLines({
  text,
  probability,
  system,
  parts,
  span,
  places,
  plant,
  systemUsed,
  reasons,
}: Reading): string[] {
  const at = plant ? `, plant ${plant.code} of ${plant.place} ${plant.used.map(spanText).join(', ')}` : '';
  return [
    `  reads ${text}, ${number(probability)}, ${system.maker ?? 'family'}/${system.id}: ${spanText(span)}, ${places.join(' ') || 'no place'}${at}; used ${spanText(systemUsed)}`,
    `    ${parts.map(({ slot, text: own, start, end, tells }) => `${slot} ${own} [${start}-${end}] ${sayTells(tells, 'en')}`).join(' | ')}`,
    ...reasons.map((why) => `    – ${sayReadingReason(why, 'en')}`),
  ];
}

/** All that a decoding says, as lines to read and to compare. */
export function wholeDecoding(
  { id, from, code, accepted, readings, misfits, nearest, open }: Decoding,
  most = 4,
): string[] {
  return [
    `${code} (${accepted ? 'accepted' : 'not accepted'}) ${from.kind} ${id}${open ? ` open: ${JSON.stringify(open)}` : ''}`,
    ...readings.slice(0, most).flatMap(readingLines),
    ...(readings.length > most ? [`  and ${readings.length - most} more`] : []),
    ...misfits.map(
      ({ text, probability, system, slot, value, expected }) =>
        `  not ${text}, ${number(probability)}, ${system.id}: ${slot} ${value}, expected ${typeof expected === 'object' ? expectedWords(expected) : expected}`,
    ),
    ...nearest.map(
      (near) =>
        `  near ${near.text}, ${number(near.likelihood)}, ${near.system.id}: ${changeWords(code, near)}; ${spanText(near.reading.span)}`,
    ),
  ];
}

/** All that the teacher says of a list of known codes. */
export function wholeLearned({
  remaining,
  others,
  open,
  ambiguous,
  doubted,
  tellingCode,
  unusable,
}: Learned): string[] {
  const line = ({ eras, explains, wrong, score, byChance }: Learned['remaining'][number]) =>
    `  ${number(score)} bits, by chance ${byChance.toPrecision(3)}, explains ${explains.join(' ')}, wrong ${wrong.join(' ') || 'none'}: ${eras
      .map(
        ({ layout, used, plants, says, guessed }) =>
          `${JSON.stringify(layout)} used ${JSON.stringify(used)} plants ${plants.map(({ code, place }) => `${code}=${place}`).join(' ') || 'none'} guessed ${guessed || 'nothing'} “${says.map((one) => sayLayoutPart(one, 'en')).join('; ')}”`,
      )
      .join(' THEN ')}`;
  return [
    `open: ${open ?? 'no'}, ambiguous: ${ambiguous}`,
    ...remaining.map(line),
    ...(others.length > 0 ? [`  much less likely, ${others.length}:`, ...others.slice(0, 3).map(line)] : []),
    ...doubted.map(({ index, reads }) => `  doubted ${index}, reads ${reads ?? 'nothing'}`),
    ...(tellingCode ? [`  telling: ${JSON.stringify(tellingCode)}`] : []),
    ...unusable.map(({ index, why }) => `  not used ${index}: ${strings.makers.learn.unusable(why)}`),
  ];
}
