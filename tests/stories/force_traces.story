Story: A jump on the force plates is looked at, kept, corrected by hand with a reason, and moves the thrower's record

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit | length_unit |
  | Harbour Loft | lb        | mph        | cm          |
Given the records kit
  | kit  | label | item       | mass_lb | count |
  | Loft | floor | open_floor |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |
Given the file docs/guide/files/countermovement_jump.txt
Given the file docs/guide/files/restless_jump.csv
Given the file docs/guide/files/jump.c3d

# The jump was made with a take-off speed of 2.62 m/s: 2.62 x 2.62 / (2 x 9.80665) m = 35.0 cm; weight 78 kg x 9.80665.
When the coach asks measure_trace
  | file_name | docs/guide/files/countermovement_jump.txt |
  | effort    | countermovement_jump |
Then the answer
  | trace.body_weight_n     | between | 764.4 and 765.4 |
  | trace.metrics.0.metric  | is      | jump_height_impulse |
  | trace.metrics.0.value   | between | 34.6 and 35.4 |
  | trace.metrics.0.unit    | is      | cm |
  | trace.plates.0.side     | is      | left |
  | trace.plates.0.samples  | is      | |
  | trace.file_notes.0      | contains | 500 Hz from the time column |

# The same forces as a C3D file.
When the coach asks measure_trace
  | file_name | docs/guide/files/jump.c3d |
  | effort    | countermovement_jump |
Then the answer
  | trace.metrics.0.value | between | 34.6 and 35.4 |

# A trace that cannot be trusted is shown, and not measured.
When the coach asks measure_trace
  | file_name | docs/guide/files/restless_jump.csv |
  | effort    | countermovement_jump |
Then the answer
  | trace.refusal.code | is  | 602 |
  | refusal.name       | is  | quiet_too_noisy |
  | trace.metrics      | has | 0 |
When the coach asks record_trace
  | file_name | docs/guide/files/restless_jump.csv |
  | effort    | countermovement_jump |
  | athlete   | Ona Reyes |
  | date      | 2026-06-01 |
Then it is refused
  | code | is | 602 |
When the coach asks traces
  | athlete | Ona Reyes |
Then the answer
  | groups | has | 0 |

When the coach asks record_trace
  | file_name | docs/guide/files/countermovement_jump.txt |
  | key       | first-jump |
  | effort    | countermovement_jump |
  | athlete   | Ona Reyes |
  | date      | 2026-06-01 |
  | device    | plates 1 and 2 |
Then the answer
  | saved | is | true |
  | trial | is | 1 |
When the coach asks record_trace
  | file_name | docs/guide/files/countermovement_jump.txt |
  | key       | first-jump |
  | effort    | countermovement_jump |
  | athlete   | Ona Reyes |
  | date      | 2026-06-01 |
Then the answer
  | saved       | is | false |
  | held_before | is | true |
When the coach asks record_trace
  | file_name | docs/guide/files/jump.c3d |
  | key       | first-jump |
  | effort    | countermovement_jump |
  | athlete   | Ona Reyes |
  | date      | 2026-06-01 |
Then it is refused
  | code | is | 202 |
When the coach asks record_trace
  | file_name | docs/guide/files/jump.c3d |
  | effort    | countermovement_jump |
  | athlete   | Ona Reyes |
  | date      | 2026-06-01 |
  | device    | plates 1 and 2 |
Then the answer
  | saved | is | true |
  | trial | is | 2 |

# Height and power are now tests of the thrower: 35 cm, whoever asks.
When the coach asks athlete_record
  | athlete | Ona Reyes |
Then the answer
  | trajectories | has | 2 |
When the coach asks traces
  | athlete | Ona Reyes |
Then the answer
  | groups                    | has | 1 |
  | groups.0.trials           | has | 2 |
  | groups.0.spreads.0.metric | is  | jump_height_impulse |
  | groups.0.spreads.0.disagree | is | false |
  | efforts                   | has | 6 |

# An event is moved with a reason; the automatic time stays beside it.
When the coach asks move_event
  | trace  | first-jump |
  | event  | take_off |
  | time_s | 2.40 |
  | reason | short |
Then it is refused
  | field | is | reason |
When the coach asks move_event
  | trace  | first-jump |
  | event  | applause |
  | time_s | 2.40 |
  | reason | it looks earlier on the screen |
Then it is refused
  | field | is | event |
When the coach asks move_event
  | trace  | first-jump |
  | event  | take_off |
  | time_s | 99 |
  | reason | it looks earlier on the screen |
Then it is refused
  | code | is | 104 |
When the coach asks move_event
  | trace  | first-jump |
  | event  | take_off |
  | time_s | 2.40 |
  | reason | it looks earlier on the screen |
Then the answer
  | moves.0.reason | is | it looks earlier on the screen |
  | moves.0.moved_on | is | 2026-06-01 |
When the coach asks trace
  | trace   | first-jump |
  | samples | yes |
Then the answer
  | name                      | is       | Ona Reyes |
  | moves                     | has      | 1 |
  | measured.plates.0.samples | contains | AA |
When the coach asks move_event
  | trace  | first-jump |
  | event  | take_off |
  | reason | it was right after all |
Then the answer
  | moves                     | has     | 2 |
  | measured.metrics.0.value  | between | 34.6 and 35.4 |
When the coach asks trace
  | trace | first-jumb |
Then it is refused
  | sentence | contains | Did you mean "first-jump"? |

# Everything kept goes out as files, the traces when they are asked for.
When the coach asks export_records
  | traces | yes |
Then the answer
  | files          | has      | 20 |
  | files.17.name  | is       | force_traces.csv |
  | files.17.text  | contains | it was right after all |
  | files.19.text  | contains | left vertical [N] |

When the coach asks guess_trace_names
  | names | ["June/2026-06-01 Ona Reyes cmj 2.txt", "noname.txt"] |
Then the answer
  | guesses.0.athlete | is | ona-reyes |
  | guesses.0.effort  | is | countermovement_jump |
  | guesses.0.date    | is | 2026-06-01 |
  | guesses.0.trial   | is | 2 |
  | guesses.0.sure    | is | true |
  | guesses.1.athlete | is | |
  | guesses.1.words   | contains | No one thrower's name |

When the coach asks inspect_c3d
  | file_name | docs/guide/files/jump.c3d |
Then the answer
  | processor     | is  | Intel |
  | frames        | is  | 2500 |
  | plates        | has | 2 |
  | plates.0.type | is  | 2 |
  | channels      | has | 12 |
When the coach asks inspect_c3d
  | file_name | docs/guide/files/countermovement_jump.txt |
Then it is refused
  | code | is | 107 |
# A file is read from the disk only when a person at the command line has named it.
When the coach asks inspect_c3d
  | file_name | /etc/hostname |
Then it is refused
  | field | is | content |
