Story: A practice written down in one go, a pain that stops throwing until a named clinician has cleared it, and nothing deleted

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name     | birth_date | sex    | throwing_hand | sport    | role    | level   | guardian   |
  | Bo Tarn  | 2012-05-11 | male   | right         | baseball | pitcher | youth   | Ruth Tarn  |
  | Jon Ives | 2012-05-11 | male   | right         | baseball | pitcher | youth   |            |
  | Mei Lark | 2001-03-02 | female | left          | javelin  | thrower | college |            |

# One count for all, 25 for one, and one who did not throw: that day is zero for him, not unknown.
When the coach asks record_practice
  | date    | 2026-05-30  |
  | setting | flat_ground |
  | count   | 40          |
  | lines   | [{"athlete": "Bo Tarn"}, {"athlete": "Mei Lark", "count": 25}, {"athlete": "Jon Ives", "count": 0}] |
Then the answer
  | kept          | is       | 3         |
  | lines.0.words | contains | 40 throws |
  | lines.1.words | contains | 25 throws |
  | lines.2.words | contains | No throws |
# The same practice once more changes nothing.
When the coach asks record_practice
  | date    | 2026-05-30  |
  | setting | flat_ground |
  | count   | 40          |
  | lines   | [{"athlete": "Bo Tarn"}, {"athlete": "Mei Lark", "count": 25}, {"athlete": "Jon Ives", "count": 0}] |
Then the answer
  | kept        | is | 0 |
  | held_before | is | 3 |
# A wrong line is named, and the right ones beside it are not kept either.
When the coach asks record_practice
  | setting | bullpen |
  | count   | 30      |
  | lines   | [{"athlete": "Bo Tarn"}, {"athlete": "Jon Ives", "count": 500}] |
Then it is refused
  | field | is | lines[1].count |
When the coach asks check_arm
  | athlete | Bo Tarn |
  | days    | 7       |
Then the answer
  | ledger.0.known  | is | thrown  |
  | ledger.0.throws | is | 40      |
  | ledger.2.known  | is | unknown |

# The signs of the very day come first, for everybody the same.
When the coach asks stop_and_refer
Then the answer
  | signs.0.today | is       | true |
  | closing       | contains | does not diagnose, clear or predict injury |
When the coach asks record_pain
  | athlete  | Bo Tarn                              |
  | region   | elbow                                |
  | sign     | growing_elbow_or_shoulder            |
  | words    | inside of the elbow, since Saturday  |
  | noted_by | Kim Osei                             |
Then the answer
  | pain.open | is       | true |
  | words.0   | contains | cannot be changed or deleted |
  | words.3   | contains | Ruth Tarn |
When the coach asks check_arm
  | athlete | Bo Tarn |
Then the answer
  | may_pitch | is | no |
When the coach asks record_pain
  | athlete  | Bo Tarn  |
  | region   | elbow    |
  | words    |          |
  | noted_by | Kim Osei |
Then it is refused
  | field | is | words |

# Nobody clears their own pain, and no child enters it.
When the coach asks record_clearance
  | athlete     | Bo Tarn  |
  | number      | 1        |
  | cleared_by  | Bo Tarn  |
  | recorded_by | Kim Osei |
Then it is refused
  | field | is | cleared_by |
When the coach asks record_clearance
  | athlete     | Bo Tarn                            |
  | number      | 1                                  |
  | cleared_by  | Dr. Ada Fenwick, sports physician  |
  | recorded_by | Bo Tarn                            |
Then it is refused
  | field | is | recorded_by |
When the coach asks record_clearance
  | athlete     | Bo Tarn                            |
  | number      | 1                                  |
  | cleared_by  | Dr. Ada Fenwick, sports physician  |
  | recorded_by | Kim Osei                           |
  | words       | 30 throws at most for two weeks    |
Then the answer
  | pain.open      | is       | false |
  | pain.clearance | contains | by Dr. Ada Fenwick, sports physician, entered by Kim Osei |
# The entry stays, with its clearance.
When the coach asks stop_and_refer
  | athlete | Bo Tarn |
Then the answer
  | guardian          | is       | Ruth Tarn                           |
  | pains.0.words     | contains | inside of the elbow, since Saturday |
  | pains.0.clearance | contains | 30 throws at most for two weeks     |
When the coach asks record_clearance
  | athlete     | Bo Tarn          |
  | number      | 1                |
  | cleared_by  | Dr. Ada Fenwick  |
  | recorded_by | Kim Osei         |
Then it is refused
  | allowed | contains | none is open |
