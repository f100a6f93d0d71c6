Story: A block is made of what stands in the gym, spares the legs before a start, and explains each line

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit    | label                | item         | mass_lb | count |
  | Loft   | straight bar         | straight_bar | 45      | 1     |
  | Loft   | hex bar, low handles | hex_bar      | 55      | 1     |
  | Loft   | 45 lb plate          | plate        | 45      | 6     |
  | Loft   | 25 lb plate          | plate        | 25      | 2     |
  | Loft   | 10 lb plate          | plate        | 10      | 4     |
  | Loft   | 5 lb plate           | plate        | 5       | 2     |
  | Loft   | 2.5 lb plate         | plate        | 2.5     | 2     |
  | Loft   | rack                 | rack         |         | 1     |
  | Loft   | 4 lb ball            | ball         | 4       | 2     |
  | Loft   | wall                 | wall_bay     |         | 1     |
  | Loft   | floor                | open_floor   |         | 1     |
  | Loft   | red band             | band         |         | 2     |
  | Garage | 15 lb dumbbell       | dumbbell     | 15      | 2     |
  | Garage | 30 lb dumbbell       | dumbbell     | 30      | 2     |
  | Garage | 50 lb dumbbell       | dumbbell     | 50      | 2     |
  | Garage | bench                | bench        |         | 1     |
  | Garage | blue band            | band         |         | 1     |
  | Garage | floor                | open_floor   |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years | kit    |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              | Loft   |
  | Uma Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              | Loft   |
  | Dov Lark  | 2003-01-30 | male   | right         | baseball | fielder | amateur | 72         | 2              | Garage |
Given the records test_results
  | athlete   | date       | test            | side | load_lb | reps |
  | Ona Reyes | 2026-05-04 | hex_bar_low_max |      | 205     | 5    |
  | Uma Reyes | 2026-05-04 | hex_bar_low_max |      | 205     | 5    |
  | Dov Lark  | 2026-05-04 | press_max       |      | 100     | 8    |
# Ona starts on the Saturday of week one; Uma does not.
Given the records calendar
  | athlete   | date       | kind  |
  | Ona Reyes | 2026-06-13 | start |

# Uma's Friday holds a main lift. Ona's Friday is the day before her start: that session moved to the day after it.
When the coach asks plan_block
  | athlete | Uma Reyes  |
  | start   | 2026-06-08 |
Then the answer
  | sessions.2.date  | is       | 2026-06-12          |
  | sessions.2.lines | contains | main lift kept in weeks |
When the coach asks plan_block
  | athlete | Ona Reyes  |
  | start   | 2026-06-08 |
Then the answer
  | weeks                             | is       | 4                     |
  | sessions.1.date                   | is       | 2026-06-10            |
  | sessions.2.date                   | is       | 2026-06-14            |
  | sessions.2.lines                  | contains | more than 48 h clear of the start on 2026-06-13 |
  | sessions                          | contains | of the lower side of the estimate |
  | reach.words                       | contains | forecast no velocity  |
  | reach.broken                      | has      | 0                     |
  | sessions.0.lines.0.held_back      | contains | set                   |
  | sessions.0.lines.2.reason         | contains | goes with             |
  | sessions                          | lacks    | causes                |
  | findings                          | has      | 0                     |
  | stop_and_refer.0                  | contains | pain                  |

# The kept block is read again, a week at a time.
When the coach asks block
  | block | Ona Reyes |
  | week  | 1         |
Then the answer
  | sessions                      | has      | 3                    |
  | sessions                      | contains | of the lower side of the estimate |
When the coach asks plan_block
  | athlete | Ona Reyes |
  | weeks   | 3         |
Then it is refused
  | field | is | weeks |

# At home there are dumbbells to 50 lb, a band and a floor, and nothing else is asked for.
When the coach asks plan_block
  | athlete | Dov Lark   |
  | start   | 2026-06-08 |
Then the answer
  | kit      | is       | Garage                  |
  | sessions | contains | pair of 30 lb dumbbells |
  | sessions | contains | blue band               |
  | sessions | lacks    | straight bar            |
  | sessions | lacks    | hex bar                 |
  | sessions | lacks    | lb ball                 |
  | findings | has      | 0                       |
