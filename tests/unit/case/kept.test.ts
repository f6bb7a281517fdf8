import { expect, it } from 'vitest';
import { buildCase, type Case, findingsOf } from '../../../src/case';
import { layOutAxis } from '../../../src/evidence';
import { inputOf, truthRows } from '../../reference/cases/truth-case';

/*
 * What is made of a case, whole: evidence, what agrees and conflicts, findings and questions. Where it changes on
 * purpose, `npm test -- unit/case/kept --update` writes it anew; the difference is looked at before it is committed.
 */

const spansOf = (spans: readonly { from: string | null; to: string | null }[]) =>
  spans.map(({ from, to }) => `${from ?? '…'}/${to ?? '…'}`).join(' ');

function lines(kase: Case): string[] {
  const at = new Map(kase.evidence.map(({ id }, index) => [id, `e${index + 1}`]));
  const named = (ids: readonly string[]) => ids.map((id) => at.get(id) ?? id).join(' ');
  const { reasoning } = kase;
  const axis = layOutAxis(kase.evidence, reasoning!);
  return [
    `maker ${kase.maker ?? 'none'}, ${kase.decodings.map(({ code, accepted }) => `${code}${accepted ? '' : '?'}`).join(' ')}`,
    ...kase.evidence.map((piece) => {
      const { id, about, strength, spans, places, reach, hardReach, from, says } = piece;
      const rest = 'amounts' in piece ? JSON.stringify(piece.amounts) : `${spansOf(spans)} ${places.join(' ')}`;
      const room = `${reach ? ` reach ${spansOf(reach)}` : ''}${hardReach ? ` hard ${spansOf(hardReach)}` : ''}`;
      return `  ${at.get(id)} ${about} ${strength} ${from.kind}: ${rest}${room} ${JSON.stringify(says)}`;
    }),
    ...reasoning!.agreeing.map(
      ({ evidence, facts, spans, places }) =>
        `  agree ${named(evidence)}: ${facts} facts, ${spansOf(spans)} ${places.join(' ')}`,
    ),
    ...reasoning!.agreements.map(
      ({ evidence, over, rule, informs }) => `  pair ${named(evidence)} over ${over} by ${rule}: ${informs}`,
    ),
    ...reasoning!.conflicts.map(
      ({ evidence, over, strength, rule }) => `  conflict ${named(evidence)} over ${over}, ${strength}, by ${rule}`,
    ),
    ...reasoning!.explanations.map(
      ({ basis, evidence, rest, spans }) => `  without ${basis} (${named(evidence)}) ${rest}: ${spansOf(spans)}`,
    ),
    ...(axis
      ? [
          `  axis ${axis.years.join('–')}: ${axis.ticks.map(({ year, at: place }) => `${year}@${place.toFixed(3)}`).join(' ')}`,
        ]
      : []),
    ...(axis?.rows ?? []).map(
      ({ kind, evidence, bars, beyond, stands }) =>
        `    ${kind} ${named(evidence)} ${stands} ${beyond.join(' ')} ${bars.map(({ start, end, opensLeft, opensRight }) => `${opensLeft ? '<' : ''}${start.toFixed(3)}-${end.toFixed(3)}${opensRight ? '>' : ''}`).join(' ')}`,
    ),
    ...kase.outcomes.flatMap((outcome) =>
      outcome.outcome === 'speaks'
        ? outcome.findings.map(
            ({ check, kind, data, evidence, photos, claims, asks }) =>
              `  ${kind} ${check} ${JSON.stringify(data)} from ${named(evidence)}; ${photos.length} photos, ${claims.length} claims; asks ${asks.map(({ topic, wants }) => `${topic}/${wants}`).join(' ')}`,
          )
        : 'why' in outcome
          ? [`  ${outcome.outcome} ${outcome.check} ${JSON.stringify(outcome.why)}`]
          : [],
    ),
    ...kase.questions.map(
      ({ wants, asks, settles }) => `  asks ${wants} ${JSON.stringify(asks)}, settles ${settles.length}`,
    ),
  ];
}

/** Every eleventh row of each table: sound, misdescribed and incomplete listings. */
const rows = (['sound', 'misdescribed', 'incomplete'] as const).flatMap((file) =>
  truthRows(file).filter((_, at) => at % 11 === 0),
);

it.each(rows.map((row) => [row.name, row] as const))('what is made of %s is as it is kept', async (name, row) => {
  const said = lines(buildCase(inputOf(row)));
  expect(said.length).toBeGreaterThan(10);
  const file = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60);
  await expect(`${said.join('\n')}\n`).toMatchFileSnapshot(`./kept/${file}.txt`);
});

it('what each check says, of each kind, where it first speaks is as it is kept', async () => {
  const told = new Map<string, string[]>();
  for (const file of ['sound', 'misdescribed', 'incomplete'] as const)
    for (const row of truthRows(file)) {
      const kase = buildCase(inputOf(row));
      for (const { id, check, kind, data, source, evidence, photos, claims, asks } of findingsOf(kase)) {
        const known = told.get(`${check} ${kind}`) ?? [];
        if (known.length >= 3) continue;
        const from = evidence.map((one) => kase.evidence.find((piece) => piece.id === one)?.says.kind ?? one);
        told.set(`${check} ${kind}`, [
          ...known,
          `  ${row.name}: ${id} ${JSON.stringify(data)} by ${JSON.stringify(source)}`,
          `    from ${from.join(', ') || 'none'}; ${photos.length} photos, ${claims.length} claims; asks ${JSON.stringify(asks)}`,
        ]);
      }
      for (const outcome of kase.outcomes)
        if (outcome.outcome === 'cannot-tell' || outcome.outcome === 'not-applicable')
          told.set(`${outcome.check} ${outcome.outcome} ${outcome.why.reason}`, [
            `  ${JSON.stringify(outcome.why.data)}`,
          ]);
    }
  const said = [...told].sort(([one], [other]) => (one < other ? -1 : 1)).flatMap(([what, rest]) => [what, ...rest]);
  expect(told.size).toBeGreaterThan(100);
  await expect(`${said.join('\n')}\n`).toMatchFileSnapshot('./kept/checks.txt');
}, 60_000);
