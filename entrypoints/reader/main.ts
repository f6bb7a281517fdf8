import '../../src/reader/page/plain-validation';
import { receive } from '../../src/message/receive';
import { succeed } from '../../src/problem';
import { createReaderHost } from '../../src/reader/host';

const host = createReaderHost();

receive('reader', {
  'photo.read': ({ photoId, file, adjustment }) => host.read(photoId, file, adjustment),
  'photo.glance': async ({ photoId, file, closer }) => {
    const glance = await host.glance(photoId, file, closer);
    return glance.ok ? succeed({ likelihood: glance.value }) : glance;
  },
  'reader.renew': async () => {
    await host.renew();
    return succeed({});
  },
});
