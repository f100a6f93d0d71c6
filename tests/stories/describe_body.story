Story: A body as a chain of links, each length with where it came from; a taped one stands before a scaled one

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | kg        | m/s        | cm          |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_cm |
  | Bo Tarn   | 2000-05-11 | male | right         | baseball | pitcher | college | 180        |
  | Pip Oster | 2012-03-02 | male | right         | baseball | pitcher | youth   | 150        |
Given the records test_results
  | athlete | date       | test      | trial | body_mass_kg |
  | Bo Tarn | 2026-05-04 | body_mass | 1     | 80           |

# 0.4222 m of a man of 1.741 m [DeLeva1996] is 43.65 cm of one of 1.80 m; 0.1416 of 80 kg is 11.328 kg.
When the coach asks describe_body
  | athlete | Bo Tarn |
Then the answer
  | body.mass_from  | is       | weighed 2026-05-04  |
  | parts           | has      | 8                   |
  | parts.2.name    | is       | thigh               |
  | parts.2.length  | between  | 43.65 and 43.66     |
  | parts.2.mass    | between  | 11.327 and 11.329   |
  | parts.2.taped   | is       | false               |
  | parts.2.from    | contains | DeLeva1996          |
  | mass_of_parts   | between  | 79.99 and 80.01     |
  | per_centimetre  | has      | 3                   |
  | tape_next.0     | contains | thigh               |

# Taped on a test day, it stands before the table.
When the coach asks record_test
  | athlete | Bo Tarn      |
  | date    | 2026-05-20   |
  | test    | thigh_length |
  | trials  | [{"height_cm": 45.5}, {"height_cm": 46.0}] |
When the coach asks describe_body
  | athlete | Bo Tarn |
Then the answer
  | parts.2.length | between  | 45.74 and 45.76          |
  | parts.2.from   | contains | taped 2026-05-20         |
  | parts.2.mass   | between  | 11.327 and 11.329        |
  | tape_next      | has      | 2                        |

# A child is told that the table is of adults; a mass is needed, and no leg is that long.
When the coach asks describe_body
  | athlete | Pip Oster |
Then it is refused
  | field | is | body_mass_kg |
When the coach asks describe_body
  | athlete      | Pip Oster |
  | body_mass_kg | 42        |
Then the answer
  | cautions.0 | contains | measured on adults |
When the coach asks describe_body
  | athlete      | Pip Oster |
  | body_mass_kg | 42        |
  | thigh_cm     | 70        |
Then it is refused
  | field | is | thigh_cm |
