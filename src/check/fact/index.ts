import { clearPhotos } from './clear-photos';
import { codePlaces } from './code-places';
import { date } from './date';
import type { Fact } from './define';
import { distanceLaw } from './distance-law';
import { misfitsInTime } from './misfits-in-time';
import { model } from './model';
import { settledCodes } from './settled-codes';
import { sides } from './sides';

/** Every computed fact under the name by which checks ask for it. */
export const computed = { clearPhotos, codePlaces, date, distanceLaw, misfitsInTime, model, settledCodes, sides };

export type FactName = keyof typeof computed;
export type FactValue<N extends FactName> = (typeof computed)[N] extends Fact<infer V> ? V : never;
