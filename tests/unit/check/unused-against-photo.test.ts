import type { Facts } from '../../../src/check';
import { unusedAgainstPhoto } from '../../../src/check/unused-against-photo';
import { gatherEvidence } from '../../../src/evidence';
import { ciede2000 } from '../../../src/photo';
import { testRule } from '../../rule-tester';
import { claim, facts, withPhotos } from './sample';

type Observed = NonNullable<Parameters<typeof gatherEvidence>[0]['measured']>['observations'][number];
const darker = (value: number, uncertainty: number | null = 4, rest: Partial<Observed> = {}): Observed => ({
  id: 'p2-mark-3-darkening',
  photoId: 'p2',
  mark: 3,
  on: 'handle',
  what: 'darkening',
  value,
  uncertainty,
  ...rest,
});
const greener = (value: number, uncertainty = 2): Observed =>
  darker(value, uncertainty, { id: 'p2-mark-4-greening', mark: 4, what: 'greening' });

const unused = claim('condition', 'never used', { condition: 'unused' });
/** A case with these measures on the second of its photos. */
function measured(observations: Observed[], claims: Facts['claims'] = [unused]): Facts {
  const { evidence: _, reasoning: __, ...given } = facts({ listing: withPhotos(2), claims });
  return facts({ ...given, evidence: gatherEvidence({ ...given, measured: { observations, apart: ciede2000 } }) });
}

testRule(unusedAgainstPhoto, {
  speaks: {
    'of leather that is clearly darker where it lay open': [
      measured([darker(14)]),
      {
        kind: 'doubt',
        data: {
          said: { words: 'never used', inData: false },
          photo: 2,
          mark: 3,
          place: 'open-leather',
          by: 14,
          within: 4,
        },
        says: 'The listing says “never used”, but on photo 2 you measured at mark 3 leather that lay open, darker by 14.0 ± 4.0 steps than where it was covered.',
        asks: ['condition'],
        basis: [
          'Untreated leather darkens, rivets tarnish and plating wears where light and hands reach; what is new or unused differs little there.',
        ],
        photos: ['p2'],
        claims: [unused.id],
        evidence: [`quality-${unused.id}`, 'measured-p2-mark-3-darkening'],
      },
    ],
  },
  silent: {
    'where the difference may be less than an eye is sure of': measured([darker(8.9), greener(5.9)]),
    'where it is lighter where it lay open, as sun bleaches': measured([darker(-14)]),
    'of a measure whose half-width is not known': measured([darker(14, null)]),
    'where a part was replaced, old and new lying side by side': measured(
      [darker(14)],
      [unused, claim('replaced', 'new handles', { parts: ['handle'] })],
    ),
    'of what shows no age': measured([darker(14, 4, { what: 'difference' })]),
    'where nothing was measured': measured([]),
  },
  declines: {
    'where nothing is called new': [measured([darker(14)], []), 'not-applicable', 'not-called-new'],
    'where it is called used': [
      measured([darker(14)], [claim('condition', 'well used', { condition: 'used' })]),
      'not-applicable',
      'not-called-new',
    ],
  },
});
