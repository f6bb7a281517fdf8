import { describe, expect, it } from 'vitest';
import { paymentInside } from '../../../src/check/payment-inside';
import { claim, facts, onlyFinding, said } from './sample';

describe('payment-inside', () => {
  it('doubts payment outside the marketplace and names its public source', () => {
    const finding = onlyFinding(paymentInside, facts({ claims: [claim('payment-outside', 'bank transfer only', {})] }));
    expect(finding.statement).toBe('The listing asks for payment outside the marketplace: “bank transfer only”.');
    expect(finding.source.kind).toBe('published');
  });
  it('says once what is asked twice', () => {
    const asked = [claim('payment-outside', 'Überweisung', {}), claim('payment-outside', 'Freunde und Familie', {})];
    const finding = onlyFinding(paymentInside, facts({ claims: asked }));
    expect(finding.statement).toContain('“Überweisung” and “Freunde und Familie”');
  });
  it('is silent otherwise', () => {
    expect(said(paymentInside, facts())).toEqual(['silent']);
  });
});
