Story: The sessions of a block stand in a calendar, under the same identity when the block is planned again

Given today is 2026-06-01
Given the records kit
  | kit  | label       | item       | mass_lb | count |
  | Loft | 6 lb ball   | ball       | 6       | 2     |
  | Loft | red band    | band       |         | 1     |
  | Loft | floor       | open_floor |         | 1     |
Given the records athletes
  | name          | birth_date | sex    | throwing_hand | sport    | role    | level   |
  | Märta Öström  | 2004-02-01 | female | right         | javelin  | thrower | college |
When the coach asks calendar_feed
  | athlete | Märta Öström |
Then the answer
  | sessions | is       | 0 |
  | words    | contains | no kept block |
When the coach asks plan_block
  | athlete           | Märta Öström |
  | start             | 2026-06-08 |
  | sessions_per_week | 2 |
When the coach asks calendar_feed
  | athlete | Märta Öström |
Then the answer
  | sessions | is       | 8 |
  | address  | contains | .ics |
  | text     | contains | BEGIN:VCALENDAR |
  | text     | contains | -2026-06-08-week-1-session-1@this-facility |
  | text     | contains | DTSTART;VALUE=DATE:202606 |
  | text     | contains | DTSTAMP:20260601T000000Z |
When the coach asks calendar_feed
  | athlete | Märta Östrom |
Then it is refused
  | sentence | contains | Märta Öström |
When the coach asks calendar_feed
Then it is refused
  | field | is | athlete |
