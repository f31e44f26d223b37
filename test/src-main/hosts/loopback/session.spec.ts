import { describe, expect, it } from 'vitest';
import { Session } from '../../../../src-main/hosts/loopback/session.ts';

function keyOf(session: Session): string {
  return new URL(session.openingPath, 'http://page.test').searchParams.get('key') ?? '';
}

describe('a session', () => {
  it('admits nobody with a wrong or empty key', () => {
    const session = new Session();
    expect([session.admit('guess'), session.admit('')]).toEqual([null, null]);
  });

  it('keeps its key good after a wrong guess', () => {
    const session = new Session();
    session.admit('guess');
    expect(session.admit(keyOf(session))).not.toBeNull();
  });

  it('admits once by one key, then draws another', () => {
    const session = new Session();
    const key = keyOf(session);
    expect(session.admit(key)).not.toBeNull();
    expect(session.admit(key)).toBeNull();
    expect(keyOf(session)).not.toBe(key);
  });

  it('holds neither an empty token nor its own key or path', () => {
    const session = new Session();
    const guesses = ['', keyOf(session), session.pagePath, session.pagePath.slice(1, -1)];
    for (const guess of guesses) expect(session.holds(guess)).toBe(false);
  });

  it('holds the token it gave, but not another session’s', () => {
    const [ours, other] = [new Session(), new Session()];
    const token = ours.admit(keyOf(ours)) ?? '';
    expect([ours.holds(token), other.holds(token)]).toEqual([true, false]);
  });

  it('draws keys and paths of 256 bits', () => {
    const session = new Session();
    for (const secret of [keyOf(session), session.pagePath.slice(1, -1)])
      expect(Buffer.from(secret, 'base64url')).toHaveLength(32);
  });
});
