Story: A lift set up for this body: what hip and knee do, what would change it, and what stops it

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | kg        | m/s        | cm          |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name    | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_cm | restrictions  |
  | Bo Tarn | 2000-05-11 | male | right         | baseball | pitcher | college | 180        | sore_shoulder |
Given the records test_results
  | athlete | date       | test                 | side | trial | body_mass_kg | angle_deg | rater    | device         |
  | Bo Tarn | 2026-05-04 | body_mass            |      | 1     | 80           |           |          |                |
  | Bo Tarn | 2026-05-04 | ankle_dorsiflexion   | left | 1     |              | 29        | Halloran | inclinometer 1 |
  | Bo Tarn | 2026-05-04 | ankle_dorsiflexion   | left | 2     |              | 31        | Halloran | inclinometer 1 |
  | Bo Tarn | 2026-05-04 | lead_knee_at_contact | left | 1     |              | 74        | Halloran | camera 1       |

# The prototype's pose: share 0.156, stance 80, pad 40, thigh level, trunk 20 degrees, 60 kg on the back of a man of 80 kg and
# 1.80 m: shin 33.4 degrees, knee 223, hip 243 N m.
When the coach asks solve_setup
  | sex            | male                         |
  | stature_cm     | 180                          |
  | body_mass_kg   | 80                           |
  | lift           | rear_foot_raised_split_squat |
  | hold           | straight_bar                 |
  | load_kg        | 60                           |
  | stance_cm      | 80                           |
  | pad_cm         | 40                           |
  | thigh_deg      | 90                           |
  | trunk_lean_deg | 20                           |
  | rear_share     | 0.156                        |
Then the answer
  | joints.1.joint        | is       | lead_knee                    |
  | joints.1.moment.value | between  | 222.9 and 223.1              |
  | joints.2.moment.value | between  | 243.3 and 243.6              |
  | joints.1.moment.low   | between  | 150 and 170                  |
  | hip_share.value       | between  | 52.1 and 52.3                |
  | share_words           | contains | no bound                     |
  | causes.0.cause        | is       | rear_share                   |
  | card.1                | contains | Front heel 68 cm from the pad's edge, pad 40 cm high |
  | card.2                | is       | Down to a level front thigh  |
  | drawing.pad_x         | between  | -0.751 and -0.749            |
  | cannot_tell           | contains | never compared               |
  | search                | is       | null                         |

# Searched: the stance for a hip share of 1.25 / 2.25; the prototype found 92.1 cm.
When the coach asks solve_setup
  | sex            | male                         |
  | stature_cm     | 180                          |
  | body_mass_kg   | 80                           |
  | lift           | rear_foot_raised_split_squat |
  | hold           | straight_bar                 |
  | load_kg        | 60                           |
  | pad_cm         | 40                           |
  | thigh_deg      | 90                           |
  | trunk_lean_deg | 20                           |
  | rear_share     | 0.156                        |
  | want           | hip_share                    |
  | wanted         | 55.5556                      |
  | vary           | stance                       |
Then the answer
  | search.reached   | is       | true              |
  | settings.1.key   | is       | stance            |
  | settings.1.how   | is       | found             |
  | settings.1.value | between  | 91.9 and 92.3     |

# Not to be had: the nearest, and what stops it.
When the coach asks solve_setup
  | sex            | male                         |
  | stature_cm     | 180                          |
  | body_mass_kg   | 80                           |
  | lift           | rear_foot_raised_split_squat |
  | load_kg        | 60                           |
  | want           | hip_share                    |
  | wanted         | 20                           |
  | vary           | stance                       |
Then the answer
  | search.reached    | is       | false             |
  | search.stopped_by | contains | floor             |
  | search.words      | contains | cannot be reached |

# The landing leg's own angle is not known here, so a published mean stands in, and says so.
When the coach asks solve_setup
  | sex           | male             |
  | stature_cm    | 180              |
  | body_mass_kg  | 80               |
  | lift          | hex_bar_deadlift |
  | load_kg       | 140              |
  | want          | start_angle      |
  | vary          | handle_height    |
Then the answer
  | search.wanted      | is       | 46.8          |
  | search.wanted_from | contains | Kageyama2015  |

# His own landing knee, tested, stands before the published mean; his own ankle, 30 degrees, stops a search and warns of a
# plain set-up that leans further (33.4 degrees, above); his sore shoulder is spoken of.
When the coach asks solve_setup
  | athlete | Bo Tarn          |
  | lift    | hex_bar_deadlift |
  | load_kg | 140              |
  | want    | start_angle      |
  | vary    | handle_height    |
Then the answer
  | search.wanted      | is       | 74                     |
  | search.wanted_from | is       | own test of 2026-05-04 |
  | search.reached     | is       | true                   |
When the coach asks solve_setup
  | athlete        | Bo Tarn                      |
  | lift           | rear_foot_raised_split_squat |
  | hold           | straight_bar                 |
  | load_kg        | 60                           |
  | stance_cm      | 80                           |
  | pad_cm         | 40                           |
  | thigh_deg      | 90                           |
  | trunk_lean_deg | 20                           |
Then the answer
  | cautions.0 | contains | sore shoulder                 |
  | cautions.1 | contains | this ankle did in its own test |
When the coach asks solve_setup
  | athlete   | Bo Tarn                      |
  | lift      | rear_foot_raised_split_squat |
  | hold      | straight_bar                 |
  | load_kg   | 60                           |
  | stance_cm | 80                           |
  | pad_cm    | 40                           |
  | want      | shin_angle                   |
  | wanted    | 35                           |
  | vary      | trunk_lean                   |
Then the answer
  | search.reached    | is       | false                          |
  | search.value      | between  | 29.9 and 30.1                  |
  | search.stopped_by | contains | this ankle did in its own test |

# One setting too many, one the lift does not have, a number no gym has, and a posture no body has.
When the coach asks solve_setup
  | sex            | male       |
  | stature_cm     | 180        |
  | body_mass_kg   | 80         |
  | lift           | back_squat |
  | load_kg        | 60         |
  | trunk_lean_deg | 20         |
  | shin_lean_deg  | 20         |
Then it is refused
  | code  | is | 702           |
  | field | is | shin_lean_deg |
When the coach asks solve_setup
  | sex          | male             |
  | stature_cm   | 180              |
  | body_mass_kg | 80               |
  | lift         | hex_bar_deadlift |
  | load_kg      | 60               |
  | stance_cm    | 80               |
Then it is refused
  | code  | is | 301       |
  | field | is | stance_cm |
When the coach asks solve_setup
  | sex          | male       |
  | stature_cm   | 180        |
  | body_mass_kg | 80         |
  | lift         | back_squat |
  | load_kg      | 600        |
Then it is refused
  | field | is | load_kg |
When the coach asks solve_setup
  | sex          | male                         |
  | stature_cm   | 180                          |
  | body_mass_kg | 80                           |
  | lift         | rear_foot_raised_split_squat |
  | load_kg      | 60                           |
  | stance_cm    | 190                          |
Then it is refused
  | code     | is       | 701            |
  | field    | is       | stance_cm      |
  | sentence | contains | does not reach |

# A step-up takes no height of the back knee: the back foot has just left the floor.
When the coach asks solve_setup
  | sex          | male    |
  | stature_cm   | 180     |
  | body_mass_kg | 80      |
  | lift         | step_up |
  | load_kg      | 40      |
  | box_cm       | 36      |
  | clearance_cm | 30      |
Then it is refused
  | code  | is | 301          |
  | field | is | clearance_cm |
When the coach asks solve_setup
  | sex          | male    |
  | stature_cm   | 180     |
  | body_mass_kg | 80      |
  | lift         | step_up |
  | load_kg      | 40      |
  | box_cm       | 36      |
Then the answer
  | drawing.floor_y    | between | -0.361 and -0.359 |
  | drawing.box_height | between | 0.359 and 0.361   |

# A pull-up says its elbow and why not its grip: 213.7 N m of both arms with 20 kg on the belt, 106.85 of each.
When the coach asks solve_setup
  | sex          | male    |
  | stature_cm   | 180     |
  | body_mass_kg | 80      |
  | lift         | pull_up |
  | hold         | belt    |
  | load_kg      | 20      |
  | elbow_deg    | 90      |
Then the answer
  | joints.0.moment.value | between  | 106.8 and 106.9            |
  | hip_share             | is       | null                       |
  | words.0               | contains | Grips cannot be told apart |
