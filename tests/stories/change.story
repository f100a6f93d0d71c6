Story: A difference inside the noise is not called a change; a large one is; a youth's growth is taken out

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         |
  | Bo Tarn   | 2012-05-11 | male   | right         | baseball | pitcher | youth   | 62         |
  | Cy Weld   | 2002-07-21 | male   | left          | baseball | pitcher | amateur | 74         |
  | Dov Lark  | 2003-01-30 | male   | right         | baseball | fielder | amateur | 72         |
Given the records test_results
  | athlete   | date       | test              | trial | speed_mph | device  | place_measured |
  | Ona Reyes | 2026-03-02 | throwing_velocity | 1     | 60.0      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-03-02 | throwing_velocity | 2     | 60.6      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | throwing_velocity | 1     | 60.9      | radar 1 | out_of_hand    |
  | Ona Reyes | 2026-05-04 | throwing_velocity | 2     | 60.7      | radar 1 | out_of_hand    |
  | Bo Tarn   | 2025-06-02 | throwing_velocity | 1     | 55.0      | radar 1 | out_of_hand    |
  | Bo Tarn   | 2026-05-04 | throwing_velocity | 1     | 56.4      | radar 1 | out_of_hand    |
Given the records test_results
  | athlete  | date       | test              | trial | height_in |
  | Dov Lark | 2025-06-02 | jump_height_plate | 1     | 14        |
  | Dov Lark | 2025-06-02 | jump_height_plate | 2     | 14        |
  | Dov Lark | 2025-09-08 | jump_height_plate | 1     | 15        |
  | Dov Lark | 2025-09-08 | jump_height_plate | 2     | 15        |
  | Dov Lark | 2025-12-08 | jump_height_plate | 1     | 17        |
  | Dov Lark | 2025-12-08 | jump_height_plate | 2     | 17        |
  | Dov Lark | 2026-03-09 | jump_height_plate | 1     | 18        |
  | Dov Lark | 2026-03-09 | jump_height_plate | 2     | 18        |
  | Dov Lark | 2026-05-18 | jump_height_plate | 1     | 20        |
  | Dov Lark | 2026-05-18 | jump_height_plate | 2     | 20        |

# Half a mile an hour: the mean of two throws is not that exact.
When the coach asks judge_change
  | athlete | Ona Reyes         |
  | test    | throwing_velocity |
Then the answer
  | verdict  | is       | cannot_tell     |
  | measured | between  | 0.4 and 0.6     |
  | words.0  | contains | Cannot tell yet |
  | growth   | is       | null            |

# Six inches higher over a year, each test day above the last: far beyond noise.
When the coach asks judge_change
  | athlete | Dov Lark          |
  | test    | jump_height_plate |
Then the answer
  | verdict       | is      | gained    |
  | likely.low    | between | 1 and 6   |
  | measured      | between | 5.9 and 6.1 |
  | chance_gained | between | 0.9 and 1 |

# 1.4 mph in eleven months, at 13: that is what growing older alone usually brings, 1.5 mph a year.
When the coach asks judge_change
  | athlete | Bo Tarn           |
  | test    | throwing_velocity |
Then the answer
  | verdict      | is       | cannot_tell  |
  | growth.value | between  | 1.3 and 1.5  |
  | likely.value | between  | -0.4 and 0.4 |
  | words.1      | contains | Growth alone |

When the coach asks judge_change
  | athlete | Cy Weld           |
  | test    | throwing_velocity |
Then it is refused
  | name | is | too_few_data |

When the coach asks roster
Then the answer
  | throwers                 | has      | 4                         |
  | throwers.2.name          | is       | Dov Lark                  |
  | throwers.2.next_step     | contains | Measure throwing velocity |
  | throwers.3.velocity.unit | is       | mph                       |

# Three gains in a row of 20 lb in a gym of a few: said as a gain, and not shrunk to noise.
Given the records test_results
  | athlete  | date       | test            | load_lb | reps |
  | Dov Lark | 2026-01-12 | hex_bar_low_max | 185     | 5    |
  | Dov Lark | 2026-02-16 | hex_bar_low_max | 205     | 5    |
  | Dov Lark | 2026-03-30 | hex_bar_low_max | 225     | 5    |
  | Dov Lark | 2026-05-04 | hex_bar_low_max | 245     | 5    |
When the coach asks judge_change
  | athlete | Dov Lark        |
  | test    | hex_bar_low_max |
Then the answer
  | measured     | between | 69.9 and 70.1 |
  | likely.value | between | 30 and 75     |
  | verdict      | is      | gained        |
