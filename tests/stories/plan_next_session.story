Story: The next session follows what was logged: more in reserve, a session cut short, missed sessions, a note of pain

Given today is 2026-06-12
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label                | item       | mass_lb | count |
  | Loft | hex bar, low handles | hex_bar    | 55      | 1     |
  | Loft | 45 lb plate          | plate      | 45      | 4     |
  | Loft | 10 lb plate          | plate      | 10      | 6     |
  | Loft | 5 lb plate           | plate      | 5       | 2     |
  | Loft | 2.5 lb plate         | plate      | 2.5     | 2     |
  | Loft | 4 lb ball            | ball       | 4       | 2     |
  | Loft | 6 lb ball            | ball       | 6       | 2     |
  | Loft | floor                | open_floor |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |
  | Uma Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |
Given the records blocks
  | block                | athlete   | kit  | start      | weeks | sessions_per_week | minutes |
  | ona-reyes-2026-06-08 | Ona Reyes | Loft | 2026-06-08 | 4     | 2                 | 60      |
Given the records block_lines
  | block                | week | session | order | date       | exercise               | part      | sets | reps | reps_in_reserve | load_lb | rest_minutes | purpose             |
  | ona-reyes-2026-06-08 | 1    | 1       | 1     | 2026-06-08 | rotational_scoop_throw | speed     | 3    | 5    |                 | 6       | 1.5          | rotational_ball_speed |
  | ona-reyes-2026-06-08 | 1    | 1       | 2     | 2026-06-08 | hex_bar_deadlift_low   | main_lift | 3    | 5    | 2               | 200     | 3            | two_leg_strength    |
  | ona-reyes-2026-06-08 | 1    | 2       | 1     | 2026-06-12 | rotational_scoop_throw | speed     | 3    | 5    |                 | 6       | 1.5          | rotational_ball_speed |
  | ona-reyes-2026-06-08 | 1    | 2       | 2     | 2026-06-12 | hex_bar_deadlift_low   | main_lift | 3    | 5    | 2               | 200     | 3            | two_leg_strength    |
  | ona-reyes-2026-06-08 | 2    | 1       | 1     | 2026-06-15 | hex_bar_deadlift_low   | main_lift | 3    | 5    | 2               | 215     | 3            | two_leg_strength    |
Given the records sets
  | key            | athlete   | date       | exercise               | set_number | load_lb | reps | reps_in_reserve | speed_mph | block                |
  | story-next-001 | Ona Reyes | 2026-06-08 | rotational_scoop_throw | 1          | 6       | 5    |                 | 26        | ona-reyes-2026-06-08 |
  | story-next-002 | Ona Reyes | 2026-06-08 | hex_bar_deadlift_low   | 1          | 200     | 5    | 4               |           | ona-reyes-2026-06-08 |

# Monday's sets left 4 where 2 were written: 200 x (1 + 9/30) / (1 + 7/30) = 210.8, and the bar makes 210.
# One set of three was done, so the lift comes first today, with three sets and not five.
When the coach asks plan_next_session
  | athlete | Ona Reyes |
Then the answer
  | date                       | is       | 2026-06-12 |
  | words                      | contains | Today |
  | rule                       | is       | as_written |
  | ordered.0.sentence         | contains | 1 of 3 sets were done |
  | lines.0.exercise           | is       | hex_bar_deadlift_low |
  | lines.0.load               | between  | 209.9 and 210.1 |
  | lines.0.sets               | is       | 3 |
  | lines.0.changed            | is       | true |
  | lines.0.written            | contains | 200 lb |
  | lines.0.last_time          | contains | leaving 4 |
  | lines.0.why.0.sentence     | contains | 2 repetitions more than written |
  | lines.0.why.0.source       | contains | ACSM2009 |
  | lines.1.changed            | is       | false |
  | pain_notes                 | has      | 0 |
  | findings                   | has      | 0 |

# A set of today that failed at three lowers the rest, and its note brings the words to stop, and nothing else.
When the coach asks log_set
  | key             | story-next-003 |
  | athlete         | Ona Reyes |
  | date            | 2026-06-12 |
  | exercise        | hex_bar_deadlift_low |
  | set_number      | 1 |
  | load_lb         | 210 |
  | reps            | 3 |
  | reps_in_reserve | 0 |
  | block           | ona-reyes-2026-06-08 |
  | note            | back hurts |
When the coach asks plan_next_session
  | block | ona-reyes-2026-06-08 |
Then the answer
  | lines.0.sets_done      | is       | 1 |
  | lines.0.sets_left      | is       | 2 |
  | lines.0.load           | between  | 184.9 and 185.1 |
  | lines.0.why.1.sentence | contains | Today a set failed |
  | pain_notes.0.note      | is       | back hurts |
  | stop_and_refer.0       | contains | pain |

# Without a block there is nothing to go on.
When the coach asks plan_next_session
  | athlete | Uma Reyes |
Then it is refused
  | sentence | contains | has no kept block |
When the coach asks plan_next_session
  | athlete | Ona Reyes |
  | block   | ona-reyes-2026-06-08 |
Then it is refused
  | field | is | block |
