Story: How often the intervals were right is counted on results held back; an empty gym is told why nothing can be counted

Given today is 2026-06-01
When the coach asks check_calibration
Then it is refused
  | name | is | too_few_data |
When the coach asks demo
  | seed | 1 |
When the coach asks check_calibration
  | ranks | -1 |
Then it is refused
  | field | is | ranks |
  | given | contains | -1 |
When the coach asks check_calibration
  | ranks | 201 |
Then it is refused
  | field | is | ranks |

# The hall's records are simulated close to what the model takes to be so (engine/demo_facility/simulation.h): 80 % intervals should
# hold about eight in ten. They hold 76 in a hundred, and it says that this is too few. 36 throwers, 14 tests, one last result each where there are two days or more: at most 504.
When the coach asks check_calibration
Then the answer
  | athletes          | is       | 36              |
  | results           | between  | 400 and 600     |
  | verdict           | is       | too_sure        |
  | coverage          | has      | 3               |
  | coverage.0.stated | is       | 0.5             |
  | coverage.1.stated | is       | 0.8             |
  | coverage.1.held   | between  | 350 and 410     |
  | coverage.1.low    | between  | 0.7 and 0.8     |
  | coverage.1.high   | between  | 0.77 and 0.8    |
  | transform         | has      | 10              |
  | tests             | has      | 14              |
  | tests.0.test      | is       | throwing_velocity |
  | better.low        | between  | 0 and 100       |
  | ranks             | is       | null            |
  | words.0           | contains | held back       |
  | words.1           | contains | too narrow here |
  | cautions.0        | contains | go together     |
