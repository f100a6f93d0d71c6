Story: What can be prescribed, and any number by itself

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label        | item         | mass_lb | count |
  | Loft | straight bar | straight_bar | 45      | 1     |

When the coach asks catalogue
Then the answer
  | kits.0.kit | is       | loft              |
  | exercises  | contains | pull_up_neutral   |
  | tests      | contains | throwing_velocity |
  | cautions   | contains | local rules       |

# 100 kg for ten: 100 x (1 + 10 / 30) = 133.33 kg [Epley1985].
When the coach asks method
  | name   | one_rep_max |
  | inputs | {"equation": "epley", "load_kg": "100", "reps": "10"} |
Then the answer
  | outputs.one_rep_max.value | between | 133.3333 and 133.3334 |
  | outputs.one_rep_max.unit  | is      | kg                    |
When the coach asks method
  | name | one_rep_maks |
Then it is refused
  | sentence | contains | Did you mean "one_rep_max" |
When the coach asks method
  | name   | one_rep_max |
  | inputs | {"equation": "epley", "load_kg": "100", "reps": "0"} |
Then it is refused
  | field | is | reps |
