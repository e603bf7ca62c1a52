heat-thaw-refrigerator = Thawed in a refrigerator at { TEMPERATURE($medium_c) }, from { TEMPERATURE(-18) }.
heat-thaw-cold-water = Thawed in a leak-proof bag in water of { TEMPERATURE($medium_c) }, changed every half hour.
heat-thaw-no-rule = No federal table gives thawing hours for this cut: these are computed, so feel for ice before you count on them.
