Story: What goes with velocity in the hall, within throwers and between them; and what an empty gym is told

Given today is 2026-06-01
When the coach asks explain_velocity
Then it is refused
  | name     | is       | too_few_data      |
  | sentence | contains | tested often enough |
When the coach asks demo
  | seed | 1 |
When the coach asks explain_velocity
Then the answer
  | athletes          | is       | 36               |
  | qualities         | has      | 13               |
  | words.0           | contains | apart            |
  | words.1           | contains | mixes the two    |
  | cautions.0        | contains | is not causes    |
  | model             | contains | curvature positive |
# What was put into the hall (engine/demo_facility/simulation.h): within a thrower, side-on and overhead throws go with velocity by
# 0.45, single-leg strength by 0.40, all else by 0.30 or less. The two throws stand first and are said to go with it; of the
# rest it cannot tell, single-leg strength among them; the correlations of all pairs, 0.6 to 0.8 nearly everywhere, could not have told.
  | qualities.0.quality         | is      | rotational_ball_speed |
  | qualities.1.quality         | is      | overhead_ball_speed   |
  | qualities.0.within_verdict  | is      | goes_with             |
  | qualities.1.within_verdict  | is      | goes_with             |
  | qualities.2.within_verdict  | is      | cannot_tell           |
  | qualities.3.within_verdict  | is      | cannot_tell           |
  | qualities.12.within_verdict | is      | cannot_tell           |
  | qualities.3.correlation     | between | 0.6 and 0.85          |
