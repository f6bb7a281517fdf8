import * as z from 'zod';
import type { MakerFile } from '../maker/types';
import { askFor } from './asks';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';

const channelSchema = z.enum(['discount', 'outlet', 'sample-sale', 'seconds']);
type Channel = z.infer<typeof channelSchema>;

export const saleChannel = defineCheck({
  id: 'sale-channel',
  family: 'price',
  kinds: ['doubt'],
  source: makerFileSource,
  data: z.strictObject({ words: z.string(), maker: z.string(), channel: channelSchema }),
  needs: { maker: ['trade'], claims: ['sale-channel'] },
  run(facts) {
    const { trade, name } = facts.maker;
    const denied = facts.claims['sale-channel'].filter(({ channel }) => isDenied(trade, channel));
    return denied.map((claim) => ({
      kind: 'doubt' as const,
      key: claim.channel,
      data: { words: claim.words, maker: name, channel: claim.channel },
      claims: [claim.id],
      source: fromMakerFile(name, { of: 'sale' }, trade.sources),
      asks: [askFor('purchase', {})],
    }));
  },
});

function isDenied(trade: MakerFile['trade'], channel: Channel): boolean {
  if (channel === 'discount') return trade.discounts === 'never';
  const said = { outlet: trade.outlets, 'sample-sale': trade.sampleSales, seconds: trade.seconds }[channel];
  return said === false || (said === undefined && trade.discounts === 'never');
}
