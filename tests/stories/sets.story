Story: A logged set moves the trajectory of its lift, and one key is one set

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label               | item         | mass_lb | count |
  | Loft | straight bar        | straight_bar | 45      | 1     |
  | Loft | 45 lb plate         | plate        | 45      | 6     |
  | Loft | 35 lb plate         | plate        | 35      | 2     |
  | Loft | 25 lb plate         | plate        | 25      | 2     |
  | Loft | 10 lb plate         | plate        | 10      | 4     |
  | Loft | 5 lb plate          | plate        | 5       | 2     |
  | Loft | 2.5 lb plate        | plate        | 2.5     | 2     |
  | Loft | rack                | rack         |         | 1     |
  | Loft | bench               | bench        |         | 1     |
  | Loft | hex bar, low handles | hex_bar     | 55      | 1     |
  | Loft | 40 lb dumbbell      | dumbbell     | 40      | 2     |
  | Loft | 25 lb dumbbell      | dumbbell     | 25      | 2     |
  | Loft | 4 lb ball           | ball         | 4       | 2     |
  | Loft | wall                | wall_bay     |         | 1     |
  | Loft | floor               | open_floor   |         | 1     |
  | Loft | red band            | band         |         | 2     |
  | Garage | 15 lb dumbbell    | dumbbell     | 15      | 2     |
  | Garage | 30 lb dumbbell    | dumbbell     | 30      | 2     |
  | Garage | 50 lb dumbbell    | dumbbell     | 50      | 2     |
  | Garage | bench             | bench        |         | 1     |
  | Garage | blue band         | band         |         | 1     |
  | Garage | floor             | open_floor   |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years | restrictions          | kit    |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |                       | Loft   |
  | Bo Tarn   | 2012-05-11 | male   | right         | baseball | pitcher | youth   | 62         | 0              |                       | Loft   |
  | Cy Weld   | 2002-07-21 | male   | left          | baseball | pitcher | amateur | 74         | 5              | medial_elbow_symptoms | Loft   |
  | Dov Lark  | 2003-01-30 | male   | right         | baseball | fielder | amateur | 72         | 2              |                       | Garage |

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
