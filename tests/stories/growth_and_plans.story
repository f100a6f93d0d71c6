Story: A boy who shoots up is seen month by month, and everything planned is looked at once more

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | guardian       |
  | Bo Tarn   | 2012-05-11 | male   | right         | baseball | pitcher | youth   | the Tarn family |
  | Jon Ives  | 2011-02-01 | male   | right         | baseball | pitcher | youth   | the Ives family |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college |                |
Given the records test_results
  | athlete | date       | test    | height_in |
  | Bo Tarn | 2026-03-30 | stature | 63.0      |
  | Bo Tarn | 2026-06-01 | stature | 64.6      |

# Under 18 only; who has no height is measured first. By hand: 1.6 in. in 63 days of 30.4375 to a month: 0.77 in. a month.
When the coach asks growth
Then the answer
  | throwers                     | has      | 2               |
  | throwers.0.name              | is       | Jon Ives        |
  | throwers.1.name              | is       | Bo Tarn         |
  | throwers.1.guardian          | is       | the Tarn family |
  | throwers.1.rate.unit         | is       | inches a month  |
  | throwers.1.rate.value        | between  | 0.76 and 0.79   |
  | throwers.1.days_since_height | is       | 0               |
  | throwers.1.findings.0.code   | is       | growth_spurt    |
  | throwers.1.findings.0.what_to_do | contains | Fewer throws |
When the coach asks growth
  | athlete | Jon Ives |
Then the answer
  | throwers                   | has | 1              |
  | throwers.0.heights         | has | 0              |
  | throwers.0.findings.0.code | is  | measure_height |

# 60 pitches on Friday: above 50 and not above 65, three days of rest. [UsaBaseballPitching]
When the coach asks record_throws
  | athlete | Bo Tarn    |
  | date    | 2026-05-29 |
  | setting | game       |
  | count   | 60         |
Then the answer
  | findings.0.severity | is | stops |
When the coach asks check_plan
  | athlete | Bo Tarn |
Then the answer
  | checked                       | is       | 1             |
  | stops                         | is       | 1             |
  | plans.0.findings.0.severity   | is       | stops         |
  | plans.0.findings.0.code       | is       | rest_not_over |
  | plans.0.findings.0.rule       | contains | 3 days of rest after 60 pitches on 2026-05-29 |
  | plans.0.findings.0.source     | contains | UsaBaseballPitching |
  | plans.0.findings.0.may_answer | is       | nobody        |
  | plans.0.findings.1.code       | is       | growth_spurt  |
  | stop_and_refer.0              | contains | pain          |
# Of everybody only those with a finding are named.
When the coach asks check_plan
Then the answer
  | checked      | is  | 3       |
  | plans        | has | 2       |
  | plans.0.name | is  | Bo Tarn |
