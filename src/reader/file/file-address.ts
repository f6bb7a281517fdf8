import { fail, type Problem, problem, type Result, succeed } from '../../problem';

/** Names of this very machine, where a file may lie that its keeper tries out. RFC 6761, section 6.3; RFC 5735, RFC 4291. */
const thisMachine = /^(localhost|[a-z0-9-]{1,63}\.localhost|127\.0\.0\.1|\[::1\])$/;

/** Chromium's parser lets blanks and more stand in a host name, as percent signs. */
const hostForm = /^([a-z0-9._-]{1,253}|\[[0-9a-f:.]{2,45}\])$/;

/**
 * The address of a maker file as it is asked for, from what a buyer typed: https alone, so that nobody on the way changes
 * the file, or a server on this very machine. Its part behind # is left out, which no server hears of.
 */
export function fileAddress(typed: string): Result<string> {
  const text = typed.trim();
  const whole =
    /^[a-z][a-z0-9+.-]{0,20}:/i.test(text) && !/^[^/]{1,255}:\d{1,5}(\/|$)/.test(text) ? text : `https://${text}`;
  if (text === '' || !URL.canParse(whole)) return fail(notAnAddress(text));
  const address = new URL(whole);
  const { protocol, hostname } = address;
  if ((protocol !== 'https:' && protocol !== 'http:') || !hostForm.test(hostname)) return fail(notAnAddress(text));
  if (protocol === 'http:' && !thisMachine.test(hostname)) {
    return fail(problem('file-not-secure', text));
  }
  if (address.username !== '' || address.password !== '') {
    return fail(problem('file-with-password', hostname));
  }
  address.hash = '';
  return succeed(address.href);
}

const notAnAddress = (text: string): Problem => problem('file-address', text);
