Story: What stands in the gym, what it makes, and that nothing is said of purchases without a block

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label             | item         | mass_lb | count | height_cm | ratio | step_lb | most_lb |
  | Loft | straight bar      | straight_bar | 45      | 1     |           |       |         |         |
  | Loft | 45 lb plate       | plate        | 45      | 2     |           |       |         |         |
  | Loft | 35 lb plate, old  | plate        | 34.3    | 2     |           |       |         |         |
  | Loft | 10 lb plate       | plate        | 10      | 2     |           |       |         |         |
  | Loft | 20 lb dumbbell    | dumbbell     | 20      | 2     |           |       |         |         |
  | Loft | 25 lb dumbbell    | dumbbell     | 25      | 2     |           |       |         |         |
  | Loft | column            | column       |         | 1     |           | 0.5   | 10      | 100     |
  | Loft | 45 cm box         | box          |         | 1     | 45        |       |         |         |

When the coach asks kit
  | kit | Loft |
Then the answer
  | unit                | is       | lb    |
  | items               | has      | 8     |
  | items.2.stamped     | is       | 35    |
  | items.2.mass        | is       | 34.3  |
  | items.2.off_percent | between  | -2.01 and -1.99 |
  | items.2.words       | contains | 2.0 % under its stamp |
  | items.1.words       | contains | as stamped |
  | items.7.can_be_weighed | is    | false |
# Three pairs: eight loads, 45 to 45 + 2 x (45 + 34.3 + 10) = 223.6.
  | loads.0.what          | is       | straight bar |
  | loads.0.loads         | is       | 8     |
  | loads.0.lightest      | is       | 45    |
  | loads.0.heaviest      | between  | 223.599 and 223.601 |
  | loads.0.smallest_step | between  | 1.399 and 1.401 |
  | loads.0.gaps.0.from   | is       | 45    |
  | loads.0.gaps.0.to     | is       | 65    |
  | loads.0.gaps.0.percent | between | 44.4 and 44.5 |
  | loads.1.what          | is       | column |
  | loads.1.loads         | is       | 10    |
  | loads.2.what          | is       | pairs of dumbbells |
  | loads.2.gaps.0.percent | is      | 25    |
  | prescribed.sets       | is       | 0     |
  | prescribed.words      | contains | No block is kept |

When the coach asks kit
  | kit | Cellar |
Then it is refused
  | name | is | unknown_name |
