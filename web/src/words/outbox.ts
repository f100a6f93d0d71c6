export const outboxWords = {
  waiting: (n: number) => `${n === 1 ? 'One entry waits' : `${n} entries wait`} on this device to be sent.`,
  toRead: (n: number) => (n === 1 ? 'One entry was sent. Read what was said of it:' : `${n} entries were sent. Read what was said of them:`),
  putAway: 'Read: put it away',
  sendNow: 'Send now',
  keepIt: 'Keep it',
  drop: 'Drop this entry',
  keptHere: 'The server does not answer. Kept on this device; it is sent when the server is back.',
  notKept: 'The server does not answer and this device keeps nothing. Write it down, or leave it here and try again.',
};
