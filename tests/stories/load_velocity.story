Story: A maximum from bar speeds, with nothing lifted to failure; a half-hearted repetition is named

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | kg        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |
  | Bo Tarn   | 2010-05-11 | male   | right         | baseball | pitcher | youth   | 66         |                |
Given the records test_results
  | athlete   | date       | test             | trial | load_kg | reps | reps_in_reserve | speed_ms | device  |
  | Ona Reyes | 2026-05-04 | hex_bar_high_max | 1     | 60      | 3    | 5               | 0.95     | meter 1 |
  | Ona Reyes | 2026-05-04 | hex_bar_high_max | 2     | 90      | 3    | 5               | 0.74     | meter 1 |
  | Ona Reyes | 2026-05-04 | hex_bar_high_max | 3     | 120     | 2    | 4               | 0.52     | meter 1 |
  | Ona Reyes | 2026-05-04 | hex_bar_high_max | 4     | 140     | 1    | 2               | 0.38     | meter 1 |
Given the records test_results
  | athlete   | date       | test      | body_mass_kg |
  | Ona Reyes | 2026-05-04 | body_mass | 68           |

# Held readings that carry both. Least squares says 158.10 kg; with the errors of the loads it is the same within 0.1 kg.
When the coach asks load_velocity
  | athlete | Ona Reyes        |
  | test    | hex_bar_high_max |
Then the answer
  | date                            | is       | 2026-05-04        |
  | taken                           | is       | held, meter 1     |
  | one_rep_max.value               | between  | 158.0 and 158.2   |
  | one_rep_max.low                 | between  | 146.5 and 147.5   |
  | one_rep_max.high                | between  | 170 and 171.2     |
  | one_rep_max.unit                | is       | kg                |
  | added_load                      | is       | null              |
  | minimal_velocity.speed          | is       | 0.25              |
  | minimal_velocity.between_people | is       | 0.05              |
  | minimal_velocity.sources.0      | is       | Janicijevic2024   |
  | loads                           | has      | 4                 |
  | heaviest_percent                | between  | 88 and 89         |
  | words.2                         | contains | it proves nothing |
  | words.3                         | contains | Repetitions left are not read |
  | cautions                        | has      | 0                 |

# One of four given by hand was half-hearted.
When the coach asks load_velocity
  | athlete | Ona Reyes        |
  | test    | hex_bar_high_max |
  | loads   | [{"load_kg": 60, "speed_ms": 0.95}, {"load_kg": 90, "speed_ms": 0.48}, {"load_kg": 120, "speed_ms": 0.52}, {"load_kg": 140, "speed_ms": 0.38}] |
Then the answer
  | taken             | is       | given by hand              |
  | loads.1.used      | is       | false                      |
  | one_rep_max.value | between  | 157.5 and 158.8            |
  | cautions.0        | contains | 90 kg is out of line       |

# A pull-up moves the body too: 68 kg and up to 25 kg more, recomputed by hand: a line from 0.80 at 68 to 0.40 at 93 kg
# reaches 0.20 m/s at 105.5 kg, 37.5 kg added.
When the coach asks load_velocity
  | athlete | Ona Reyes   |
  | test    | pull_up_max |
  | loads   | [{"load_kg": 0, "speed_ms": 0.80}, {"load_kg": 12.5, "speed_ms": 0.60}, {"load_kg": 25, "speed_ms": 0.40}] |
Then the answer
  | one_rep_max.value | between  | 105.3 and 105.7   |
  | added_load.value  | between  | 37.3 and 37.7     |
  | load_means        | is       | body mass and added load |
  | words.1           | contains | from memory       |

# A youth whose years of strength training are not known.
When the coach asks load_velocity
  | athlete | Bo Tarn        |
  | test    | back_squat_max |
  | loads   | [{"load_kg": 30, "speed_ms": 0.90}, {"load_kg": 60, "speed_ms": 0.45}] |
Then the answer
  | one_rep_max.value | between  | 68 and 69.5 |
  | cautions.0        | contains | Two loads always lie on a line |
  | cautions.1        | contains | years of strength training are not known |

When the coach asks load_velocity
  | athlete | Ona Reyes |
  | test    | press_max |
Then it is refused
  | name | is | method_does_not_apply |

When the coach asks load_velocity
  | athlete | Ona Reyes        |
  | test    | hex_bar_high_max |
  | loads   | [{"load_kg": 60, "speed_ms": 0.95}, {"load_kg": 80, "speed_ms": 0.81}] |
Then it is refused
  | name     | is       | method_does_not_apply      |
  | sentence | contains | please add a heavier load  |
  | field    | is       | loads                      |

When the coach asks load_velocity
  | athlete | Bo Tarn        |
  | test    | back_squat_max |
Then it is refused
  | name     | is       | too_few_data          |
  | sentence | contains | Give loads with their speeds |
