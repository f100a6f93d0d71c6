Story: What is believed before the records, changed here for a reason, and taken back; nothing is overwritten

Given today is 2026-06-01
# An empty gym: what was published, and why these records say nothing.
When the coach asks priors
Then the answer
  | version                      | is       | priors 1.0               |
  | edits                        | is       | 0                        |
  | slopes                       | has      | 13                       |
  | attainable_changes           | has      | 12                       |
  | no_posterior                 | contains | tested often enough      |
  | words.1                      | contains | published                |
  | slopes.2.quality             | is       | jump_power               |
  | slopes.2.whose               | is       | The literature's word    |
  | slopes.2.published_sources.0 | is       | Sakurai2024              |
  | slopes.2.words               | contains | nobody was tested in it  |
# data/velocity_priors.csv: mean 0.40, sd 0.20 of velocity's spread, 2 m/s; 0.35 spreads in twelve weeks. By hand:
# 0.40 x 2 x 0.35 = 0.28 m/s = 0.626 mph; sd doubled 0.28 m/s; 80 %: 1.2816 of them to either side, -0.18 to 1.43 mph.
  | slopes.2.prior.unit  | is      | mph             |
  | slopes.2.prior.value | between | 0.625 and 0.628 |
  | slopes.2.prior.low   | between | -0.18 and -0.17 |
  | slopes.2.prior.high  | between | 1.42 and 1.44   |

# What cannot be believed is refused, and why is asked for.
When the coach asks change_prior
  | quality | jump_power                   |
  | kind    | slope                        |
  | mean    | 1.5                          |
  | sd      | 0.2                          |
  | author  | Halloran                     |
  | reason  | ours jump more than they throw |
Then it is refused
  | name  | is       | out_of_range |
  | field | is       | mean         |
  | allowed | contains | 1          |
When the coach asks change_prior
  | quality | jump_power                   |
  | kind    | slope                        |
  | mean    | 0.1                          |
  | sd      | 0                            |
  | author  | Halloran                     |
  | reason  | ours jump more than they throw |
Then it is refused
  | field | is | sd |
When the coach asks change_prior
  | quality | jump_powre                   |
  | kind    | slope                        |
  | mean    | 0.1                          |
  | sd      | 0.2                          |
  | author  | Halloran                     |
  | reason  | ours jump more than they throw |
Then it is refused
  | name     | is       | unknown_name |
  | sentence | contains | jump_power   |
When the coach asks change_prior
  | quality | jump_power |
  | kind    | slope      |
  | mean    | 0.1        |
  | sd      | 0.2        |
  | author  | Halloran   |
  | reason  | because    |
Then it is refused
  | field | is | reason |
When the coach asks change_prior
  | quality | jump_power                   |
  | kind    | slope                        |
  | mean    | 0.1                          |
  | sd      | 0.2                          |
  | author  |                              |
  | reason  | ours jump more than they throw |
Then it is refused
  | field | is | author |
When the coach asks change_prior
  | quality   | jump_power                       |
  | kind      | slope                            |
  | published | yes                              |
  | author    | Halloran                         |
  | reason    | there is nothing to go back from |
Then it is refused
  | name | is | already_held |

When the coach asks change_prior
  | quality | jump_power                   |
  | kind    | slope                        |
  | mean    | 0.1                          |
  | sd      | 0.2                          |
  | author  | Halloran                     |
  | reason  | ours jump more than they throw |
Then the answer
  | version     | is       | priors 1.1 |
  | edit.number | is       | 1          |
  | edit.date   | is       | 2026-06-01 |
  | words       | contains | Kept       |
When the coach asks priors
Then the answer
  | version                 | is       | priors 1.1      |
  | slopes.2.edited         | is       | true            |
  | slopes.2.mean           | is       | 0.1             |
  | slopes.2.published_mean | is       | 0.4             |
  | slopes.2.whose          | is       | Halloran's word |
  | slopes.2.edits.0.reason | contains | ours jump       |
# 0.1 x 2 x 0.35 = 0.07 m/s = 0.157 mph
  | slopes.2.prior.value    | between  | 0.155 and 0.158 |

# Going back is an edit of its own; the first one stays.
When the coach asks change_prior
  | quality   | jump_power                           |
  | kind      | slope                                |
  | published | yes                                  |
  | author    | Quarrie                              |
  | reason    | one season of ours is not a study    |
Then the answer
  | version | is | priors 1.2 |
When the coach asks priors
Then the answer
  | slopes.2.edited            | is  | false                  |
  | slopes.2.mean              | is  | 0.4                    |
  | slopes.2.whose             | is  | The literature's word  |
  | slopes.2.edits             | has | 2                      |
  | slopes.2.edits.0.author    | is  | Halloran               |
  | slopes.2.edits.1.author    | is  | Quarrie                |
  | slopes.2.edits.1.published | is  | true                   |
