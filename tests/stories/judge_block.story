Story: A block is held against the forecast without it, and what cannot be taken out is named

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex  | throwing_hand | sport    | role    | level   |
  | Abe Rusk  | 2004-02-01 | male | right         | baseball | pitcher | college |

# One thrower is no roster: there is no forecast to hold a block against.
When the coach asks judge_block
  | athlete   | Abe Rusk   |
  | from_date | 2026-01-05 |
  | to_date   | 2026-03-29 |
Then it is refused
  | name     | is       | too_few_data |
  | sentence | contains | tested often enough  |
When the coach asks judge_block
  | athlete | Abe Rusk |
Then it is refused
  | sentence | contains | no kept block |
When the coach asks judge_block
  | athlete   | Abe Rusk   |
  | from_date | 2026-01-05 |
  | to_date   | 2026-01-09 |
Then it is refused
  | field | is | to_date |
When the coach asks judge_block
  | athlete   | Abe Rusk   |
  | from_date | 2026-01-05 |
Then it is refused
  | field | is | to_date |
When the coach asks judge_block
  | athlete | Abe Rusk |
  | block   | no-such  |
Then it is refused
  | name  | is | unknown_name |
  | field | is | block        |
