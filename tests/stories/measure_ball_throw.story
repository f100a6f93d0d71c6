Story: What an overhead throw takes, from a side film

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | kg        | m/s        | cm          |

# Held still with level arms, ball behind the head: the levers of the weights. A man of 80 kg and 1.80 m: upper arms 4.336 kg
# at 0.168 m, forearms 2.592 kg at 0.418 m, hands 0.976 kg at 0.640 m and a ball of 2 kg at 0.658 m from the shoulder make
# 9.80665 x 3.752 = 36.8 N m.
When the coach asks measure_ball_throw
  | sex           | male     |
  | stature_cm    | 180      |
  | body_mass_kg  | 80       |
  | stance        | kneeling |
  | ball_kg       | 2        |
  | thigh_deg     | 90       |
  | trunk_deg     | 90       |
  | upper_arm_deg | 180      |
  | forearm_deg   | 180      |
Then the answer
  | joints          | has      | 4              |
  | joints.1.joint  | is       | shoulder       |
  | joints.1.moment | between  | 36.6 and 37.0  |
  | ball_speed      | is       | 0              |
  | cautions.0      | contains | held still     |
  | cannot_tell     | contains | sideways       |

# Straight arms up, turning forward at 500 degrees a second: 0.658 m x 8.727 rad/s = 5.7 m/s.
When the coach asks measure_ball_throw
  | sex            | male     |
  | stature_cm     | 180      |
  | body_mass_kg   | 80       |
  | stance         | kneeling |
  | ball_kg        | 2        |
  | thigh_deg      | 90       |
  | trunk_deg      | 90       |
  | upper_arm_deg  | 90       |
  | forearm_deg    | 90       |
  | upper_arm_rate | -500     |
  | forearm_rate   | -500     |
Then the answer
  | ball_speed     | between  | 5.70 and 5.78    |
  | speed_unit     | is       | m/s              |
  | joints.1.words | contains | not certain      |
  | words.1        | contains | 15 % of each     |
  | cautions.0     | contains | counted as zero: thigh rate, trunk rate, thigh acceleration |

When the coach asks measure_ball_throw
  | sex           | male     |
  | stature_cm    | 180      |
  | body_mass_kg  | 80       |
  | stance        | standing |
  | ball_kg       | 2        |
  | thigh_deg     | 90       |
  | trunk_deg     | 90       |
  | upper_arm_deg | 90       |
  | forearm_deg   | 90       |
Then it is refused
  | field | is | shank_deg |

# Speed is the point: 5 kg is 11 lb (common practice, no source).
When the coach asks measure_ball_throw
  | sex           | male     |
  | stature_cm    | 180      |
  | body_mass_kg  | 80       |
  | stance        | kneeling |
  | ball_kg       | 5        |
  | thigh_deg     | 90       |
  | trunk_deg     | 90       |
  | upper_arm_deg | 90       |
  | forearm_deg   | 90       |
Then the answer
  | cautions.0 | contains | above 8 lb |

# Arms held at 135 degrees: the shoulders' moment by levers, and 3 degrees of each link's error by the sine: upper arms carry
# 4.336 kg at 0.168 and 5.568 kg at 0.291 m, forearms with hands and ball 3.752 - 2.349 = 1.404 kg m: 9.80665 x
# hypot(2.349, 1.404) x 0.7071 x 0.05234 = 0.993 N m, and 1.2816 of it each way from 9.80665 x 3.752 x 0.7071 = 26.0 N m.
When the coach asks measure_ball_throw
  | sex           | male     |
  | stature_cm    | 180      |
  | body_mass_kg  | 80       |
  | stance        | kneeling |
  | ball_kg       | 2        |
  | thigh_deg     | 90       |
  | trunk_deg     | 90       |
  | upper_arm_deg | 135      |
  | forearm_deg   | 135      |
Then the answer
  | joints.1.moment | between | 25.9 and 26.1 |
  | joints.1.low    | between | 24.6 and 24.9 |
  | joints.1.high   | between | 27.2 and 27.4 |
