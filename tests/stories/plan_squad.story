Story: Everybody gets a block; one who cannot be planned stops nobody, and logged work is not replaced

Given today is 2026-06-01
When the coach asks plan_squad
Then it is refused
  | name | is | too_few_data |
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit    | label                | item         | mass_lb | count |
  | Loft   | straight bar         | straight_bar | 45      | 1     |
  | Loft   | 45 lb plate          | plate        | 45      | 6     |
  | Loft   | 10 lb plate          | plate        | 10      | 4     |
  | Loft   | 5 lb plate           | plate        | 5       | 2     |
  | Loft   | rack                 | rack         |         | 1     |
  | Loft   | 4 lb ball            | ball         | 4       | 2     |
  | Loft   | wall                 | wall_bay     |         | 1     |
  | Loft   | floor                | open_floor   |         | 1     |
  | Loft   | red band             | band         |         | 2     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role     | level   | stature_in | training_years | kit  |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher  | college | 68         | 3              | Loft |
  | Uma Reyes | 2004-02-01 | female | right         | softball | pitcher  | college | 68         | 3              | Loft |
  | Dov Lark  | 2003-01-30 | male   | right         | baseball | fielder  | amateur | 72         | 2              | Loft |
# Uma has no free day in these four weeks.
Given the records calendar
  | athlete   | date       | last_date  | kind    |
  | Uma Reyes | 2026-06-08 | 2026-07-05 | off     |
When the coach asks plan_squad
  | start | 2026-06-08 |
Then the answer
  | state           | is       | done      |
  | planned         | is       | 2         |
  | refused         | is       | 1         |
  | lines.0.name    | is       | Dov Lark  |
  | lines.0.outcome | is       | planned   |
  | lines.1.outcome | is       | planned   |
  | lines.2.name    | is       | Uma Reyes |
  | lines.2.outcome | is       | refused   |
  | lines.2.words   | contains | free      |
When the coach asks block
  | block | Ona Reyes |
Then the answer
  | start | is | 2026-06-08 |

# Ona's block is changed by hand, and Dov has begun his: the next night changes neither.
When the coach asks adjust_block
  | block    | Ona Reyes  |
  | step     | leave_out  |
  | exercise | side_plank |
When the coach asks log_set
  | key        | set-of-the-story-1 |
  | athlete    | Dov Lark           |
  | date       | 2026-06-01         |
  | exercise   | side_plank         |
  | set_number | 1                  |
  | reps       | 10                 |
  | block      | dov-lark-2026-06-08 |
When the coach asks plan_squad
  | start    | 2026-06-08                   |
  | athletes | ["Ona Reyes", "Dov Lark"]    |
Then the answer
  | planned         | is       | 1        |
  | left            | is       | 1        |
  | lines.0.outcome | is       | left     |
  | lines.0.words   | contains | logged   |
  | lines.1.words   | contains | your changes |
When the coach asks block
  | block | Ona Reyes |
Then the answer
  | own_words | has   | 1          |
  | sessions  | lacks | side_plank |

# What is wrong for everybody is refused once.
When the coach asks plan_squad
  | weeks | 3 |
Then it is refused
  | field | is | weeks |
When the coach asks plan_squad
  | athletes | ["Nobody Here"] |
Then it is refused
  | field | is | athlete |
When the coach asks plan_squad
  | step | pause |
Then it is refused
  | field | is | step |
When the coach asks plan_squad
  | step | look |
Then the answer
  | state | is | done |
