Story: In a hall whose errors are known, because it was invented, they are found again

# Made with 1.0 mph between throws, 0.8 mph between days, 3.4 % and 0.8 % between days; its throwers gain and grow.
Given today is 2026-06-01
Given the demo facility
When the coach asks estimate_error
  | test | throwing_velocity |
Then the answer
  | tests.0.unit                 | is      | mph           |
  | tests.0.trial.own.value      | between | 0.95 and 1.05 |
  | tests.0.trial.repeats_needed | is      | 0             |
  | tests.0.day.pooled.low       | between | 0.6 and 0.81  |
  | tests.0.day.pooled.high      | between | 0.81 and 1.1  |

When the coach asks estimate_error
  | test | hex_bar_high_max |
Then the answer
  | tests.0.day.pooled.low  | between | 2.3 and 3.4 |
  | tests.0.day.pooled.high | between | 3.4 and 4.5 |

When the coach asks estimate_error
  | test | body_mass |
Then the answer
  | tests.0.day.pooled.low  | between | 0.5 and 0.8 |
  | tests.0.day.pooled.high | between | 0.8 and 1.1 |

When the coach asks estimate_error
Then the answer
  | words.0 | contains | published error |
