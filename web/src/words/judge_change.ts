export const changeWords = {
  title: 'Did it really change?',
  intro: 'Between two test days: more than noise, and below 18 more than growth.',
  test: 'Test',
  from: 'From',
  to: 'To',
  judge: 'Judge the change',
  likely: 'Likely true change',
  judgedFrom: { 'joint model': 'Judged from the joint model of the roster', 'this test alone': 'Judged from this test alone' } as Record<string, string>,
  chances: (gained: string, lost: string) => `${gained} chance that a worthwhile change was gained, ${lost} that it was lost`,
  growth: 'Growth alone, taken out',
  verdicts: { gained: 'Gained.', lost: 'Lost.', cannot_tell: 'Cannot tell yet.' } as Record<string, string>,
};
