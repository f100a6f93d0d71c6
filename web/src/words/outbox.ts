export const outboxWords = {
  waiting: (n: number) => `${n === 1 ? 'One entry waits' : `${n} entries wait`} on this device to be sent.`,
  sendNow: 'Send now',
  drop: 'Drop this entry',
  keptHere: 'The server does not answer. Kept on this device; it is sent when the server is back.',
};
