import '../../src/bridge/plain-validation';
import { createReaderHost } from '../../src/bridge/reader/host';
import { receive } from '../../src/bridge/receive';
import { succeed } from '../../src/problem';

const host = createReaderHost();

receive('reader', {
  'photo.read': ({ photoId, base64, adjustment }) => host.read(photoId, base64, adjustment),
  'reader.renew': async () => {
    await host.renew();
    return succeed({});
  },
});
