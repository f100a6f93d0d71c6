Story: Whose days count is changed by name, and a mistyped zone changes nothing

Given today is 2026-06-01
When the coach asks change_time_zone
  | time_zone | Asia/Tokyo |
Then it is refused
  | sentence | contains | no facility |

Given the records facility
  | name        | mass_unit | speed_unit |
  | Tannery Row | kg        | m/s        |
When the coach asks change_time_zone
  | time_zone | Europe/Atlantis |
Then it is refused
  | field | is       | time_zone       |
  | given | contains | Europe/Atlantis |

When the coach asks change_time_zone
  | time_zone | Asia/Tokyo |
Then the answer
  | time_zone | is       | Asia/Tokyo |
  | words     | contains | Days written down stay as they are |

# Without one, the computer's own holds again.
When the coach asks change_time_zone
  | time_zone |  |
Then the answer
  | words | contains | the computer's own |
