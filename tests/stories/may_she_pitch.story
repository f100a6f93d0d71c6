Story: "May he pitch on Thursday?" for an adult and a youth, two teams, a start on the calendar, and a stop answered for

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name     | birth_date | sex  | throwing_hand | sport    | role    | level   |
  | Bo Tarn  | 2006-02-11 | male | right         | baseball | pitcher | college |
  | Jon Ives | 2012-05-11 | male | right         | baseball | pitcher | youth   |
  | Mei Lark | 2001-03-02 | female | left        | javelin  | thrower | college |

When the coach asks join_team
  | athlete      | Bo Tarn                            |
  | team         | Loft College                       |
  | organisation | United States baseball guideline   |
  | date         | 2026-01-01                         |
Then the answer
  | teams.0 | contains | Loft College, by the United States baseball guideline |
When the coach asks join_team
  | athlete      | Bo Tarn                  |
  | team         | Harbour Gulls            |
  | organisation | United States baseball guidline |
Then it is refused
  | sentence | contains | Did you mean "United States baseball guideline" |

# 80 pitches on Saturday at 20: 76 or more, so four days of rest, 31 May to 3 June. [UsaBaseballPitching]
When the coach asks record_throws
  | athlete | Bo Tarn    |
  | date    | 2026-05-30 |
  | setting | game       |
  | count   | 80         |
Then the answer
  | findings.0.severity | is | stops |
When the coach asks check_arm
  | athlete | Bo Tarn    |
  | date    | 2026-06-03 |
Then the answer
  | may_pitch    | is       | no |
  | next_day     | is       | 2026-06-04 |
  | short_answer | contains | 4 days of rest after 80 pitches on 2026-05-30 |
When the coach asks check_arm
  | athlete | Bo Tarn    |
  | date    | 2026-06-04 |
Then the answer
  | may_pitch | is | yes |
  | most      | is | 120 |

# A start on Wednesday comes too early, and the calendar says so at once.
When the coach asks record_day
  | kind     | start      |
  | date     | 2026-06-03 |
  | athletes | ["Bo Tarn"] |
Then the answer
  | kept    | is       | 1 |
  | words.1 | contains | Bo Tarn: Start on Wednesday 2026-06-03: none |
  | words.1 | contains | 2026-06-04 |
When the coach asks record_day
  | kind      | travel     |
  | date      | 2026-06-03 |
  | last_date | 2026-06-01 |
  | athletes  | ["Bo Tarn"] |
Then it is refused
  | field | is | last_date |

# A coach answers for the stop of an adult, on one day; the stop stays, with the name beside it.
When the coach asks answer_stop
  | athlete | Bo Tarn       |
  | code    | rest_not_over |
  | coach   | Halloran      |
  | reason  | final         |
Then it is refused
  | field | is | reason |
When the coach asks answer_stop
  | athlete | Bo Tarn       |
  | code    | rest_not_over |
  | coach   | Halloran      |
  | reason  | one inning of the final, agreed with him. |
Then the answer
  | findings.0.code     | is       | rest_not_over |
  | findings.0.answered | contains | Halloran |
# The table's word does not change by that.
When the coach asks check_arm
  | athlete | Bo Tarn |
Then the answer
  | may_pitch | is | no |

# 60 pitches at 14: above 50, not above 65, three days of rest; nobody answers for the rest of youth. [UsaBaseballPitching]
When the coach asks record_throws
  | athlete | Jon Ives   |
  | date    | 2026-05-31 |
  | setting | game       |
  | count   | 60         |
Then the answer
  | findings.0.severity | is | stops |
When the coach asks answer_stop
  | athlete | Jon Ives      |
  | code    | rest_not_over |
  | coach   | Halloran      |
  | reason  | one inning of the final, agreed with him. |
Then it is refused
  | sentence | contains | Nobody can answer for this stop |

# Everybody on Wednesday: those who may not, by when they may, then those of whom it cannot be told.
When the coach asks check_staff
  | date | 2026-06-03 |
Then the answer
  | lines.0.name      | is | Bo Tarn |
  | lines.0.may_pitch | is | no |
  | lines.0.next_day  | is | 2026-06-04 |
  | lines.1.name      | is | Jon Ives |
  | lines.2.name      | is | Mei Lark |
  | lines.2.may_pitch | is | cannot_tell |
