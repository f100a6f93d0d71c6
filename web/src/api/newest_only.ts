// While a slider moves, questions come faster than answers. One is under way at a time; when its answer is here, the
// newest question follows, and those between are left out. No wait is put in between.
export function newestOnly<Question, Got>(ask: (question: Question) => Promise<Got>, show: (got: Got, question: Question, last: boolean) => void) {
  let underWay = false;
  let waiting: { question: Question } | undefined;
  async function send(question: Question): Promise<void> {
    if (underWay) {
      waiting = { question };
      return;
    }
    underWay = true;
    try {
      for (let now: { question: Question } | undefined = { question }; now; ) {
        const got = await ask(now.question);
        const next: { question: Question } | undefined = waiting;
        waiting = undefined;
        show(got, now.question, !next);
        now = next;
      }
    } finally {
      underWay = false;
    }
  }
  return send;
}
