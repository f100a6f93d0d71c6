Story: What the lead leg does at foot contact, from a force plate and a side film

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | kg        | m/s        | cm          |

# By hand, feet first: 785 N braking at the floor and 1,178 N up, 5 cm ahead of the ankle. A man of 80 kg and 1.80 m: shin
# 0.4552 m, ankle 0.0702 m high, shin leaning back 10 degrees, so the knee is 0.0790 m behind the ankle and 0.5185 m high.
# Knee = 785 x 0.5185 - 1,178 x (0.05 + 0.0790) = 255 N m, and the weights of foot and shin, 10.7 N at 0.130 m and 34.0 N at
# 0.034 m, help with 2.6: 258 N m.
When the coach asks measure_lead_leg
  | sex           | male |
  | stature_cm    | 180  |
  | body_mass_kg  | 80   |
  | force_x_bw    | -1   |
  | force_y_bw    | 1.5  |
  | pressure_cm   | 5    |
  | shin_lean_deg | -10  |
  | thigh_deg     | 55   |
Then the answer
  | joints                | has      | 3                    |
  | joints.1.joint        | is       | lead_knee            |
  | joints.1.angle        | is       | 45                   |
  | joints.1.moment.value | between  | 256 and 259          |
  | joints.1.words        | contains | straightens the knee |
  | force_x_body_weights  | is       | -1                   |
  | accelerations_used    | is       | false                |
  | cautions.0            | contains | held still           |
  | words.1               | contains | not as a goal        |
  | cannot_tell           | contains | sideways force       |

# Newtons say the same; a force that pushes forward is no lead leg's.
When the coach asks measure_lead_leg
  | sex           | male   |
  | stature_cm    | 180    |
  | body_mass_kg  | 80     |
  | force_x_n     | 200    |
  | force_y_n     | 1000   |
  | pressure_cm   | 5      |
  | shin_lean_deg | -10    |
  | thigh_deg     | 55     |
Then the answer
  | cautions.1 | contains | A lead leg brakes |

When the coach asks measure_lead_leg
  | sex           | male |
  | stature_cm    | 180  |
  | body_mass_kg  | 80   |
  | force_x_bw    | -4   |
  | force_y_bw    | 1.5  |
  | pressure_cm   | 5    |
  | shin_lean_deg | -10  |
  | thigh_deg     | 55   |
Then it is refused
  | field   | is | force_x_bw           |
  | allowed | is | -3 to 3 body weights |

# A part's acceleration is known whole or not at all, and of all parts or none.
When the coach asks measure_lead_leg
  | sex           | male |
  | stature_cm    | 180  |
  | body_mass_kg  | 80   |
  | force_x_bw    | -1   |
  | force_y_bw    | 1.5  |
  | pressure_cm   | 5    |
  | shin_lean_deg | -10  |
  | thigh_deg     | 55   |
  | shank_ax      | -20  |
Then it is refused
  | field | is | shank_ay |
