import * as z from 'zod';
import { photoReadSchema } from '../stamp/types';
import { liftPhotoRead } from './older-photo-types';

/** What was read of a photo, as a case keeps it. Older ones are lifted. */
export const keptPhotoSchema = z.preprocess(liftPhotoRead, photoReadSchema);
