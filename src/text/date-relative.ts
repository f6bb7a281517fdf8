import { addDays, daySpan } from '../span';
import type { RawDate } from './date-parts';
import { weekdayPattern, weekdays } from './date-words';

const edge = '(?<![\\p{L}\\d])';
const end = '(?![\\p{L}])';
const fixed: [string, number][] = [
  [`${edge}(?:today|heute|aujourd'hui|oggi|hoy|vandaag)${end}|今日|本日`, 0],
  [`${edge}(?:yesterday|gestern|hier|ieri|ayer|gisteren)${end}|昨日`, -1],
  [`${edge}(?:day before yesterday|vorgestern|avant-hier|l'altro ieri|anteayer|eergisteren)${end}|一昨日`, -2],
];
const units: [string, number][] = [
  [
    'minutes?|mins?|minuten?|minuti|minuto|minutos|minuut|分|hours?|hrs?|stunden?|heures?|ore|ora|horas?|uur|uren|時間|seconds?|sekunden?|secondes?|secondi|segundos|seconden',
    0,
  ],
  ['days?|tagen?|tag|jours?|giorni|giorno|dias?|dagen|dag|日', 1],
  ['weeks?|wochen?|semaines?|settimane|settimana|semanas?|weken|week|週間?', 7],
];
const ago = units.map(([words, days]) => ({
  days,
  pattern: new RegExp(
    `${edge}(?:vor|il y a|hace)\\s(\\d{1,3}|einer?m?|une?|una?)\\s(?:${words})${end}|${edge}(\\d{1,3}|a|an|one|een)\\s(?:${words})\\s(?:ago|fa|geleden)${end}|(\\d{1,3})\\s?(?:${words})前`,
    'gu',
  ),
}));
const weekdayTime = new RegExp(
  `${edge}(${weekdayPattern})\\.?,?\\s(?:um |at |a las |alle |om |à )?\\d{1,2}[:h]\\d{2}(?!\\d)`,
  'gu',
);

/** Days said from the reading day: "yesterday", "vor 3 Tagen", "3日前", "Jeu 15:12" (the last such weekday). */
export function relativeDates(text: string, now: string): RawDate[] {
  const today = now.slice(0, 10);
  const found: RawDate[] = [];
  const add = (match: RegExpMatchArray, days: number, about: boolean) => {
    const span = daySpan(addDays(today, -days));
    found.push({
      span: about ? { ...span, about } : span,
      start: match.index!,
      end: match.index! + match[0].length,
      form: 'relative',
    });
  };
  for (const [words, days] of fixed)
    for (const match of text.matchAll(new RegExp(words, 'gu'))) add(match, -days, false);
  for (const { pattern, days } of ago)
    for (const match of text.matchAll(pattern)) {
      const count = match[1] ?? match[2] ?? match[3] ?? '1';
      add(match, days * (/\d/.test(count) ? Number(count) : 1), days > 1);
    }
  const weekdayNow = (new Date(`${today}T00:00:00Z`).getUTCDay() + 6) % 7;
  for (const match of text.matchAll(weekdayTime)) {
    const back = (weekdayNow - (weekdays.get(match[1] as string) ?? weekdayNow) + 7) % 7;
    add(match, back === 0 ? 7 : back, false);
  }
  return found;
}
