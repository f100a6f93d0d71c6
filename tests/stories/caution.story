Story: A sore elbow keeps overhead ball throws out of a block until a coach says why they may stand

Given today is 2026-06-01
Given the records facility
  | name        | mass_unit | speed_unit |
  | Tannery Row | lb        | mph        |
Given the records kit
  | kit  | label        | item         | mass_lb | count |
  | Barn | straight bar | straight_bar | 45      | 1     |
  | Barn | 45 lb plate  | plate        | 45      | 4     |
  | Barn | 10 lb plate  | plate        | 10      | 2     |
  | Barn | rack         | rack         |         | 1     |
  | Barn | pull-up bar  | pull_up_bar  |         | 1     |
  | Barn | 4 lb ball    | ball         | 4       | 2     |
  | Barn | brick wall   | wall_bay     |         | 1     |
  | Barn | floor        | open_floor   |         | 1     |
  | Barn | red band     | band         |         | 2     |
# Twins but for one elbow.
Given the records athletes
  | name     | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_in | restrictions          |
  | Cy Weld  | 2002-07-21 | male | left          | baseball | pitcher | amateur | 74         | medial_elbow_symptoms |
  | Ray Weld | 2002-07-21 | male | left          | baseball | pitcher | amateur | 74         |                       |

When the coach asks athlete_record
  | athlete | Cy Weld |
Then the answer
  | cautions.0.restriction | is       | medial_elbow_symptoms    |
  | cautions.0.sentence    | contains | local rules come first   |

When the coach asks plan_block
  | athlete | Ray Weld   |
  | start   | 2026-06-08 |
Then the answer
  | sessions | contains | overhead_throw |
When the coach asks plan_block
  | athlete | Cy Weld    |
  | start   | 2026-06-08 |
Then the answer
  | sessions | lacks    | overhead_throw                       |
  | sessions | contains | rotational                           |
  | notes    | contains | Left out for sore inside of the elbow |

# "Fine" is not a reason, and spaces add no letters.
When the coach asks override_caution
  | athlete  | Cy Weld                 |
  | exercise | kneeling_overhead_throw |
  | caution  | medial_elbow_symptoms   |
  | reason   | fine                    |
  | coach    | Halloran                |
Then it is refused
  | name | is | caution_needs_reason |
When the coach asks override_caution
  | athlete  | Cy Weld                 |
  | exercise | kneeling_overhead_throw |
  | caution  | medial_elbow_symptoms   |
  | reason   | it    is    ok          |
  | coach    | Halloran                |
Then it is refused
  | name | is | caution_needs_reason |
When the coach asks override_caution
  | athlete  | Cy Weld                 |
  | exercise | kneeling_overhead_throw |
  | caution  | medial_elbow_symptoms   |
  | reason   | seen by his clinician on 20 May, light balls only |
  | coach    | Halloran                |
Then the answer
  | words | contains | It is kept |

# Now it may stand, and the sheet says in whose name and why.
When the coach asks plan_block
  | athlete | Cy Weld    |
  | start   | 2026-07-13 |
Then the answer
  | sessions            | contains | kneeling_overhead_throw |
  | findings.0.sentence | contains | Halloran kept a reason  |
  | findings.0.sentence | contains | light balls only        |
  | stop_and_refer.0    | contains | pain                    |
