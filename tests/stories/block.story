Story: A block is made of what stands in the gym, spares the legs before a start, and explains each line

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

Given the records calendar
  | athlete   | date       | kind  |
  | Ona Reyes | 2026-06-13 | start |
Given the records test_results
  | athlete   | date       | test            | load_lb | reps |
  | Ona Reyes | 2026-05-04 | hex_bar_low_max | 205     | 5    |
When the coach asks plan_block
  | athlete | Ona Reyes |
  | start   | 2026-06-08 |
Then the answer
  | weeks                           | is       | 4 |
  | sessions.0.lines.0.reason       | contains | goes with |
  | findings                        | has      | 0 |
  | stop_and_refer.0                | contains | pain |
When the coach asks block
  | block | Ona Reyes |
  | week  | 1 |
Then the answer
  | sessions | has | 3 |
When the coach asks plan_block
  | athlete | Ona Reyes |
  | weeks   | 3 |
Then it is refused
  | field | is | weeks |
When the coach asks plan_block
  | athlete | Dov Lark |
  | start   | 2026-06-08 |
Then the answer
  | kit      | is  | Garage |
  | findings | has | 0 |
When the coach asks load_bar
  | kit       | Loft |
  | target_lb | 227 |
Then the answer
  | nearest.total   | is       | 225 |
  | above.total     | is       | 230 |
  | nearest.words   | contains | 2 x 45 a side |
  | warm_up.0.load.total | between | 45 and 120 |
