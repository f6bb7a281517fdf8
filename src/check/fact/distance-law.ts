import { distanceLaw as lawOf } from '../../evidence';
import { because } from '../reasons';
import { defineFact } from './define';

/** That European or British law on sales at a distance holds where a trader sells. */
export const distanceLaw = defineFact<true>(({ listing }) => {
  const law = lawOf(listing);
  if (law === 'covered') return { is: true };
  return law === 'elsewhere'
    ? { notApplicable: because('law-elsewhere', {}) }
    : { cannotTell: because('market-not-told', {}) };
});
