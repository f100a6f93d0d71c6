Story: A plate is weighed, and every load counts what it weighs

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label                 | item         | mass_lb | count |
  | Loft | straight bar          | straight_bar | 45      | 1     |
  | Loft | hex bar, low handles  | hex_bar      | 56      | 1     |
  | Loft | hex bar, high handles | hex_bar      | 56      | 1     |
  | Loft | 45 lb plate           | plate        | 45      | 4     |
  | Loft | red band              | band         |         | 2     |

When the coach asks weigh_item
  | item    | 45 lb plate |
  | mass_lb | 44.2        |
Then the answer
  | saved   | is       | true |
  | before  | is       | 45   |
  | words.0 | contains | 44.2 lb, 1.8 % under its stamp |
  | words.1 | contains | All 4 of that label |

# Two of them on the bar: 45 + 2 x 44.2.
When the coach asks load_bar
  | target_lb | 135 |
Then the answer
  | nearest.total | between | 133.399 and 133.401 |

# The same again changes nothing.
When the coach asks weigh_item
  | item    | 45 lb plate |
  | mass_lb | 44.2        |
Then the answer
  | saved       | is | false |
  | held_before | is | true  |

# 41 lb is 8.9 % under the stamp: asked about, and kept when told to.
When the coach asks weigh_item
  | item    | 45 lb plate |
  | mass_lb | 41          |
Then the answer
  | saved    | is       | false         |
  | question | contains | 8.9 % under   |
  | question | contains | Keep it?      |
When the coach asks weigh_item
  | item    | 45 lb plate |
  | mass_lb | 41          |
  | keep    | yes         |
Then the answer
  | saved  | is | true |
  | before | is | 44.2 |

# 20.4 was meant in kg.
When the coach asks weigh_item
  | item    | 45 lb plate |
  | mass_lb | 20.4        |
Then it is refused
  | name     | is       | out_of_range |
  | sentence | contains | another unit |
  | allowed  | contains | 38.25 lb to 51.75 lb |
When the coach asks weigh_item
  | item    | 45 lb plate |
  | mass_kg | 20.4        |
Then the answer
  | saved   | is       | true |
  | words.0 | contains | under its stamp |

# One hex bar, two heights: the other line is named.
When the coach asks weigh_item
  | item    | hex bar, low handles |
  | mass_lb | 57.1                 |
Then the answer
  | saved   | is       | true |
  | words.1 | contains | hex bar, high handles |

# A label without a mass is compared with what it counted as.
When the coach asks weigh_item
  | item    | straight bar |
  | mass_lb | 35           |
Then the answer
  | question | contains | counted as 45 lb |

# What has no mass, what is not there, and a request without a number.
When the coach asks weigh_item
  | item    | red band |
  | mass_lb | 2        |
Then it is refused
  | name | is | method_does_not_apply |
When the coach asks weigh_item
  | item    | 55 lb plate |
  | mass_lb | 55          |
Then it is refused
  | name  | is | unknown_name |
  | field | is | item         |
When the coach asks weigh_item
  | item | 45 lb plate |
Then it is refused
  | field | is | mass_lb |
