Story: The gym is shut this week, so the block is made again in a garage, and says what is lost

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | lb        | mph        | in          |
Given the records kit
  | kit    | label                 | item         | mass_lb | count |
  | Loft   | straight bar          | straight_bar | 45      | 1     |
  | Loft   | 45 lb plate           | plate        | 45      | 8     |
  | Loft   | 25 lb plate           | plate        | 25      | 2     |
  | Loft   | 10 lb plate           | plate        | 10      | 4     |
  | Loft   | 5 lb plate            | plate        | 5       | 2     |
  | Loft   | 2.5 lb plate          | plate        | 2.5     | 2     |
  | Loft   | rack                  | rack         |         | 1     |
  | Loft   | bench                 | bench        |         | 1     |
  | Loft   | 4 lb ball             | ball         | 4       | 2     |
  | Loft   | wall                  | wall_bay     |         | 1     |
  | Loft   | red band              | band         |         | 2     |
  | Garage | 15 lb dumbbell        | dumbbell     | 15      | 2     |
  | Garage | 30 lb dumbbell        | dumbbell     | 30      | 2     |
  | Garage | 50 lb dumbbell        | dumbbell     | 50      | 2     |
  | Garage | bench                 | bench        |         | 1     |
  | Garage | blue band             | band         |         | 1     |
  | Garage | 4 lb ball             | ball         | 4       | 1     |
  | Garage | wall                  | wall_bay     |         | 1     |
Given the records athletes
  | name     | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_in | training_years | kit  |
  | Dov Lark | 2003-01-30 | male | right         | baseball | pitcher | college | 72         | 5              | Loft |
Given the records test_results
  | athlete  | date       | test            | side | load_lb | reps | body_mass_lb |
  | Dov Lark | 2026-05-04 | body_mass       |      |         |      | 200          |
  | Dov Lark | 2026-05-04 | split_squat_max | left | 205     | 5    |              |
When the coach asks plan_block
  | athlete | Dov Lark   |
  | start   | 2026-06-08 |
Then the answer
  | kit      | is       | Loft         |
  | sessions | contains | straight bar |

# The same gym: nothing changes, and nothing can be kept.
When the coach asks retarget_block
  | block | Dov Lark |
  | kit   | Loft     |
Then the answer
  | kept       | is       | 100           |
  | kept_words | contains | as it was     |
  | kept_block | lacks    | dov           |
  | purchases  | has      | 0             |
When the coach asks retarget_block
  | block | Dov Lark |
  | kit   | Loft     |
  | keep  | yes      |
Then it is refused
  | code  | is | 202 |
  | field | is | kit |

# The garage: dumbbells to 50 lb hold the split squat below what the leg was asked for.
When the coach asks retarget_block
  | block | Dov Lark |
  | kit   | Garage   |
Then the answer
  | kit_name         | is       | Garage                     |
  | kept             | between  | 50 and 99.9                |
  | kept_block       | lacks    | dov                        |
  | sessions         | contains | asks of the lead leg       |
  | sessions         | contains | pair of 50 lb dumbbells    |
  | sessions         | contains | the heaviest here          |
  | sessions         | contains | Three counts down          |
  | sessions         | contains | asks the same of one leg   |
  | sessions         | contains | the hip does               |
  | sessions         | lacks    | causes                     |
  | purchases        | lacks    | a straight bar             |
  | notes.0          | contains | written for Loft           |
  | findings         | has      | 0                          |
  | stop_and_refer.0 | contains | pain                       |

# Kept, it is a block of its own; the first stays.
When the coach asks retarget_block
  | block | Dov Lark |
  | kit   | Garage   |
  | keep  | yes      |
Then the answer
  | kept_block | is | dov-lark-2026-06-08-garage |
When the coach asks block
  | block | dov-lark-2026-06-08-garage |
Then the answer
  | kit      | is       | Garage                     |
  | sessions | lacks    | straight bar +             |
  | sessions | contains | pair of 50 lb dumbbells    |
  | findings | has      | 0                          |
# It is changed by hand like any other, keeps its name, and the first one does not move.
When the coach asks adjust_block
  | block    | dov-lark-2026-06-08-garage |
  | step     | leave_out                  |
  | exercise | rfe_split_squat_dumbbells  |
Then the answer
  | block.block    | is    | dov-lark-2026-06-08-garage |
  | block.kit      | is    | Garage                     |
  | block.sessions | lacks | rfe_split_squat_dumbbells  |
When the coach asks adjust_block
  | block | dov-lark-2026-06-08-garage |
  | step  | undo                       |
Then the answer
  | block.sessions | contains | pair of 50 lb dumbbells |
When the coach asks block
  | block | dov-lark-2026-06-08 |
Then the answer
  | kit      | is       | Loft         |
  | sessions | contains | straight bar |

When the coach asks retarget_block
  | block | Dov Lark |
  | kit   | Moon     |
Then it is refused
  | field | is | kit |
