Story: In the hall a kept block is judged in velocity and in what most of its sets were for, beside who had none

Given today is 2026-06-01
When the coach asks demo
  | seed | 1 |
Given the records blocks
  | block       | athlete        | kit            | start      | weeks | sessions_per_week | minutes | notes | model   |
  | tomas-early | Tomas Verlaine | saltgrass-hall | 2026-01-12 | 12    | 2                 | 60      |       | by hand |
  | tomas-now   | Tomas Verlaine | saltgrass-hall | 2026-06-08 | 4     | 2                 | 60      |       | by hand |
Given the records block_lines
  | block       | week | session | order | date       | exercise              | part       | sets | reps | rest_minutes | purpose             | reason |
  | tomas-early | 1    | 1       | 1     | 2026-01-12 | hex_bar_deadlift_high | main_lift  | 8    | 5    | 3            | two_leg_strength    | given  |
  | tomas-early | 1    | 2       | 1     | 2026-01-15 | split_squat_dumbbells | main_lift  | 4    | 6    | 3            | single_leg_strength | given  |
  | tomas-early | 1    | 2       | 2     | 2026-01-15 | pull_up_neutral       | main_lift  | 1    | 6    | 3            | pulling_strength    | given  |

# The last block that has begun; velocity first, then what 15 % of its sets or more were for. Pulling had one set in thirteen.
When the coach asks judge_block
  | athlete | Tomas Verlaine |
Then the answer
  | block                          | is       | tomas-early         |
  | to_date                        | is       | 2026-04-05          |
  | finished                       | is       | true                |
  | verdict                        | is       | cannot_tell         |
  | qualities.0.verdict            | is       | cannot_tell         |
  | qualities.0.others.verdict     | is       | cannot_tell         |
  | qualities                      | has      | 2                   |
  | qualities.0.quality            | is       | throwing_velocity   |
  | qualities.1.quality            | is       | two_leg_strength    |
  | qualities.0.before_date        | is       | 2026-01-08          |
  | qualities.0.after_date         | is       | 2026-05-06          |
  | qualities.0.others.athletes    | between  | 5 and 35            |
  | qualities.0.words.0            | contains | beside the forecast |
  | not_taken_out.0                | contains | Getting used to     |
  | words                          | contains | one would be said   |

When the coach asks judge_block
  | athlete | Tomas Verlaine |
  | block   | tomas-now      |
Then it is refused
  | sentence | contains | has not begun |

When the coach asks judge_block
  | athlete   | Tomas Verlaine |
  | from_date | 2024-09-02     |
  | to_date   | 2024-12-01     |
Then it is refused
  | sentence | contains | nothing to forecast from |
When the coach asks judge_block
  | athlete   | Finn Abernarrow |
  | from_date | 2026-03-02      |
  | to_date   | 2026-03-29      |
Then it is refused
  | sentence | contains | nothing to hold against the forecast |

# A change of velocity is read off the same model, and says so.
When the coach asks judge_change
  | athlete | Tomas Verlaine    |
  | test    | throwing_velocity |
Then the answer
  | from       | is       | joint model  |
  | from_words | contains | in one model |
When the coach asks judge_change
  | athlete | Tomas Verlaine |
  | test    | body_mass      |
Then the answer
  | from | is | joint model |

# A boy of twelve: growth is taken out with its interval, as the joint model has it.
When the coach asks judge_change
  | athlete | Finn Abernarrow   |
  | test    | throwing_velocity |
Then the answer
  | from         | is      | joint model |
  | growth.value | between | 3 and 9     |
  | growth.low   | between | 2 and 9     |
  | likely.low   | between | -4 and 1    |

# Which test next: the same as the limiters say, on the last day the calendar leaves free.
When the coach asks next_test
  | athlete | Marisol Quay |
Then the answer
  | before              | is       | 2026-06-29           |
  | tests.0.test        | is       | rotational_throw_6lb |
  | tests.0.date        | is       | 2026-06-24           |
  | tests.0.passed_over | has      | 4                    |
  | words.0             | contains | No single test       |
When the coach asks find_limiters
  | athlete | Marisol Quay |
Then the answer
  | test_next_words | lacks | Test this next |
When the coach asks next_test
  | athlete | Marisol Quay |
  | before  | 2026-05-01   |
Then it is refused
  | name | is | impossible_date |
When the coach asks next_test
  | athlete | Tomas Verlaine |
Then the answer
  | before       | is       | 2026-06-08 |
  | before_words | contains | kept block |
