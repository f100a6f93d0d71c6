Story: 227 lb on a bar is 225, or 230, or two small plates to buy

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label        | item         | mass_lb | count |
  | Loft | straight bar | straight_bar | 45      | 1     |
  | Loft | 45 lb plate  | plate        | 45      | 6     |
  | Loft | 25 lb plate  | plate        | 25      | 2     |
  | Loft | 10 lb plate  | plate        | 10      | 4     |
  | Loft | 5 lb plate   | plate        | 5       | 2     |
  | Loft | 2.5 lb plate | plate        | 2.5     | 2     |

When the coach asks load_bar
  | kit       | Loft |
  | target_lb | 227  |
Then the answer
  | nearest.total        | is       | 225           |
  | nearest.words        | contains | 2 x 45 a side |
  | not_above.total      | is       | 225           |
  | above.total          | is       | 230           |
  | to_add.0             | contains | 1 a side      |
  | warm_up.0.load.total | between  | 45 and 120    |

# Two pairs of tens: 85 is the bar and both of them.
When the coach asks load_bar
  | kit       | Loft |
  | target_lb | 85   |
Then the answer
  | nearest.total | is | 85 |

# Below the empty bar nothing can be made.
When the coach asks load_bar
  | kit       | Loft |
  | target_lb | 30   |
Then the answer
  | not_above     | is | null |
  | nearest.total | is | 45   |
