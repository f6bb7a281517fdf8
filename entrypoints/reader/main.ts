import '../../src/reader/page/plain-validation';
import { receive } from '../../src/message/receive';
import { succeed } from '../../src/problem';
import { createReaderHost } from '../../src/reader/host';

const host = createReaderHost();

receive('reader', {
  'photo.read': ({ photoId, base64, adjustment }) => host.read(photoId, base64, adjustment),
  'photo.glance': async ({ photoId, base64, closer }) => {
    const glance = await host.glance(photoId, base64, closer);
    return glance.ok ? succeed({ likelihood: glance.value }) : glance;
  },
  'reader.renew': async () => {
    await host.renew();
    return succeed({});
  },
});
