Story: A file is taken whole or not at all, and never twice

Given today is 2026-06-01
Given the records facility
  | name        | mass_unit | speed_unit |
  | Tannery Row | kg        | m/s        |
Given the records kit
  | kit  | label | item       | count |
  | Yard | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college |
  | Bo Tarn   | 2012-05-11 | male   | right         | baseball | pitcher | youth   |

# One name is mistyped: the line is named, the nearest name offered, and not even the good line is taken.
When the coach brings the records throws
  | athlete   | date       | setting | count |
  | Ona Reyes | 2026-05-30 | game    | 62    |
  | Ona Reyez | 2026-05-28 | bullpen | 30    |
Then the answer
  | taken                    | is       | false        |
  | lines.0.verdict          | is       | new          |
  | lines.1.refusal.field    | is       | line 3, athlete |
  | lines.1.refusal.sentence | contains | Did you mean "Ona Reyes" |

# Mended, it is looked at first: both lines are still new, so nothing had been taken.
When the coach looks at the records throws
  | athlete   | date       | setting | count |
  | Ona Reyes | 2026-05-30 | game    | 62    |
  | Ona Reyes | 2026-05-28 | bullpen | 30    |
Then the answer
  | taken       | is | false |
  | new_records | is | 2     |
When the coach brings the records throws
  | athlete   | date       | setting | count |
  | Ona Reyes | 2026-05-30 | game    | 62    |
  | Ona Reyes | 2026-05-28 | bullpen | 30    |
Then the answer
  | taken       | is | true |
  | new_records | is | 2    |

# The same file a second time adds nothing; the columns may stand in another order.
When the coach brings the records throws
  | date       | athlete   | count | setting |
  | 2026-05-30 | Ona Reyes | 62    | game    |
  | 2026-05-28 | Ona Reyes | 30    | bullpen |
Then the answer
  | new_records  | is | 0 |
  | already_held | is | 2 |

# Another number under the same day and setting is not taken silently, neither from a file nor typed.
When the coach brings the records throws
  | athlete   | date       | setting | count |
  | Ona Reyes | 2026-05-30 | game    | 70    |
Then the answer
  | taken                | is | false        |
  | lines.0.refusal.name | is | already_held |
When the coach asks record_throws
  | athlete | Ona Reyes  |
  | date    | 2026-05-30 |
  | setting | game       |
  | count   | 70         |
Then it is refused
  | name | is | already_held |

# Units stand in the column's name; without one, or with two, a number is refused.
When the coach brings the records test_results
  | athlete   | date       | test      | body_mass |
  | Ona Reyes | 2026-05-30 | body_mass | 68        |
Then it is refused
  | sentence | contains | body_mass |
When the coach brings the records test_results
  | athlete   | date       | test      | body_mass_kg | body_mass_lb |
  | Ona Reyes | 2026-05-30 | body_mass | 68           | 150          |
Then the answer
  | lines.0.refusal.name | is | two_units |

When the coach asks import_records
  | kind | thrws |
  | text | x     |
Then it is refused
  | sentence | contains | Did you mean "throws" |

# All that is held goes out again, as seventeen files.
When the coach asks export_records
Then the answer
  | files        | has      | 17        |
  | files.0.kind | is       | facility  |
  | files.4.kind | is       | throws    |
  | files.4.text | contains | 2026-05-30 |
  | files.4.text | lacks    | Ona Reyez |
