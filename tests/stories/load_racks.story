Story: Two racks and one set of plates, stacked so that fewest are handled

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label        | item         | mass_lb | count |
  | Loft | straight bar | straight_bar | 45      | 2     |
  | Loft | safety bar   | safety_bar   | 65      | 1     |
  | Loft | 45 lb plate  | plate        | 45      | 4     |
  | Loft | 35 lb plate  | plate        | 35      | 2     |
  | Loft | 25 lb plate  | plate        | 25      | 2     |
  | Loft | 10 lb plate  | plate        | 10      | 6     |
  | Loft | 5 lb plate   | plate        | 5       | 2     |

# 90, 70 and 80 a side. The usual way: 45 45; 45 25; 45 35: 2 + 2 + 2 + 2 = 8 handled a side.
# Here 45 is on all the time and 25 twice: 45 35 10; 45 25; 45 35 would be eight too; it cannot be fewer.
When the coach asks load_racks
  | kit   | Loft |
  | racks | [{"loads_lb": [225, 185, 205]}] |
Then the answer
  | racks.0.name             | is       | Rack 1 |
  | racks.0.bars.0.bar       | is       | 45    |
  | racks.0.bars.0.sets      | has      | 3     |
  | racks.0.bars.0.sets.0.load.total | is | 225  |
  | racks.0.bars.0.sets.1.load.total | is | 185  |
  | racks.0.bars.0.sets.2.load.total | is | 205  |
  | moves                    | between  | 6 and 8 |
  | usual_moves              | is       | 8     |
  | proven                   | is       | true  |
  | contested                | has      | 0     |

# Both racks would like two pairs of 45, and there are two: one is stacked from other plates.
When the coach asks load_racks
  | kit   | Loft |
  | racks | [{"name": "Ona", "loads_lb": [135, 225]}, {"name": "Bo", "means": "safety_bar", "loads_lb": [155, 245]}] |
Then the answer
  | racks                    | has      | 2     |
  | racks.0.name             | is       | Ona   |
  | racks.1.bars.0.item      | is       | safety bar |
  | racks.1.bars.0.sets.1.load.total | is | 245 |
  | contested.0.label        | is       | 45 lb plate |
  | contested.0.wanted       | is       | 8     |
  | contested.0.owned        | is       | 4     |
  | lightened                | has      | 0     |
  | proven                   | is       | true  |

# Three racks want more than stands in the room: named, with what would do.
When the coach asks load_racks
  | kit   | Loft |
  | racks | [{"loads_lb": [225]}, {"loads_lb": [225]}, {"means": "safety_bar", "loads_lb": [245]}] |
Then it is refused
  | name     | is       | load_not_makeable |
  | sentence | contains | 45 lb plate (12 wanted, 4 owned) |

# A bar for each rack.
When the coach asks load_racks
  | kit   | Loft |
  | racks | [{"means": "safety_bar", "loads_lb": [65]}, {"means": "safety_bar", "loads_lb": [65]}] |
Then it is refused
  | sentence | contains | 2 racks want the safety bar |

# What no rack can be asked.
When the coach asks load_racks
  | racks | [] |
Then it is refused
  | field | is | racks |
When the coach asks load_racks
  | racks | [{"means": "dumbbell_pair", "loads_lb": [50]}] |
Then it is refused
  | name | is | method_does_not_apply |
When the coach asks load_racks
  | racks | [{"loads_lb": [135], "loads_kg": [60]}] |
Then it is refused
  | name  | is | two_units |
  | field | is | racks.0.loads_lb |
