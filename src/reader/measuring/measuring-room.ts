import '../page/plain-validation';
import { measureHandMarks, type OpenedPhoto, openPhoto } from '../../photo';
import { fail, type Problem, problem, type Result, reported } from '../../problem';
import { decodePhoto } from '../decode-photo';
import type { MeasuringAnswer, MeasuringRequest } from './messages';

/** Marks wait for their photo, which comes first. */
let photo: Promise<Result<OpenedPhoto>> = new Promise(() => undefined);

self.addEventListener('message', async ({ data }: MessageEvent<MeasuringRequest>) => {
  if (data.kind === 'photo') {
    photo = openPhoto(new Uint8Array(data.bytes), 'photo', decodePhoto).catch((error: unknown) => fail(failed(error)));
    return;
  }
  const { id, marks } = data;
  const opened = await photo;
  const answer = (): MeasuringAnswer => {
    if (!opened.ok) return { id, problem: opened.problem };
    const { image, scale } = opened.value;
    try {
      return { id, measures: measureHandMarks(image, marks, scale) };
    } catch (error) {
      return { id, problem: failed(error) };
    }
  };
  self.postMessage(answer());
});

const failed = (error: unknown): Problem => problem('measuring-failed', 'photo', reported(error));
