Story: A 14-year-old's pitches are held against the published table, and the rest is said in days

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name     | birth_date | sex  | throwing_hand | sport    | role    | level |
  | Bo Tarn  | 2012-05-11 | male | right         | baseball | pitcher | youth |
  | Jon Ives | 2012-05-11 | male | right         | baseball | pitcher | youth |

# 60 pitches on Friday: above 50 and not above 65, so three days of rest [UsaBaseballPitching].
When the coach asks record_throws
  | athlete | Bo Tarn    |
  | date    | 2026-05-29 |
  | setting | game       |
  | count   | 60         |
Then the answer
  | findings.0.severity   | is       | stops |
  | findings.0.rule       | contains | 3 days of rest after 60 pitches on 2026-05-29 (above 50, not above 65 at 13 to 14 years): 2026-05-30 to 2026-06-01 |
  | findings.0.what_to_do | contains | No pitching in games before 2026-06-02   |
  | stop_and_refer.0      | contains | pain  |
# The morning's list says so before anything else.
When the coach asks roster
Then the answer
  | throwers.0.name      | is       | Bo Tarn |
  | throwers.0.next_step | contains | No pitching in games before 2026-06-02 |
# He pitched on Sunday all the same.
When the coach asks record_throws
  | athlete | Bo Tarn    |
  | date    | 2026-05-31 |
  | setting | game       |
  | count   | 20         |
Then the answer
  | findings.0.severity | is       | warns |
  | findings.0.sentence | contains | came too soon after 60 pitches on 2026-05-29 |

When the coach asks record_throws
  | athlete | Jon Ives   |
  | date    | 2026-05-31 |
  | setting | game       |
  | count   | 97         |
Then the answer
  | findings.0.severity | is       | warns                   |
  | findings.0.sentence | contains | above the daily maximum |

When the coach asks record_throws
  | athlete | Jon Ives   |
  | date    | 2026-05-30 |
  | setting | gane       |
  | count   | 20         |
Then it is refused
  | sentence | contains | Did you mean "game" |
When the coach asks record_throws
  | athlete       | Jon Ives   |
  | date          | 2026-05-30 |
  | setting       | bullpen    |
  | count         | 20         |
  | soreness_after | 11        |
Then it is refused
  | field | is | soreness_after |
