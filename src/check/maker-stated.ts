import { namesNobody, possibleMakerName } from '../claim';
import { plainName } from '../maker';
import { practice } from './frame';
import { askFact, listWords, quote } from './wording';
import { defineWritten } from './written';

const ask = askFact('authorship', 'Could you confirm in writing who made it, and how you know?');

export const makerStated = defineWritten({
  id: 'maker-stated',
  family: 'text',
  title: 'The listing names one maker',
  failureTitle: 'The listing names no maker, or several',
  kinds: ['gap', 'doubt'],
  basis: 'A piece has one maker, and a description that counts names it.',
  innocent: 'Other makers may be named to be found, or for comparison.',
  settles: 'Who made it, in writing.',
  source: practice,
  needs: { claims: ['maker'], listing: ['maker', 'title', 'description', 'text', 'language'] },
  run({ claims, listing }) {
    const field = listing.maker.find(({ value }) => !namesNobody(value));
    const names = [...claims.maker.map(({ maker }) => maker), ...(field ? [field.value] : [])];
    if (names.length === 0) {
      const possible = possibleMakerName(listing);
      if (possible !== null)
        return { cannotTell: `whether ${quote(possible)} is the maker: no maker file gives this name` };
      return [{ kind: 'gap', statement: 'The listing names no maker.', asks: [ask] }];
    }
    const different = names.filter((name, index) => !names.slice(0, index).some((other) => sameMaker(name, other)));
    if (different.length < 2) return [];
    const statement = `The listing names several makers: ${listWords(different.slice(0, 4).map(quote))}.`;
    return [{ kind: 'doubt', statement, claims: claims.maker.map(({ id }) => id), asks: [ask] }];
  },
});

/** Whether one name is the other, or a longer form of it, word by word. */
const sameMaker = (a: string, b: string) => {
  const [one, other] = [` ${plainName(a)} `, ` ${plainName(b)} `];
  return one.includes(other) || other.includes(one);
};
