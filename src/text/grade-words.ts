import type { EachLanguage } from './each-language';

/** Grades of a condition that say little in prose, and much beside a label. */
export const veryGoodGrade: EachLanguage = [
  'excellent|very good',
  'excellente?|très bon',
  'sehr gut|hervorragend',
  'ottim[aeio]|eccellent|molto buon',
  'muy buen|excelente',
  'zeer goed|uitstekend',
  '美品|目立った傷',
];
export const plainGrade: EachLanguage = [
  'good|fair',
  'bon|bonne',
  'gut',
  'buon[aeio]?',
  'buen[oa]?',
  'goed|redelijk',
  '良い|可',
];
