Story: A coach's word holds in the block, the rest stays where it can, and each word can be taken back

Given today is 2026-06-01
When the coach asks demo
  | seed | 1 |
When the coach asks plan_block
  | athlete | Marisol Quay |
  | start   | 2026-06-08   |
Then the answer
  | own_words | has | 0 |

# An exercise is left out everywhere, and the block says so.
When the coach asks adjust_block
  | block    | Marisol Quay          |
  | step     | leave_out             |
  | exercise | hex_bar_deadlift_high |
Then the answer
  | words           | contains | is left out            |
  | block.own_words | has      | 1                      |
  | block.own_words.0 | contains | 2026-06-01           |
  | block.sessions  | lacks    | hex_bar_deadlift_high  |
# The same word again changes nothing.
When the coach asks adjust_block
  | block    | Marisol Quay          |
  | step     | leave_out             |
  | exercise | hex_bar_deadlift_high |
Then the answer
  | words           | contains | holds already |
  | moved           | has      | 0             |
  | block.own_words | has      | 1             |
# A line is held in a session, with its sets.
When the coach asks adjust_block
  | block    | Marisol Quay |
  | step     | hold         |
  | exercise | side_plank   |
  | session  | 2            |
  | sets     | 3            |
Then the answer
  | block.own_words   | has      | 2               |
  | block.own_words.1 | contains | session 2 with 3 sets |
  | block.sessions.1  | contains | side_plank      |
  | block.sessions.1  | contains | held            |
# The kept block says the same.
When the coach asks block
  | block | Marisol Quay |
  | week  | 2            |
Then the answer
  | own_words  | has      | 2                     |
  | sessions.1 | contains | side_plank            |
  | sessions   | lacks    | hex_bar_deadlift_high |
# Two words are taken back, one after the other; then there is nothing left.
When the coach asks adjust_block
  | block | Marisol Quay |
  | step  | undo         |
Then the answer
  | words           | contains | Taken back |
  | block.own_words | has      | 1          |
When the coach asks adjust_block
  | block | Marisol Quay |
  | step  | undo         |
Then the answer
  | block.own_words | has      | 0                     |
  | block.sessions  | contains | hex_bar_deadlift_high |
When the coach asks adjust_block
  | block | Marisol Quay |
  | step  | undo         |
Then it is refused
  | field | is | step |

# Planned anew, the words end; taking that back brings block and words back.
When the coach asks adjust_block
  | block    | Marisol Quay          |
  | step     | leave_out             |
  | exercise | hex_bar_deadlift_high |
When the coach asks plan_block
  | athlete | Marisol Quay |
  | start   | 2026-06-08   |
Then the answer
  | own_words | has      | 0              |
  | notes     | contains | 1 change of yours ends |
When the coach asks adjust_block
  | block | Marisol Quay |
  | step  | undo         |
Then the answer
  | block.own_words | has   | 1                     |
  | block.sessions  | lacks | hex_bar_deadlift_high |

# What cannot be is refused, and the block stays.
When the coach asks adjust_block
  | block    | Marisol Quay |
  | step     | swap         |
  | exercise | no_such_lift |
  | with     | side_plank   |
Then it is refused
  | field | is | exercise |
When the coach asks adjust_block
  | block | Marisol Quay |
  | step  | nudge        |
Then it is refused
  | field | is | step |
When the coach asks adjust_block
  | block    | Marisol Quay          |
  | step     | swap                  |
  | exercise | hex_bar_deadlift_high |
  | with     | side_plank            |
Then it is refused
  | field | is | exercise |
