Story: An angle is compared with its like only, and a deficit inside the error is measured again, not flagged

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | kg        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college |
  | Bo Tarn   | 2002-05-11 | male   | left          | baseball | pitcher | amateur |
Given the records test_results
  | athlete   | date       | test                       | side  | trial | angle_deg | device | rater |
  | Ona Reyes | 2026-05-04 | shoulder_external_rotation | right | 1     | 110       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-04 | shoulder_external_rotation | right | 2     | 112       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-04 | shoulder_external_rotation | left  | 1     | 105       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-04 | shoulder_external_rotation | left  | 2     | 105       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-04 | shoulder_internal_rotation | right | 1     | 48        | tool 1 | Ines  |
  | Ona Reyes | 2026-05-04 | shoulder_internal_rotation | right | 2     | 50        | tool 1 | Ines  |
  | Ona Reyes | 2026-05-04 | shoulder_internal_rotation | left  | 1     | 62        | tool 1 | Ines  |
  | Ona Reyes | 2026-05-04 | shoulder_internal_rotation | left  | 2     | 62        | tool 1 | Ines  |
  | Bo Tarn   | 2026-05-04 | hip_internal_rotation      | right | 1     | 30        | tool 1 | Ines  |
  | Bo Tarn   | 2026-05-04 | hip_internal_rotation      | right | 2     | 36        | tool 1 | Ines  |
  | Bo Tarn   | 2026-05-04 | hip_internal_rotation      | left  | 1     | 34        | tool 1 | Joss  |

# 160 against 167: 7 degrees less, with a standard error of 4.35. Seen once: again.
When the coach asks joint_ranges
  | athlete | Ona Reyes |
Then the answer
  | days                             | has      | 1                         |
  | days.0.angles                    | has      | 4                         |
  | days.0.angles.0.side             | is       | throwing side, right      |
  | days.0.angles.0.mean.value       | is       | 111                       |
  | days.0.angles.0.one_more         | is       | false                     |
  | days.0.totals.0.total.value      | is       | 160                       |
  | days.0.totals.1.total.value      | is       | 167                       |
  | days.0.differences.2.what        | is       | Total rotation, shoulder  |
  | days.0.differences.2.difference.value | is  | -7                        |
  | days.0.differences.2.difference.low   | between | -12.58 and -12.56     |
  | days.0.differences.2.finding     | is       | measure_again             |
  | days.0.differences.2.words       | contains | lies inside the error     |
  | protocols.0.protocol             | contains | upper arm out at shoulder height |
  | words.1                          | contains | does not diagnose         |
  | stop_and_refer.0                 | contains | Sharp or sudden pain      |

# Found again on another day: shown to a clinician, and still no word of injury.
Given the records test_results
  | athlete   | date       | test                       | side  | trial | angle_deg | device | rater |
  | Ona Reyes | 2026-05-18 | shoulder_external_rotation | right | 1     | 111       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-18 | shoulder_external_rotation | right | 2     | 111       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-18 | shoulder_external_rotation | left  | 1     | 105       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-18 | shoulder_external_rotation | left  | 2     | 105       | tool 1 | Ines  |
  | Ona Reyes | 2026-05-18 | shoulder_internal_rotation | right | 1     | 50        | tool 1 | Ines  |
  | Ona Reyes | 2026-05-18 | shoulder_internal_rotation | right | 2     | 50        | tool 1 | Ines  |
  | Ona Reyes | 2026-05-18 | shoulder_internal_rotation | left  | 1     | 62        | tool 1 | Ines  |
  | Ona Reyes | 2026-05-18 | shoulder_internal_rotation | left  | 2     | 62        | tool 1 | Ines  |
When the coach asks joint_ranges
  | athlete | Ona Reyes  |
  | date    | 2026-05-18 |
Then the answer
  | days                              | has      | 1                             |
  | days.0.differences.2.days_found   | is       | 2                             |
  | days.0.differences.2.finding      | is       | show_clinician                |
  | days.0.differences.2.words        | contains | worth showing to a clinician. It is no sign of injury by itself |

# Six degrees apart: a third reading. Two raters: no comparison.
When the coach asks joint_ranges
  | athlete | Bo Tarn |
Then the answer
  | days.0.angles.0.side     | is       | lead leg, right    |
  | days.0.angles.0.one_more | is       | true               |
  | days.0.angles.0.words    | contains | take one more      |
  | days.0.differences       | has      | 0                  |
  | days.0.missing.0         | contains | two raters         |

When the coach asks joint_ranges
  | athlete | Bo Tarn    |
  | date    | 2026-05-05 |
Then it is refused
  | name    | is | unknown_name |
  | field   | is | date         |
  | allowed | is | 2026-05-04   |
