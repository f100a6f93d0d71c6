Story: A gym's own repeats replace a published error only as far as they can tell

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | kg        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college |
  | Bo Tarn   | 2002-05-11 | male   | right         | baseball | pitcher | amateur |

# Nothing repeated: the published error, and how much it takes to replace it.
When the coach asks estimate_error
  | test | grip_force |
Then the answer
  | tests.0.unit                     | is       | %                      |
  | tests.0.trial.published          | between  | 2.99 and 3.01          |
  | tests.0.trial.own                | is       | null                   |
  | tests.0.trial.pooled.value       | between  | 2.99 and 3.01          |
  | tests.0.trial.pooled.low         | between  | 1.57 and 1.59          |
  | tests.0.trial.repeats_needed     | is       | 23                     |
  | tests.0.words.0                  | contains | the published error stands |
  | tests.0.words.1                  | contains | cannot tell yet: about 23 more repeated days |

# Two readings each of five arms, 6 to 10 % apart one way or the other: more than the published 3 %, from 4 repeats.
Given the records test_results
  | athlete   | date       | test       | side  | trial | force_n | device | rater |
  | Ona Reyes | 2026-03-02 | grip_force | right | 1     | 300     | grip 1 | Ines  |
  | Ona Reyes | 2026-03-02 | grip_force | right | 2     | 330     | grip 1 | Ines  |
  | Ona Reyes | 2026-03-02 | grip_force | left  | 1     | 310     | grip 1 | Ines  |
  | Ona Reyes | 2026-03-02 | grip_force | left  | 2     | 285     | grip 1 | Ines  |
  | Bo Tarn   | 2026-03-02 | grip_force | right | 1     | 520     | grip 1 | Ines  |
  | Bo Tarn   | 2026-03-02 | grip_force | right | 2     | 560     | grip 1 | Ines  |
  | Bo Tarn   | 2026-03-02 | grip_force | left  | 1     | 510     | grip 1 | Ines  |
  | Bo Tarn   | 2026-03-02 | grip_force | left  | 2     | 470     | grip 1 | Ines  |
  | Bo Tarn   | 2026-03-30 | grip_force | right | 1     | 530     | grip 1 | Ines  |
  | Bo Tarn   | 2026-03-30 | grip_force | right | 2     | 497     | grip 1 | Ines  |
When the coach asks estimate_error
  | test | grip_force |
# R: sd(c(log(330/300), log(285/310), log(560/520), log(470/510), log(497/530))) / sqrt(2) = 0.06296
Then the answer
  | tests.0.trial.own.value          | between  | 6.29 and 6.30          |
  | tests.0.trial.degrees_of_freedom | is       | 4                      |
  | tests.0.trial.pooled.value       | between  | 3.5 and 6.3            |
  | tests.0.trial.repeats_needed     | is       | 19                     |
  | tests.0.trial.words              | contains | cannot tell yet: about 19 more repeated trials would settle it |
  | tests.0.usual_trials             | is       | 2                      |
  | tests.0.day.repeats_held         | is       | 1                      |

# Sets of a lift lead up to the best one.
When the coach asks estimate_error
  | test | split_squat_max |
Then the answer
  | tests.0.words.0 | contains | no repeats of it |

When the coach asks estimate_error
  | test | grip_farce |
Then it is refused
  | name     | is       | unknown_name |
  | sentence | contains | grip_force   |
