Story: One thrower, no velocity, a column that never changes, a person entered twice, a wrong unit: a sentence each, no number

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name     | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_in |
  | Abe Rusk | 2004-02-01 | male | right         | baseball | pitcher | college | 74         |

# One thrower only.
When the coach asks explain_velocity
Then it is refused
  | name     | is       | too_few_data        |
  | sentence | contains | tested often enough |
  | allowed  | contains | 8 throwers          |

# Eight more; everybody jumps the same to the tenth of an inch, every time: nothing can go with that.
Given the records athletes
  | name       | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_in |
  | Bo Tarn    | 2004-05-11 | male | right         | baseball | pitcher | college | 74         |
  | Cy Weld    | 2003-07-21 | male | right         | baseball | pitcher | college | 74         |
  | Dov Lark   | 2004-01-30 | male | right         | baseball | pitcher | college | 74         |
  | Eli Marsh  | 2003-09-14 | male | right         | baseball | pitcher | college | 74         |
  | Fin Stroud | 2004-03-02 | male | right         | baseball | pitcher | college | 74         |
  | Gus Pell   | 2003-12-19 | male | right         | baseball | pitcher | college | 74         |
  | Hal Quill  | 2004-06-25 | male | right         | baseball | pitcher | college | 74         |
  | Ike Dorn   | 2004-07-25 | male | right         | baseball | pitcher | college | 74         |
Given the records test_results
  | athlete    | date       | test               | trial | height_in |
  | Abe Rusk   | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Abe Rusk   | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Bo Tarn    | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Bo Tarn    | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Cy Weld    | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Cy Weld    | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Dov Lark   | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Dov Lark   | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Eli Marsh  | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Eli Marsh  | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Fin Stroud | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Fin Stroud | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Gus Pell   | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Gus Pell   | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Hal Quill  | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Hal Quill  | 2026-04-06 | jump_height_flight | 1     | 20        |
  | Ike Dorn   | 2026-03-02 | jump_height_flight | 1     | 20        |
  | Ike Dorn   | 2026-04-06 | jump_height_flight | 1     | 20        |
When the coach asks explain_velocity
Then it is refused
  | name     | is       | too_few_data        |
  | sentence | contains | tested often enough |

# Now body masses that differ, and still no velocity at all.
Given the records test_results
  | athlete    | date       | test      | trial | body_mass_lb |
  | Abe Rusk   | 2026-03-02 | body_mass | 1     | 180          |
  | Abe Rusk   | 2026-04-06 | body_mass | 1     | 181          |
  | Bo Tarn    | 2026-03-02 | body_mass | 1     | 183          |
  | Bo Tarn    | 2026-04-06 | body_mass | 1     | 185          |
  | Cy Weld    | 2026-03-02 | body_mass | 1     | 187          |
  | Cy Weld    | 2026-04-06 | body_mass | 1     | 187          |
  | Dov Lark   | 2026-03-02 | body_mass | 1     | 189          |
  | Dov Lark   | 2026-04-06 | body_mass | 1     | 189          |
  | Eli Marsh  | 2026-03-02 | body_mass | 1     | 192          |
  | Eli Marsh  | 2026-04-06 | body_mass | 1     | 192          |
  | Fin Stroud | 2026-03-02 | body_mass | 1     | 196          |
  | Fin Stroud | 2026-04-06 | body_mass | 1     | 197          |
  | Gus Pell   | 2026-03-02 | body_mass | 1     | 199          |
  | Gus Pell   | 2026-04-06 | body_mass | 1     | 198          |
  | Hal Quill  | 2026-03-02 | body_mass | 1     | 201          |
  | Hal Quill  | 2026-04-06 | body_mass | 1     | 203          |
  | Ike Dorn   | 2026-03-02 | body_mass | 1     | 201          |
  | Ike Dorn   | 2026-04-06 | body_mass | 1     | 203          |
When the coach asks explain_velocity
Then it is refused
  | name     | is       | too_few_data             |
  | sentence | contains | have a velocity test     |
  | field    | is       | throwing_velocity        |
  | given    | contains | 0 throwers               |
When the coach asks fit_roster
Then it is refused
  | field    | is       | throwing_velocity        |

# Kilometres an hour typed as miles an hour are refused where they are typed; nothing is kept of them.
When the coach asks record_test
  | athlete        | Abe Rusk          |
  | date           | 2026-05-30        |
  | test           | throwing_velocity |
  | trials         | [{"speed_mph": 135}] |
Then it is refused
  | name    | is       | out_of_range |
  | field   | contains | speed        |
Given the records test_results
  | athlete    | date       | test              | trial | speed_mph | device  | place_measured |
  | Abe Rusk   | 2026-03-02 | throwing_velocity | 1     | 80.2      | radar 1 | out_of_hand    |
  | Abe Rusk   | 2026-04-06 | throwing_velocity | 1     | 80.1      | radar 1 | out_of_hand    |
  | Abe Rusk   | 2026-05-04 | throwing_velocity | 1     | 80.0      | radar 1 | out_of_hand    |
  | Bo Tarn    | 2026-03-02 | throwing_velocity | 1     | 84.4      | radar 1 | out_of_hand    |
  | Bo Tarn    | 2026-04-06 | throwing_velocity | 1     | 85.6      | radar 1 | out_of_hand    |
  | Bo Tarn    | 2026-05-04 | throwing_velocity | 1     | 83.7      | radar 1 | out_of_hand    |
  | Cy Weld    | 2026-03-02 | throwing_velocity | 1     | 81.5      | radar 1 | out_of_hand    |
  | Cy Weld    | 2026-04-06 | throwing_velocity | 1     | 80.0      | radar 1 | out_of_hand    |
  | Cy Weld    | 2026-05-04 | throwing_velocity | 1     | 80.0      | radar 1 | out_of_hand    |
  | Dov Lark   | 2026-03-02 | throwing_velocity | 1     | 82.5      | radar 1 | out_of_hand    |
  | Dov Lark   | 2026-04-06 | throwing_velocity | 1     | 84.7      | radar 1 | out_of_hand    |
  | Dov Lark   | 2026-05-04 | throwing_velocity | 1     | 84.3      | radar 1 | out_of_hand    |
  | Eli Marsh  | 2026-03-02 | throwing_velocity | 1     | 77.5      | radar 1 | out_of_hand    |
  | Eli Marsh  | 2026-04-06 | throwing_velocity | 1     | 78.7      | radar 1 | out_of_hand    |
  | Eli Marsh  | 2026-05-04 | throwing_velocity | 1     | 79.1      | radar 1 | out_of_hand    |
  | Fin Stroud | 2026-03-02 | throwing_velocity | 1     | 86.9      | radar 1 | out_of_hand    |
  | Fin Stroud | 2026-04-06 | throwing_velocity | 1     | 86.6      | radar 1 | out_of_hand    |
  | Fin Stroud | 2026-05-04 | throwing_velocity | 1     | 85.2      | radar 1 | out_of_hand    |
  | Gus Pell   | 2026-03-02 | throwing_velocity | 1     | 79.6      | radar 1 | out_of_hand    |
  | Gus Pell   | 2026-04-06 | throwing_velocity | 1     | 76.5      | radar 1 | out_of_hand    |
  | Gus Pell   | 2026-05-04 | throwing_velocity | 1     | 77.2      | radar 1 | out_of_hand    |
  | Hal Quill  | 2026-03-02 | throwing_velocity | 1     | 81.3      | radar 1 | out_of_hand    |
  | Hal Quill  | 2026-04-06 | throwing_velocity | 1     | 81.1      | radar 1 | out_of_hand    |
  | Hal Quill  | 2026-05-04 | throwing_velocity | 1     | 82.6      | radar 1 | out_of_hand    |

# Enough now for an answer; the jump that never varies stands aside with its reason, and what nobody was tested in too.
When the coach asks explain_velocity
Then the answer
  | qualities                | has      | 1          |
  | qualities.0.quality      | is       | body_mass  |
  | left_out                 | contains | same result |

# Ike Dorn is Hal Quill, entered a second time.
Given the records test_results
  | athlete    | date       | test              | trial | speed_mph | device  | place_measured |
  | Ike Dorn   | 2026-03-02 | throwing_velocity | 1     | 81.3      | radar 1 | out_of_hand    |
  | Ike Dorn   | 2026-04-06 | throwing_velocity | 1     | 81.1      | radar 1 | out_of_hand    |
  | Ike Dorn   | 2026-05-04 | throwing_velocity | 1     | 82.6      | radar 1 | out_of_hand    |
When the coach asks explain_velocity
Then it is refused
  | name     | is       | already_held            |
  | sentence | contains | Hal Quill and Ike Dorn  |
  | sentence | contains | one person was entered  |
