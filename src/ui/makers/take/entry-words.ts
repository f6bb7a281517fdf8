import { unknownPlace } from '../../../place';
import type { Proposal } from '../../../take';
import { kit, strings } from '../../../words';
import { slotWords } from '../slot-words';

const words = strings.take;
type Period = [string | null, string | null];

function yearsOf(proposal: Proposal): string {
  const told = 'used' in proposal ? proposal.used : 'made' in proposal ? proposal.made : undefined;
  if (told === undefined) return '';
  const about = 'about' in proposal ? (proposal.about ?? []) : [];
  const periods = (Array.isArray(told[0]) ? told : [told]) as Period[];
  return kit.list(periods.map(([from, to]) => words.years(from, to, about.includes('from'), about.includes('to'))));
}

const joined = (...pieces: (string | undefined)[]): string => pieces.filter((piece) => piece).join(', ');

/** What a proposal would write, in one line. */
export function entryWords(proposal: Proposal): string {
  const years = yearsOf(proposal);
  switch (proposal.kind) {
    case 'plant': {
      const country = proposal.place === unknownPlace ? words.unknownPlace : kit.place(proposal.place);
      return `${proposal.code}: ${joined(proposal.name, country, years === '' ? words.yearsOpen : years)}`;
    }
    case 'code-system': {
      const layout = proposal.layout.map((slot) => ('separator' in slot ? '' : slotWords(slot))).filter(Boolean);
      const examples = proposal.examples.map(({ code, reads }) => words.reads(code, reads));
      return `${joined(layout.join(' · '), years)}${examples.length > 0 ? `; ${kit.list(examples)}` : ''}`;
    }
    case 'example':
      return words.reads(proposal.code, proposal.reads);
    case 'year-letter':
      return words.letter(proposal.letter, proposal.year);
    case 'serial':
      return joined(words.numbers(proposal.first, proposal.last ?? null), words.years(...proposal.made, false, false));
    case 'stamped':
      return `${words.stampedFrom} ${years}`;
    case 'carrier':
      return joined(
        proposal.model ? `${proposal.model}: ${proposal.where}` : proposal.where,
        proposal.on && strings.makers.carrierKinds[proposal.on],
        years,
      );
    case 'model': {
      const { size } = proposal;
      const sides = size && [size.width, size.height, size.depth].filter((side) => side !== undefined);
      return joined(proposal.name, sides && `${sides.map((side) => kit.number(side)).join(' × ')} ${size.unit}`, years);
    }
    case 'construction':
      return joined(
        `${strings.parts[proposal.part]}: ${proposal.is}`,
        years,
        proposal.models && kit.list(proposal.models),
      );
    case 'price': {
      const sum = kit.amount({ amount: proposal.amount, currency: proposal.currency });
      return joined(
        proposal.model,
        words.newPrice(sum, proposal.year),
        strings.claims.says.conditions[proposal.condition],
      );
    }
  }
}
