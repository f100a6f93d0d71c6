Story: The invented hall fills an empty store, once

Given today is 2026-06-01
When the coach asks demo
  | seed | 1 |
Then the answer
  | facility | is       | Saltgrass Throwing Hall |
  | athletes | is       | 36                      |
  | truth    | contains | "invented": true        |
# It never touches records that are there.
When the coach asks demo
Then it is refused
  | name | is | already_held |
When the coach asks roster
Then the answer
  | throwers | has | 36 |
When the coach asks find_limiters
  | athlete | Marisol Quay |
Then the answer
  | limiters.0.tested | is | true |

# A set of a block counts on its exercise's nearest line, also when it was done on another day than planned.
When the coach asks plan_block
  | athlete | Marisol Quay |
  | start   | 2026-06-08   |
When the coach asks log_set
  | key             | story-early-set      |
  | athlete         | Marisol Quay         |
  | date            | 2026-06-01           |
  | exercise        | step_in_overhead_throw |
  | set_number      | 1                    |
  | block           | marisol-quay-2026-06-08 |
When the coach asks block
  | block | Marisol Quay |
  | week  | 1            |
Then the answer
  | sessions.0.lines.0.exercise    | is | step_in_overhead_throw  |
  | sessions.0.lines.0.sets_logged | is | 1                       |
  | sessions.1.lines.0.sets_logged | is | 0                       |
