import { defineObserver } from './observer';

/** Sides of phone screens, longer by shorter. Common practice, no source. */
const screenRatio = { least: 1.75, most: 2.3 };
const clock = /(^|\s)([01]?\d|2[0-3]):[0-5]\d(\s|$)/;
const screenWords = /\b\d{1,3} ?%|\b(5G|LTE|4G|Wi-?Fi)\b|\b(like|share|follow|comment|add to (cart|bag)|buy now)\b/i;

/** The bars of a phone's screen: its shape, a clock, and a battery's share, a network or a button. */
export const screenBars = defineObserver({
  id: 'screen-bars',
  gives: ['screen-bars'],
  measure({ width, height }, { printed }) {
    const ratio = Math.max(width, height) / Math.min(width, height);
    if (ratio < screenRatio.least || ratio > screenRatio.most) return [];
    const time = printed.find((line) => clock.test(line));
    const words = printed.find((line) => screenWords.test(line));
    if (!time || !words) return [];
    return [{ what: 'screen-bars', value: time === words ? time : `${time} … ${words}` }];
  },
});
