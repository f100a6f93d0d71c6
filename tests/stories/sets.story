Story: A logged set moves the trajectory of its lift, and one key is one set

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label                | item       | mass_lb | count |
  | Loft | hex bar, low handles | hex_bar    | 55      | 1     |
  | Loft | 45 lb plate          | plate      | 45      | 4     |
  | Loft | floor                | open_floor |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |

Given the records test_results
  | athlete   | date       | test            | load_lb | reps |
  | Ona Reyes | 2026-04-06 | hex_bar_low_max | 205     | 5    |
When the coach asks log_set
  | key             | story-set-1 |
  | athlete         | Ona Reyes |
  | date            | 2026-05-29 |
  | exercise        | hex_bar_deadlift_low |
  | set_number      | 1 |
  | load_lb         | 235 |
  | reps            | 5 |
  | reps_in_reserve | 2 |
Then the answer
  | held_before  | is      | false |
  | before.value | between | 230 and 245 |
  | after.value  | between | 245 and 300 |
When the coach asks log_set
  | key             | story-set-1 |
  | athlete         | Ona Reyes |
  | date            | 2026-05-29 |
  | exercise        | hex_bar_deadlift_low |
  | set_number      | 1 |
  | load_lb         | 235 |
  | reps            | 5 |
  | reps_in_reserve | 2 |
Then the answer
  | held_before | is | true |
When the coach asks log_set
  | key        | story-set-2 |
  | athlete    | Ona Reyes |
  | date       | 2026-05-29 |
  | exercise   | hex_bar_deadlift_lo |
  | set_number | 1 |
Then it is refused
  | sentence | contains | Did you mean "hex_bar_deadlift_low" |

# No person pulls 850 lb for five with two to spare; a set without what was left in reserve shows no maximum.
When the coach asks log_set
  | key             | story-set-9 |
  | athlete         | Ona Reyes |
  | date            | 2026-05-29 |
  | exercise        | hex_bar_deadlift_low |
  | set_number      | 3 |
  | load_lb         | 850 |
  | reps            | 5 |
  | reps_in_reserve | 2 |
Then it is refused
  | name | is | out_of_range |
When the coach asks log_set
  | key             | story-set-10 |
  | athlete         | Ona Reyes |
  | date            | 2026-05-29 |
  | exercise        | hex_bar_deadlift_low |
  | set_number      | 4 |
  | load_lb         | 400 |
  | reps            | 5 |
  | reps_in_reserve | 2 |
Then the answer
  | words | contains | far from what the earlier tests foretell |
When the coach asks log_set
  | key             | story-set-11 |
  | athlete         | Ona Reyes |
  | date            | 2026-05-29 |
  | exercise        | hex_bar_deadlift_low |
  | set_number      | 5 |
  | load_lb         | 205 |
  | reps            | 5 |
Then the answer
  | words | contains | does not move the estimate |

# A block that begins in the past is refused.
When the coach asks plan_block
  | athlete | Ona Reyes |
  | start   | 2026-05-25 |
Then it is refused
  | field | is | start |
