import { defineObserver } from './observer';

export const size = defineObserver({
  id: 'size',
  gives: ['longer-side', 'shorter-side'],
  measure: ({ width, height }) => [
    { what: 'longer-side', value: Math.max(width, height), uncertainty: 0, unit: 'px' },
    { what: 'shorter-side', value: Math.min(width, height), uncertainty: 0, unit: 'px' },
  ],
});
