import '../../src/bridge/plain-validation';
import { createReaderHost } from '../../src/bridge/reader/host';
import { receive } from '../../src/bridge/receive';
import { succeed } from '../../src/problem';

const host = createReaderHost();

receive('reader', {
  'photo.read': ({ photoId, base64, adjustment }) => host.read(photoId, base64, adjustment),
  'photo.glance': async ({ photoId, base64 }) => {
    const glance = await host.glance(photoId, base64);
    return glance.ok ? succeed({ likelihood: glance.value }) : glance;
  },
  'reader.renew': async () => {
    await host.renew();
    return succeed({});
  },
});
