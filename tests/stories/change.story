Story: A difference inside the noise is not called a change; a youth's growth is taken out

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
  | athlete   | date       | test              | trial | speed_mph | device  | place_measured |
  | Ona Reyes | 2026-03-02 | throwing_velocity | 1     | 60.0      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-03-02 | throwing_velocity | 2     | 60.6      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | throwing_velocity | 1     | 60.9      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | throwing_velocity | 2     | 60.7      | radar 1 | out_of_hand    |
  | Bo Tarn   | 2025-06-02 | throwing_velocity | 1     | 55.0      | radar 1 | out_of_hand    |
  | Bo Tarn   | 2026-05-04 | throwing_velocity | 1     | 56.4      | radar 1 | out_of_hand    |
When the coach asks judge_change
  | athlete | Ona Reyes |
  | test    | throwing_velocity |
Then the answer
  | verdict  | is       | cannot_tell |
  | measured | between  | 0.4 and 0.6 |
  | words.0  | contains | Cannot tell yet |
  | growth   | is       | null |
When the coach asks judge_change
  | athlete | Bo Tarn |
  | test    | throwing_velocity |
Then the answer
  | verdict      | is       | cannot_tell |
  | growth.value | between  | 1.3 and 1.5 |
  | words.1      | contains | Growth alone |
When the coach asks judge_change
  | athlete | Cy Weld |
  | test    | throwing_velocity |
Then it is refused
  | name | is | too_few_data |
When the coach asks roster
Then the answer
  | throwers              | has      | 4 |
  | throwers.2.next_step  | contains | Measure throwing velocity |
  | throwers.3.name       | is       | Ona Reyes |
  | throwers.3.velocity.unit | is    | mph |
