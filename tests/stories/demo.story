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
