Story: A league's own table of limits is checked whole, kept with who and why, and left again; the published one stays beside it

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
# What was published: 13 to 14 years, 95 in a day, rest from 21, 36, 51 and 66 pitches. [UsaBaseballPitching]
When the coach asks pitch_rules
  | organisation | United States baseball guideline |
Then the answer
  | tables                    | has | 1             |
  | tables.0.whose            | is  | As published  |
  | tables.0.rows.3.age_low   | is  | 13            |
  | tables.0.rows.3.daily_max | is  | 95            |
  | tables.0.rows.3.rest_to.0 | is  | 20            |
  | tables.0.rows.3.rest_to.3 | is  | 65            |
  | tables.0.rows.3.months_off      | is | 4        |
  | tables.0.rows.3.months_off_from | is | throwing |
# From 15 on the four months are off from pitching, two to three of them off from all throwing. [UsaBaseballPitching]
  | tables.0.rows.4.months_off_from | is | pitching |

# A hole in the ages, a band that falls, a word nobody knows: each names its cell.
When the coach asks change_pitch_rules
  | organisation | Dockside youth league |
  | sport        | baseball              |
  | year         | 2026                  |
  | rows         | [{"age_low": 9, "age_high": 10, "daily_max": 60, "rest_to": [20, 40, 60]}, {"age_low": 12, "age_high": 13, "daily_max": 80, "rest_to": [20, 80]}] |
  | author       | Kim Osei              |
  | reason       | our fall league plays by its own |
Then it is refused
  | field    | is       | 12 to 13 years, age_low |
  | given    | is       | 12                      |
  | allowed  | is       | 11                      |
When the coach asks change_pitch_rules
  | organisation | Dockside youth league |
  | sport        | baseball              |
  | year         | 2026                  |
  | rows         | [{"age_low": 9, "age_high": 10, "daily_max": 60, "rest_to": [40, 20, 60]}] |
  | author       | Kim Osei              |
  | reason       | our fall league plays by its own |
Then it is refused
  | field    | is       | 9 to 10 years, rest_1_to |
  | sentence | contains | bands must rise          |
When the coach asks change_pitch_rules
  | organisation | Dockside youth league |
  | sport        | baseball              |
  | year         | 2026                  |
  | rows         | [{"age_low": 9, "age_high": 10, "daily_max": 60, "rest_to": [20, 60], "months_off": 3, "months_off_from": "hitting"}] |
  | author       | Kim Osei              |
  | reason       | our fall league plays by its own |
Then it is refused
  | field    | is       | rows[0].months_off_from |
  | allowed  | contains | throwing                |
When the coach asks change_pitch_rules
  | organisation | Dockside youth league |
  | sport        | baseball              |
  | year         | 2026                  |
  | rows         | [{"age_low": 9, "age_high": 10, "daily_max": 60, "rest_to": [20, 60]}] |
  | author       | Kim Osei              |
  | reason       | because               |
Then it is refused
  | field    | is       | reason |

# The league's own, with its age day.
When the coach asks change_pitch_rules
  | organisation | United States baseball guideline |
  | sport        | baseball              |
  | year         | 2027                  |
  | age_on       | 05-01                 |
  | rows         | [{"age_low": 13, "age_high": 14, "daily_max": 80, "rest_to": [20, 40, 60, 80], "months_off": 3, "months_off_from": "throwing"}] |
  | source       | league handbook, page 12 |
  | author       | Kim Osei              |
  | reason       | our fall league plays by its own |
Then the answer
  | table.kept_here             | is       | true            |
  | table.whose                  | contains | Kim Osei's word |
  | table.age_on                 | is       | 05-01           |
  | table.rows                   | has      | 1               |
  | table.rows.0.months_off_from | is       | throwing        |
  | table.published.3.daily_max  | is       | 95              |
  | words.0                      | contains | Kept as table 1 |
When the coach asks change_pitch_rules
  | organisation | United States baseball guideline |
  | sport        | baseball     |
  | published    | yes          |
  | author       | Kim Osei     |
  | reason       | the fall league is over |
Then the answer
  | table.kept_here         | is  | false |
  | table.rows.3.daily_max  | is  | 95    |
  | table.edits             | has | 2     |
  | table.edits.0.reason    | contains | our fall league |
  | table.edits.1.published | is  | true  |
