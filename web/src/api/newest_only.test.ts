import { describe, expect, it } from 'vitest';
import { newestOnly } from './newest_only';

// A server whose answers are let go one by one.
function slowServer() {
  const open: ((value: string) => void)[] = [];
  const asked: number[] = [];
  const ask = (question: number) => {
    asked.push(question);
    return new Promise<string>((done) => open.push(done));
  };
  const answer = async (text: string) => {
    open.shift()?.(text);
    await new Promise((done) => setTimeout(done));
  };
  return { asked, ask, answer };
}

describe('the newest question only', () => {
  it('has one under way, leaves out those between and ends with the last', async () => {
    const server = slowServer();
    const shown: [string, number, boolean][] = [];
    const send = newestOnly(server.ask, (got, question, last) => void shown.push([got, question, last]));
    for (const question of [1, 2, 3, 4]) void send(question);
    expect(server.asked).toEqual([1]);
    await server.answer('one');
    expect(server.asked).toEqual([1, 4]);
    await server.answer('four');
    expect(shown).toEqual([['one', 1, false], ['four', 4, true]]);
    void send(5);
    expect(server.asked).toEqual([1, 4, 5]);
  });
  it('asks again after a question that failed', async () => {
    let fail = true;
    const shown: string[] = [];
    const send = newestOnly(async (text: string) => {
      if (fail) throw new Error('gone');
      return text;
    }, (got) => void shown.push(got));
    await expect(send('a')).rejects.toThrow('gone');
    fail = false;
    await send('b');
    expect(shown).toEqual(['b']);
  });
});
