import type { Seen } from '../../../photo';

/** What is seen or measured in a photo, and its units. */
export const observedStrings = {
  title: 'Measured in this photo',
  byHand: 'set by you',
  notMeasured: 'not measured',
  yes: 'yes',
  no: 'no',
  within: (value: string, uncertainty: string) => `${value} ± ${uncertainty}`,
  units: {
    px: (value: string) => `${value} px`,
    degree: (value: string) => `${value}°`,
    share: (value: string) => value,
    step: (value: string) => `${value} of 255`,
  },
  what: {
    'longer-side': 'Longer side',
    'shorter-side': 'Shorter side',
    sharpness: 'Sharpness',
    'too-weak': 'Too small or too blurred to show a stamp',
    'ground-lightness': 'Lightness of the ground',
    'ground-spread': 'Unevenness of the ground',
    'ground-noise': 'Grain of the ground',
    margin: 'Share of an even margin around the picture',
    hash: 'Hash, which tells the same photo again',
    'screen-bars': 'Bars of a phone’s screen',
    watermark: 'Web address in the photo',
    print: 'Print',
    'stamp-line': 'Stamped line',
    code: 'Code',
  } satisfies Record<Seen, string>,
} as const;
