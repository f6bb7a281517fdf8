import { type Case, headOf } from '../../case';
import { type HeadLine, type HeadSaid, sayHead, strings } from '../../words';

interface Props {
  kase: Case;
  /** Sentences of a kind; more is said to stand below. */
  most?: number;
  /** Goes to the part of the case that a line sums up; without it the lines are plain text. */
  onGo?: (line: HeadLine) => void;
}

/**
 * What a buyer reads first, in three lines that always stand: what speaks against, what is open, what was not looked at.
 * No number and no sign of success, and nothing of what fits.
 */
export const Head = ({ kase, most, onGo }: Props) => (
  <dl class="head-lines" aria-label={strings.head.title}>
    {sayHead(headOf(kase), most).map((said) => (
      <div key={said.line} class={said.holds ? `head-${said.line}` : 'head-none'} data-line={said.line}>
        <dt>{said.name}</dt>
        <dd>
          <Sentences said={said} onGo={onGo} />
        </dd>
      </div>
    ))}
  </dl>
);

function Sentences({ said: { line, sentences, holds }, onGo }: { said: HeadSaid; onGo: Props['onGo'] }) {
  const [first = '', ...others] = sentences;
  const rest = others.length > 0 ? ` ${others.join(' ')}` : '';
  if (!onGo || !holds) return <>{first + rest}</>;
  return (
    <>
      <button type="button" class="text-link" onClick={() => onGo(line)}>
        {first}
      </button>
      {rest}
    </>
  );
}
