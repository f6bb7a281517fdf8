import { aheadInSentence, phraseTest, wordsOf } from '../text';

/** Of the words for other pieces those by which somebody has or sells something besides. */
const besides = /also|aussi|également|auch|außerdem|anche|también|ook|他に|ほかに/;
const alsoOffers = phraseTest(wordsOf('another-piece').filter((words) => besides.test(words)));

/** "Je vends aussi son encrier, daté de 1920", "I also have two bows (1970s)": whatever the sentence goes on with is none of the piece. */
export const isAlsoOffered = (text: string, start: number): boolean => alsoOffers.test(aheadInSentence(text, start));
