Story: Three balls of one throw and day make a line; two do not, and then it says what to throw next

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | restrictions |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         |              |
  | Cy Weld   | 2002-07-21 | male   | left          | baseball | pitcher | amateur | 74         | sore_shoulder |
# Speeds that fall with the root of the mass: 24, 24 / sqrt(1.5) = 19.6, 24 / sqrt(2) = 17.0.
Given the records test_results
  | athlete   | date       | test                        | trial | speed_mph | device  | place_measured |
  | Ona Reyes | 2026-04-06 | kneeling_overhead_throw_4lb | 1     | 23.8      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-04-06 | kneeling_overhead_throw_4lb | 2     | 24.2      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-04-06 | kneeling_overhead_throw_6lb | 1     | 19.4      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-04-06 | kneeling_overhead_throw_6lb | 2     | 19.8      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_4lb | 1     | 23.6      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_4lb | 2     | 24.4      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_4lb | 3     | 24.0      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_6lb | 1     | 19.4      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_6lb | 2     | 19.8      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_6lb | 3     | 19.6      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_8lb | 1     | 17.0      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_8lb | 2     | 17.2      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | kneeling_overhead_throw_8lb | 3     | 16.8      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-11 | kneeling_overhead_throw_4lb | 1     | 25.6      | radar 2 | out_of_hand    |
  | Ona Reyes | 2026-05-11 | kneeling_overhead_throw_4lb | 2     | 25.4      | radar 2 | out_of_hand    |
  | Ona Reyes | 2026-05-11 | kneeling_overhead_throw_6lb | 1     | 19.4      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-11 | kneeling_overhead_throw_6lb | 2     | 19.8      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-11 | kneeling_overhead_throw_8lb | 1     | 17.0      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-11 | kneeling_overhead_throw_8lb | 2     | 17.2      | radar 1 | out_of_hand    |
# The same three balls by distance, from 1 m up: light ones are slowed more.
Given the records test_results
  | athlete | date       | test                        | trial | distance_m | release_height_m | release_angle_deg |
  | Cy Weld | 2026-05-04 | kneeling_overhead_throw_4lb | 1     | 11.0       | 1.2              | 40                |
  | Cy Weld | 2026-05-04 | kneeling_overhead_throw_4lb | 2     | 11.2       | 1.2              | 40                |
  | Cy Weld | 2026-05-04 | kneeling_overhead_throw_5lb | 1     | 9.9        | 1.2              | 40                |
  | Cy Weld | 2026-05-04 | kneeling_overhead_throw_5lb | 2     | 10.1       | 1.2              | 40                |
  | Cy Weld | 2026-05-04 | kneeling_overhead_throw_6lb | 1     | 9.1        | 1.2              | 40                |
  | Cy Weld | 2026-05-04 | kneeling_overhead_throw_6lb | 2     | 9.3        | 1.2              | 40                |

# The last day with three balls taken alike is May 4: on May 11 two radars read, and they are not compared.
When the coach asks ball_mass_line
  | athlete | Ona Reyes |
Then the answer
  | date                     | is       | 2026-05-04                |
  | family                   | is       | kneeling_overhead_throw   |
  | family_name              | is       | Overhead throw from both knees |
  | reference_mass           | between  | 5.65 and 5.66             |
  | slope.value              | between  | -0.51 and -0.49           |
  | slope.low                | between  | -0.56 and -0.53           |
  | level.value              | between  | 20.1 and 20.2             |
  | level.unit               | is       | mph                       |
  | goes_with                | is       | strength                  |
  | balls                    | has      | 3                         |
  | balls.2.mass             | is       | 8                         |
  | balls.2.throws           | is       | 3                         |
  | balls.2.of_lightest      | between  | 0.70 and 0.71             |
  | balls.2.in_working_range | is       | false                     |
  | balls.2.above_advised    | is       | false                     |
  | balls.1.energy.value     | between  | 104 and 105               |
  | days                     | has      | 3                         |
  | days.0.slope             | is       | null                      |
  | days.0.why_not           | contains | a ball of 8 lb            |
  | days.2.slope             | is       | null                      |
  | words.1                  | contains | of twice the mass is 29 % slower |
  | words.2                  | contains | a proposal of this project |
  | words.4                  | contains | common practice, no source |
  | cautions                 | has      | 0                         |

When the coach asks ball_mass_line
  | athlete | Ona Reyes  |
  | date    | 2026-04-06 |
Then it is refused
  | name     | is       | too_few_data           |
  | sentence | contains | Throw these next       |
  | sentence | contains | a ball of 8 lb         |
  | sentence | contains | 2 with 4 lb, 2 with 6 lb |

When the coach asks ball_mass_line
  | athlete | Ona Reyes     |
  | family  | rotational_throw |
Then it is refused
  | name  | is | unknown_name |
  | field | is | family       |

# By distance: -0.26 without drag by hand; corrected for drag, steeper, and said; his restriction speaks against this throw.
When the coach asks ball_mass_line
  | athlete | Cy Weld |
Then the answer
  | taken      | contains | from distance and angle         |
  | cautions.0 | contains | without it the slope would read |
  | cautions.1 | contains | Caution                         |
  | slope.value | between | -0.30 and -0.26 |
  | goes_with  | is       | limb_speed                      |
  | throw_next.0 | contains | five throws each              |
  | throw_next.1 | contains | 8 lb                          |
