import type { Measure } from '../types';
import { type Item, isItem, textOf, valuesOf, wordsOf } from './item';

const dimensions = [
  ['width', 'width'],
  ['height', 'height'],
  ['depth', 'depth'],
] as const;
/** UN/CEFACT common codes and what data writes instead, in millimetres. Source: UN/ECE Recommendation 20. */
const units: Record<string, { mm: number; unit: Measure['unit'] }> = {
  CMT: { mm: 10, unit: 'cm' },
  CM: { mm: 10, unit: 'cm' },
  MMT: { mm: 1, unit: 'mm' },
  MM: { mm: 1, unit: 'mm' },
  INH: { mm: 25.4, unit: 'in' },
  IN: { mm: 25.4, unit: 'in' },
  INCH: { mm: 25.4, unit: 'in' },
  INCHES: { mm: 25.4, unit: 'in' },
  '"': { mm: 25.4, unit: 'in' },
};

/** Width, height and depth of a product as quantities or as "30 cm"; without a unit none is assumed. */
export function dataMeasures(product: Item): Measure[] {
  const found: Measure[] = [];
  for (const [name, dimension] of dimensions)
    for (const value of valuesOf(product, name)) {
      const amount = isItem(value) ? wordsOf(value, 'value') : String(value);
      const match = /^(\d{1,4}(?:[.,]\d{1,2})?)\s*([a-z"]{0,6})$/i.exec(amount.trim());
      const unitName = (isItem(value) ? textOf(value, 'unitCode', 'unitText') : null) ?? match?.[2] ?? '';
      const unit = units[unitName.toUpperCase()];
      if (!match || !unit) continue;
      const digits = (match[1] as string).replace(',', '.');
      const mm = Number(digits) * unit.mm;
      const decimals = digits.split('.')[1]?.length ?? 0;
      if (mm > 0)
        found.push({
          dimension,
          mm: Math.round(mm * 100) / 100,
          precisionMm: Math.round((unit.mm / 10 ** decimals / 2) * 1000) / 1000,
          unit: unit.unit,
          words: `${name} ${match[1]} ${unitName}`,
        });
    }
  return found;
}
