export const throwWords = {
  title: 'Write down throws',
  date: 'Day',
  setting: 'Where',
  settings: {
    game: 'game',
    bullpen: 'bullpen',
    mound: 'mound',
    flat_ground: 'flat ground',
    catch_play: 'catch',
    long_toss: 'long toss',
    ball_drill: 'ball drill',
    javelin: 'javelin',
  } as Record<string, string>,
  numbers: {
    count: 'Throws',
    soreness_before: 'Soreness before (0 to 10)',
    soreness_after: 'Soreness after (0 to 10)',
    soreness_next_day: 'Soreness next day (0 to 10)',
  },
  keep: 'Keep these throws',
};

export const changeWords = {
  title: 'Did it really change?',
  intro: 'Between two test days: more than noise, and below 18 more than growth.',
  test: 'Test',
  from: 'From',
  to: 'To',
  judge: 'Judge the change',
  likely: 'Likely true change',
};
