import { defineContentScript } from 'wxt/utils/define-content-script';
import { answerInPage } from '../src/message/answer-in-page';
import { replaceEarlier } from '../src/reader/page/replace-earlier';
import { photoStands, showPhoto, unshowPhoto } from '../src/reader/photo/shown-photo';

/** Put into a page only when a picture has to be taken of one of its photos. */
export default defineContentScript({
  registration: 'runtime',
  matches: [],
  main() {
    const signal = replaceEarlier('shown-photo');
    answerInPage(
      'shown-photo',
      { 'photo.show': showPhoto, 'photo.stands': photoStands, 'photo.unshow': unshowPhoto },
      signal,
    );
    // Another copy knows nothing of what this one has scrolled.
    signal.addEventListener('abort', unshowPhoto);
  },
});
