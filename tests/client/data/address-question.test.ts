import { describe, expect, test } from 'vitest';
import { addressQuestion } from '../../../client/data/address-question.ts';

describe('addressQuestion', () => {
  test('asks by address while it is short enough', () => {
    expect(addressQuestion('/v1/kits', 'kits=3')).toEqual({ address: '/v1/kits?kits=3' });
  });

  test('posts what is longer than the service reads in an address', () => {
    const rows = Array.from({ length: 60 }, (_, at) => {
      return `pieces.${at}.id=${'x'.repeat(40)}&pieces.${at}.width=${at}&pieces.${at}.print=12`;
    });
    const query = `unit=cm&${rows.join('&')}&${'a'.repeat(8192)}=1`;
    const { address, init } = addressQuestion('/v1/stash', query);
    expect(address).toBe('/v1/stash');
    expect(init).toMatchObject({
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
    });
    const posted = JSON.parse(`${init?.body}`);
    expect(posted.pieces).toHaveLength(60);
    expect(posted.pieces[3]).toEqual({ id: 'x'.repeat(40), width: 3, print: '12' });
  });
});
