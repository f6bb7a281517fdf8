import { periodSpan, spanHolds, spanWords } from '../span';
import { allReadClearly, notReadWords } from './codes';
import { claimWords } from './dates';
import { fromMakerFile, makerFileSource } from './frame';
import { commonAsks, quote } from './wording';
import { defineWritten } from './written';

export const codeShown = defineWritten({
  id: 'code-shown',
  family: 'code',
  title: 'A code is shown or quoted',
  failureTitle: 'No code is shown, though the maker stamped at the claimed time',
  kinds: ['gap', 'doubt'],
  basis: 'A maker that stamped at the claimed time put a code on every piece.',
  innocent: 'The stamp may be worn flat, hidden in a pocket, or simply not photographed.',
  settles: 'A photo of the place where this maker stamps.',
  source: makerFileSource,
  needs: { maker: ['stamped'], claims: ['made', 'code', 'no-code'], decodings: true, photos: 'any' },
  run(facts) {
    const { stamped, name } = facts.maker;
    const period = periodSpan([stamped.from, stamped.to]);
    const claim = facts.claims.made[0];
    if (!claim) return { notApplicable: 'the listing claims no date' };
    if (!period || !spanHolds(period, claim.span))
      return { notApplicable: `${name} did not surely stamp at ${spanWords(claim.span)}` };
    if (facts.decodings.length > 0 || facts.claims.code.length > 0) return [];
    const source = fromMakerFile(name, stamped.source);
    const rule = `The listing says ${claimWords(claim)}, when ${name} stamped (${spanWords(period)})`;
    const denied = facts.claims['no-code'][0];
    if (denied) {
      const statement = `${rule}, but the seller finds no code: ${quote(denied.words)}.`;
      return [{ kind: 'doubt', statement, claims: [claim.id, denied.id], source, asks: [commonAsks.stampPhoto] }];
    }
    if (!allReadClearly(facts.photos)) return { cannotTell: notReadWords(facts.photos) };
    const statement = `${rule}. No photo shows a code and the text quotes none.`;
    return [{ kind: 'gap', statement, claims: [claim.id], source, asks: [commonAsks.stampPhoto] }];
  },
});
