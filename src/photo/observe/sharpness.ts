import { isTooWeak, judgedSharpness } from '../sharpness';
import { defineObserver } from './observer';

/** `too-weak`: nobody could say that such a photo shows no stamp. */
export const sharpness = defineObserver({
  id: 'sharpness',
  gives: ['sharpness', 'too-weak'],
  measure(_, { grey }) {
    const sharp = judgedSharpness(grey);
    return [
      { what: 'sharpness', value: Math.round(sharp * 1e4) / 1e4, unit: 'share' },
      { what: 'too-weak', value: isTooWeak(grey, sharp) },
    ];
  },
});
