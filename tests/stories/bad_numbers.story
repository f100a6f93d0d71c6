Story: Numbers that cannot be are refused in words, and nothing of them is kept

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college |

# 900 lb in a split squat was meant to be 90.
When the coach asks record_test
  | athlete | Ona Reyes       |
  | date    | 2026-05-30      |
  | test    | split_squat_max |
  | side    | left            |
  | trials  | [{"load_lb": 900, "reps": 3}] |
Then it is refused
  | name     | is       | out_of_range |
  | sentence | contains | split squat  |
When the coach asks record_test
  | athlete | Ona Reyes         |
  | date    | 2026-05-30        |
  | test    | throwing_velocity |
  | trials  | [{"speed_mph": 140}] |
Then it is refused
  | name  | is       | out_of_range |
  | field | contains | speed        |
When the coach asks record_test
  | athlete | Ona Reyes       |
  | date    | 2026-05-30      |
  | test    | split_squat_max |
  | side    | left            |
  | trials  | [{"load_lb": 95, "reps": 0}] |
Then it is refused
  | field | contains | reps |

# A test from the future, a thrower from the future.
When the coach asks record_test
  | athlete | Ona Reyes  |
  | date    | 2026-07-30 |
  | test    | body_mass  |
  | trials  | [{"body_mass_lb": 150}] |
Then it is refused
  | name | is | impossible_date |
When the coach brings the records athletes
  | name     | birth_date | sex    | throwing_hand | sport    | role    | level |
  | Nia Vane | 2027-03-01 | female | left          | softball | pitcher | youth |
Then the answer
  | taken                    | is       | false |
  | lines.0.refusal.sentence | contains | The birth date 2027-03-01 is in the future |

# A field that the request does not have is not passed over in silence.
When the coach asks record_test
  | athlete | Ona Reyes  |
  | date    | 2026-05-30 |
  | test    | body_mass  |
  | trials  | [{"body_mass_pounds": 150}] |
Then it is refused
  | name | is | unknown_field |

When the coach asks athlete_record
  | athlete | Ona Reyes |
Then the answer
  | trajectories | has | 0 |
When the coach asks roster
Then the answer
  | throwers | has | 1 |
