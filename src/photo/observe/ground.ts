import { backgroundOf } from '../background';
import { defineObserver } from './observer';

/** What lies around the piece: the strip along the photo's edges. */
export const ground = defineObserver({
  id: 'ground',
  gives: ['ground-lightness', 'ground-spread', 'ground-noise'],
  measure(pixels) {
    const { lightness, spread, noise } = backgroundOf(pixels);
    return [
      { what: 'ground-lightness', value: lightness, unit: 'step' },
      { what: 'ground-spread', value: spread, unit: 'step' },
      { what: 'ground-noise', value: noise, unit: 'step' },
    ];
  },
});
