Story: A block from a spreadsheet is shown, checked and kept, and written back as it came

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label                | item       | mass_lb | count |
  | Loft | hex bar, low handles | hex_bar    | 55      | 1     |
  | Loft | 45 lb plate          | plate      | 45      | 4     |
  | Loft | 10 lb plate          | plate      | 10      | 4     |
  | Loft | 6 lb ball            | ball       | 6       | 2     |
  | Loft | red band             | band       |         | 2     |
  | Loft | floor                | open_floor |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | training_years |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 3              |
  | Bo Tarn   | 2014-05-11 | male   | right         | baseball | pitcher | youth   |                |

# Every fault at once, by line and column; 160 lb cannot be made of 45s and 10s, and the loads beside it are said.
When the coach asks import_block for Ona Reyes
  | week | session | weekday | exercise             | sets | reps | load_lb |
  | 1    | 1       | monday  | low hex deadlift     | 3    | five | 145     |
  | 1    | 1       | monnday | Side-on scoop throw  | 3    | 5    | 6       |
Then the answer
  | kept                | is       | false |
  | problems            | has      | 3 |
  | problems.0.field    | is       | line 2, exercise |
  | problems.0.sentence | contains | Hex-bar deadlift, low handles |
  | problems.1.field    | is       | line 2, reps |
  | problems.2.field    | is       | line 3, weekday |
When the coach asks import_block for Ona Reyes and keeps it
  | week | exercise             | sets | reps | load_lb |
  | 1    | hex_bar_deadlift_low | 3    | 5    | 160     |
Then the answer
  | kept                | is       | false |
  | problems.0.field    | is       | line 2, load_lb |
  | problems.0.sentence | contains | 145 lb |
  | problems.0.sentence | contains | 165 lb |

# Shown first, nothing kept; the guard rails look: twenty sets of three and a half minutes do not fit into sixty.
When the coach asks import_block for Ona Reyes and keeps it
  | week | session | weekday | exercise             | sets | reps | load_lb | reserve |
  | 1    | 1       | monday  | hex_bar_deadlift_low | 20   | 5    | 165     | 2       |
Then the answer
  | kept                      | is       | false |
  | can_be_kept               | is       | false |
  | words                     | contains | Not kept: 1 check |
  | block.findings            | contains | minutes |

When the coach asks import_block for Ona Reyes
  | week | session | weekday | exercise             | sets | reps | load_lb | reserve | load_words |
  | 1    | 1       | monday  | Side-on scoop throw  | 4    | 5    | 6       |         |            |
  | 1    | 1       | monday  | hex_bar_deadlift_low | 4    | 5    | 165     | 2       |            |
  | 2    | 1       | monday  | hex_bar_deadlift_low | 4    | 4    | 185     | 2       |            |
  | 3    | 1       | monday  | hex_bar_deadlift_low | 4    | 3    | 185     | 2       |            |
  | 4    | 1       | monday  | hex_bar_deadlift_low | 2    | 3    | 185     | 2       |            |
Then the answer
  | kept                                 | is       | false |
  | can_be_kept                          | is       | true |
  | problems                             | has      | 0 |
  | block.start                          | is       | 2026-06-08 |
  | block.sessions.0.lines.1.load_words  | contains | hex bar, low handles |
  | block.sessions.0.lines.1.rest_minutes | between | 2 and 3 |
  | block.sessions.1.date                | is       | 2026-06-15 |
When the coach asks block
  | block | Ona Reyes |
Then it is refused
  | name | is | unknown_name |
When the coach asks import_block for Ona Reyes and keeps it
  | week | session | weekday | exercise             | sets | reps | load_lb | reserve |
  | 1    | 1       | monday  | hex_bar_deadlift_low | 4    | 5    | 165     | 2       |
  | 2    | 1       | monday  | hex_bar_deadlift_low | 4    | 4    | 185     | 2       |
  | 3    | 1       | monday  | hex_bar_deadlift_low | 4    | 3    | 185     | 2       |
  | 4    | 1       | monday  | hex_bar_deadlift_low | 2    | 3    | 185     | 2       |
Then the answer
  | kept  | is       | true |
  | words | contains | Kept: 4 lines in 4 weeks |
When the coach asks export_block
  | block | Ona Reyes |
Then the answer
  | files        | has      | 1 |
  | files.0.name | is       | ona-reyes-2026-06-08.csv |
  | files.0.text | contains | 1,1,1,2026-06-08,hex_bar_deadlift_low,4,5,165 |
When the coach asks plan_next_session
  | athlete | Ona Reyes |
Then the answer
  | lines.0.load | between | 164.9 and 165.1 |

# A lift for older athletes is stopped for a boy of twelve.
When the coach asks import_block for Bo Tarn and keeps it
  | week | exercise             | sets | reps | load_lb |
  | 1    | hex_bar_deadlift_low | 3    | 8    | 75      |
Then the answer
  | kept | is | false |
  | block.findings | contains | stops |
When the coach asks import_block
  | athlete | Ona Reyes |
  | text    | just words |
  | minutes | 10 |
Then it is refused
  | field | is | minutes |
