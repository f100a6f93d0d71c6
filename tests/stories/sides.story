Story: A difference between sides is said with its error and its direction, and never by a fixed line

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | kg        | mph        | cm          |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college |
  | Bo Tarn   | 2002-05-11 | male   | left          | baseball | pitcher | amateur |
Given the records test_results
  | athlete   | date       | test       | side  | trial | force_n | device | rater |
  | Ona Reyes | 2026-04-06 | grip_force | right | 1     | 400     | grip 1 | Ines  |
  | Ona Reyes | 2026-04-06 | grip_force | left  | 1     | 380     | grip 1 | Ines  |
  | Ona Reyes | 2026-05-04 | grip_force | right | 1     | 500     | grip 1 | Ines  |
  | Ona Reyes | 2026-05-04 | grip_force | left  | 1     | 400     | grip 1 | Ines  |
  | Bo Tarn   | 2026-05-04 | grip_force | right | 1     | 500     | grip 1 | Ines  |
  | Bo Tarn   | 2026-05-04 | grip_force | left  | 1     | 510     | grip 2 | Ines  |
Given the records test_results
  | athlete   | date       | test          | side  | trial | distance_m |
  | Ona Reyes | 2026-05-04 | lateral_bound | right | 1     | 1.71       |
  | Ona Reyes | 2026-05-04 | lateral_bound | left  | 1     | 1.70       |
Given the records test_results
  | athlete | date       | test            | side  | load_kg | reps |
  | Bo Tarn | 2026-05-04 | split_squat_max | right | 80      | 5    |

# 5 % an error each (3 % and 4 %): 500 and 400 N are 11.1 % of the total apart, SE 2 x 500 x 400 x 0.05 x 1.414 / 900^2.
When the coach asks sides
  | athlete | Ona Reyes |
Then the answer
  | tests                          | has      | 2                     |
  | tests.1.test                   | is       | grip_force            |
  | tests.1.date                   | is       | 2026-05-04            |
  | tests.1.main_side              | is       | throwing side, right  |
  | tests.1.difference.value       | is       | 100                   |
  | tests.1.over_total.value       | between  | 11.11 and 11.12       |
  | tests.1.over_total.low         | between  | 6.63 and 6.64         |
  | tests.1.rivals.of_larger       | between  | 19.99 and 20.01       |
  | tests.1.rivals.smaller_share   | between  | 79.99 and 80.01       |
  | tests.1.verdict                | is       | larger_than_error     |
  | tests.1.days_compared          | is       | 2                     |
  | tests.1.days_same_way          | is       | 2                     |
  | tests.0.test                   | is       | lateral_bound         |
  | tests.0.verdict                | is       | within_error          |
  | words.1                        | contains | no sign of injury     |

# Two grip tools, and one leg only: not compared, and why.
When the coach asks sides
  | athlete | Bo Tarn |
Then the answer
  | tests          | has      | 0              |
  | not_compared   | has      | 2              |
  | not_compared.0 | contains | only the lead leg was measured |
  | not_compared.1 | contains | two tools      |
  | words.0        | contains | measure both   |

When the coach asks sides
  | athlete | Nobody |
Then it is refused
  | name | is | unknown_name |
