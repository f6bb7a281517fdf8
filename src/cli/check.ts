import { parseArgs } from 'node:util';
import { buildCase, type Correction, correct, typedCode } from '../case';
import type { Listing } from '../listing';
import { makersFor } from '../maker';
import type { Result } from '../problem';
import { problemWords, reportOf } from './check-report';
import { matchPhotoFiles, type PhotoFiles } from './listing-photos';
import { makerFileAt } from './maker-file-at';
import { readPhotoFiles } from './read-photos';
import { runMain } from './run-main';
import { readSavedPage } from './saved-page';

/*
 * npm run -s check -- [--json] PAGE.html [--url URL] [--photos DIR] [--maker FILE]... [--code CODE]... [--now TIME]
 * One case from a saved page and photo files. Exit codes: 0 a page was read, 2 none was or the command is at fault
 * (the reason is on stderr). Problems with single photos stand in the case.
 */

const usage =
  'usage: npm run -s check -- [--json] PAGE.html [--url URL] [--photos DIR] [--maker FILE]... [--code CODE]... [--now TIME]';

function readArguments() {
  try {
    return parseArgs({
      options: {
        json: { type: 'boolean', default: false },
        url: { type: 'string' },
        photos: { type: 'string' },
        maker: { type: 'string', multiple: true, default: [] },
        code: { type: 'string', multiple: true, default: [] },
        now: { type: 'string' },
      },
      allowPositionals: true,
    });
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : 'wrong arguments'}\n${usage}`);
  }
}

/** The listing with the photos that were found; a folder that cannot be read is one of its problems, the rest goes on. */
function listingWith(listing: Listing, matched: Result<PhotoFiles> | null): Listing {
  if (matched === null) return listing;
  return matched.ok ? matched.value.listing : { ...listing, problems: [...listing.problems, matched.problem] };
}

async function main(): Promise<number> {
  const { values, positionals } = readArguments();
  const [page, ...more] = positionals;
  if (page === undefined || more.length > 0) throw new Error(usage);
  if (values.now !== undefined && Number.isNaN(Date.parse(values.now)))
    throw new Error(`${values.now}: not a time as 2026-01-15T10:00:00Z`);
  const now = new Date(values.now ?? Date.now()).toISOString();
  const given = values.maker.map(makerFileAt);
  const read = await readSavedPage(page, values.url, now);
  if (!read.ok) throw new Error(`${read.problem.where}: ${problemWords(read.problem)}`);
  const matched = values.photos === undefined ? null : matchPhotoFiles(read.value, values.photos);
  if (matched && !matched.ok) process.stderr.write(`${matched.problem.where}: ${problemWords(matched.problem)}\n`);
  const listing = listingWith(read.value, matched);
  const say = (done: number, all: number) => {
    if (process.stderr.isTTY) process.stderr.write(`photo ${done} of ${all}\n`);
  };
  const photos = matched?.ok && listing.kind === 'listing' ? await readPhotoFiles(matched.value.files, say) : [];
  const corrections = values.code.reduce<Correction[]>((list, code) => correct(list, typedCode(code)), []);
  const makers = makersFor(listing.url, given);
  const built = buildCase({ listing, photos, corrections, makers, now });
  if (listing.kind !== 'listing')
    for (const problem of listing.problems) process.stderr.write(`${page}: ${problemWords(problem)}\n`);
  process.stdout.write(`${values.json ? JSON.stringify(built, null, 2) : reportOf(built)}\n`);
  return 0;
}

runMain(main);
