Story: Back to throwing in absolute throws; a clinician's plan is only kept, gates throwing, and stands alone

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name     | birth_date | sex  | throwing_hand | sport    | role    | level   |
  | Bo Tarn  | 2004-05-11 | male | right         | baseball | pitcher | college |

# By hand: 15 % of 120 are 18 throws more each week: 18, 36, 54, 72, 90, 108, and 120. (proposal of this project, no source)
When the coach asks plan_ramp
  | athlete     | Bo Tarn |
  | target_week | 120     |
Then the answer
  | kept            | is  | false      |
  | number          | is  | 0          |
  | weeks           | has | 7          |
  | weeks.0.throws  | is  | 18         |
  | weeks.1.throws  | is  | 36         |
  | weeks.5.throws  | is  | 108        |
  | weeks.6.throws  | is  | 120        |
  | steps.0.throws  | is  | 6          |
  | steps.0.date    | is  | 2026-06-02 |
  | in_force        | has | 0          |
  | stop_and_refer.0 | contains | pain  |
# Steps of one's own are taken as they stand, and what rises too far is said.
When the coach asks plan_ramp
  | athlete     | Bo Tarn |
  | target_week | 120     |
  | steps       | [{"throws": 6}, {"throws": 40, "distance_ft": 60, "words": "flat ground"}] |
  | recorded_by | Kim Osei |
Then the answer
  | kept               | is       | true          |
  | notes.0            | contains | Step 2: 40 throws, 34 more than the step before |
  | in_force.0.origin  | is       | ramp          |
  | in_force.0.author  | is       | Kim Osei      |
  | in_force.0.step    | is       | 1             |
  | in_force.0.steps   | is       | 2             |
When the coach asks plan_ramp
  | athlete      | Bo Tarn |
  | target_week  | 120     |
  | rise_percent | 40      |
Then it is refused
  | name | is | out_of_range |

# A clinician's plan: as it was written, by whom, entered by whom.
When the coach asks record_return_plan
  | athlete     | Bo Tarn |
  | clinician   |         |
  | steps       | [{"throws": 25}] |
  | recorded_by | Kim Osei |
Then it is refused
  | field | is | clinician |
When the coach asks record_return_plan
  | athlete     | Bo Tarn |
  | clinician   | Ada Fenwick, physiotherapist |
  | steps       | [{"throws": 25}] |
  | recorded_by |          |
Then it is refused
  | field | is | recorded_by |
When the coach asks record_return_plan
  | athlete      | Bo Tarn |
  | clinician    | Ada Fenwick, physiotherapist |
  | days_between | 1       |
  | steps        | [{"throws": 25, "distance_ft": 30, "words": "easy toss"}, {"throws": 50, "distance_ft": 45}] |
  | recorded_by  | Kim Osei |
Then the answer
  | words.0              | contains | as Ada Fenwick, physiotherapist wrote it, entered by Kim Osei: 2 steps |
  | words.0              | contains | the tool changes nothing in it |
  | in_force.0.origin    | is       | clinician |
  | in_force.0.step      | is       | 1         |
  | in_force.0.gate_open | is       | true      |
# It gates games, and no ramp is planned beside it.
When the coach asks check_arm
  | athlete | Bo Tarn |
Then the answer
  | may_pitch    | is       | no                          |
  | short_answer | contains | the plan of Ada Fenwick     |
When the coach asks plan_ramp
  | athlete     | Bo Tarn |
  | target_week | 120     |
Then it is refused
  | name     | is       | blocked_by_guard_rail        |
  | sentence | contains | A clinician's plan is in force |
# Only the clinician's word ends it.
When the coach asks record_return_plan
  | athlete     | Bo Tarn |
  | clinician   | Ada Fenwick, physiotherapist |
  | recorded_by | Kim Osei |
Then the answer
  | words.0 | contains | ends by the word of Ada Fenwick |
When the coach asks plan_ramp
  | athlete     | Bo Tarn |
  | target_week | 120     |
Then the answer
  | weeks | has | 7 |

# A ramp ends by a name alone: no target is asked for.
When the coach asks plan_ramp
  | athlete     | Bo Tarn |
  | recorded_by | Kim Osei |
Then it is refused
  | field | is | target_week |
When the coach asks plan_ramp
  | athlete     | Bo Tarn |
  | end         | yes |
  | recorded_by | Kim Osei |
Then the answer
  | kept     | is       | true                   |
  | steps    | has      | 0                      |
  | in_force | has      | 0                      |
  | words.1  | contains | The ramp in force ends |
