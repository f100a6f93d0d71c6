Story: The same for the lead leg, held otherwise, in loads this gym can make

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | lb        | mph        | in          |
Given the records kit
  | kit  | label            | item         | count | mass_lb |
  | Loft | bar              | straight_bar | 1     | 45      |
  | Loft | safety bar       | safety_bar   | 1     | 65      |
  | Loft | 45 lb plate      | plate        | 6     | 45      |
  | Loft | 10 lb plate      | plate        | 4     | 10      |
  | Loft | 100 lb dumbbell  | dumbbell     | 2     | 100     |
  | Loft | 60 lb dumbbell   | dumbbell     | 2     | 60      |
Given the records athletes
  | name    | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_in | kit  |
  | Bo Tarn | 2000-05-11 | male | right         | baseball | pitcher | college | 71         | Loft |

# At one depth hip and knee together rest on the force under the foot: the same load, another split.
When the coach asks solve_equivalent
  | athlete      | Bo Tarn                      |
  | body_mass_lb | 180                          |
  | lift         | rear_foot_raised_split_squat |
  | load_lb      | 135                          |
Then the answer
  | demand_of                 | is       | leg                    |
  | equivalents               | has      | 5                      |
  | equivalents.0.hold        | is       | safety_bar             |
  | equivalents.0.load.value  | between  | 134.9 and 135.1        |
  | equivalents.3.hold        | is       | dumbbells              |
  | equivalents.3.makeable    | is       | 120                    |
  | equivalents.3.limit       | is       | grip                   |
  | equivalents.3.words       | contains | Grip may end           |
  | words.1                   | contains | the same load however  |
  | kit                       | is       | Loft                   |

# Twice the load: a pair of hundreds is only 200 lb.
When the coach asks solve_equivalent
  | athlete      | Bo Tarn                      |
  | body_mass_lb | 180                          |
  | lift         | rear_foot_raised_split_squat |
  | load_lb      | 275                          |
  | to_holds     | ["dumbbells"]                |
Then the answer
  | equivalents                | has      | 1               |
  | equivalents.0.load.value   | between  | 274.9 and 275.1 |
  | equivalents.0.makeable     | is       | 200             |
  | equivalents.0.words        | contains | Grip gives out first |
  | equivalents.0.words        | contains | 73 % of it      |

# To keep the knee's work with the dumbbells hanging takes more.
When the coach asks solve_equivalent
  | athlete      | Bo Tarn                      |
  | body_mass_lb | 180                          |
  | lift         | rear_foot_raised_split_squat |
  | load_lb      | 135                          |
  | to_holds     | ["dumbbells", "goblet"]      |
  | demand       | knee                         |
Then the answer
  | equivalents.0.load.value | between  | 170 and 230    |
  | equivalents.1.load       | is       | null           |
  | equivalents.1.why_not    | contains | 500 kg         |

When the coach asks solve_equivalent
  | athlete      | Bo Tarn |
  | body_mass_lb | 180     |
  | lift         | pull_up |
Then it is refused
  | code | is | 301 |
When the coach asks solve_equivalent
  | athlete      | Bo Tarn                      |
  | body_mass_lb | 180                          |
  | lift         | rear_foot_raised_split_squat |
  | load_lb      | 135                          |
  | demand       | back                         |
Then it is refused
  | field | is | demand |
