import type { MakerFile } from '../maker/types';
import { fromMakerFile, makerFileSource } from './frame';
import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

type Channel = 'discount' | 'outlet' | 'sample-sale' | 'seconds';
const channelWords: Record<Channel, string> = {
  discount: 'never sells at a discount',
  outlet: 'has no outlets',
  'sample-sale': 'holds no sample sales',
  seconds: 'sells no factory seconds',
};

export const saleChannel = defineWritten({
  id: 'sale-channel',
  family: 'price',
  title: 'The way the piece was sold is one that the maker uses',
  failureTitle: 'The piece is said to come from a sale that the maker does not hold',
  kinds: ['doubt'],
  basis: 'A house that never discounts sells no piece through outlets, sample sales or as factory seconds.',
  innocent: 'The seller may mean a shop’s own sale, or pass on what was told at the purchase.',
  settles: 'The receipt of the first purchase.',
  source: makerFileSource,
  needs: { maker: ['trade'], claims: ['sale-channel'] },
  run(facts) {
    const { trade, name } = facts.maker;
    const denied = facts.claims['sale-channel'].filter(({ channel }) => isDenied(trade, channel));
    return denied.map(
      (claim): WrittenSpeech => ({
        kind: 'doubt',
        key: claim.channel,
        statement: `The listing says ${quote(claim.words)}, but ${name} ${channelWords[claim.channel]}.`,
        claims: [claim.id],
        source: fromMakerFile(name, 'how it is sold', trade.source),
        asks: [commonAsks.purchase],
      }),
    );
  },
});

function isDenied(trade: MakerFile['trade'], channel: Channel): boolean {
  if (channel === 'discount') return trade.discounts === 'never';
  const said = { outlet: trade.outlets, 'sample-sale': trade.sampleSales, seconds: trade.seconds }[channel];
  return said === false || (said === undefined && trade.discounts === 'never');
}
