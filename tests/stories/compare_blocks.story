Story: Two blocks of one thrower are held side by side, and blocks of two throwers are not

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label          | item       | mass_lb | count |
  | Loft | 15 lb dumbbell | dumbbell   | 15      | 2     |
  | Loft | 30 lb dumbbell | dumbbell   | 30      | 2     |
  | Loft | bench          | bench      |         | 1     |
  | Loft | blue band      | band       |         | 1     |
  | Loft | floor          | open_floor |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years | kit  |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              | Loft |
  | Dov Lark  | 2003-01-30 | male   | right         | baseball | fielder | amateur | 72         | 2              | Loft |
Given the records blocks
  | block     | athlete   | kit  | start      | weeks | sessions_per_week | minutes | notes | model   |
  | ona-early | Ona Reyes | Loft | 2026-03-02 | 4     | 1                 | 45      |       | by hand |
  | ona-late  | Ona Reyes | Loft | 2026-06-08 | 4     | 1                 | 60      |       | by hand |
  | dov-late  | Dov Lark  | Loft | 2026-06-08 | 4     | 1                 | 60      |       | by hand |
Given the records block_lines
  | block     | week | session | order | date       | exercise                 | part       | sets | reps | load_words              | rest_minutes | purpose           | reason |
  | ona-early | 1    | 1       | 1     | 2026-03-02 | press_dumbbell_neutral   | main_lift  | 4    | 8    | pair of 15 lb dumbbells | 2            | pressing_strength | given  |
  | ona-early | 2    | 1       | 1     | 2026-03-09 | press_dumbbell_neutral   | main_lift  | 5    | 8    | pair of 30 lb dumbbells | 2            | pressing_strength | given  |
  | ona-early | 3    | 1       | 1     | 2026-03-16 | press_dumbbell_neutral   | main_lift  | 2    | 8    | pair of 15 lb dumbbells | 2            | pressing_strength | given  |
  | ona-late  | 1    | 1       | 1     | 2026-06-08 | press_dumbbell_neutral   | main_lift  | 3    | 8    | pair of 30 lb dumbbells | 2            | pressing_strength | given  |
  | ona-late  | 1    | 1       | 2     | 2026-06-08 | split_squat_dumbbells    | assistance | 4    | 6    | pair of 15 lb dumbbells | 2            | single_leg_strength | given  |
  | dov-late  | 1    | 1       | 1     | 2026-06-08 | press_dumbbell_neutral   | main_lift  | 3    | 8    | pair of 30 lb dumbbells | 2            | pressing_strength | given  |

# Over the full weeks: 4 and 5 presses are 4.5 a week (week 3, with 2, is a reduced one); the load is the last full week's.
When the coach asks compare_blocks
  | block | ona-early |
  | with  | Ona Reyes |
Then the answer
  | name                    | is       | Ona Reyes               |
  | first.block             | is       | ona-early               |
  | second.block            | is       | ona-late                |
  | first.minutes           | is       | 45                      |
  | second.start            | is       | 2026-06-08              |
  | lines                   | has      | 2                       |
  | lines.0.exercise        | is       | split_squat_dumbbells   |
  | lines.0.sets_a_week     | is       | 0                       |
  | lines.0.sets_a_week_with | is      | 4                       |
  | lines.0.load_words      | is       |                         |
  | lines.1.sets_a_week     | is       | 4.5                     |
  | lines.1.sets_a_week_with | is      | 3                       |
  | lines.1.load_words      | is       | pair of 30 lb dumbbells |
  | words                   | contains | 1 in both, 0 only in the first, 1 only in the second |
  | blocks                  | has      | 2                       |
  | blocks.0                | is       | ona-late                |
When the coach asks compare_blocks
  | block | ona-late |
  | with  | dov-late |
Then it is refused
  | field    | is       | with                  |
  | sentence | contains | two blocks of one thrower |
  | allowed  | contains | ona-early             |
When the coach asks compare_blocks
  | block | ona-late |
  | with  | nobody   |
Then it is refused
  | name  | is | unknown_name |
  | field | is | with         |
