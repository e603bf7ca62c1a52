# Short answers to what can hurt somebody.
danger-eaten = { $seen } Throw away what is left. Fever, bloody diarrhea, vomiting that does not stop, or anyone small, pregnant, old or ill: call a doctor.
danger-cook_ahead = Yes, if it is cooked through to { TEMPERATURE(73.9) }, carved, chilled in shallow boxes within 2 h, and reheated to { TEMPERATURE(73.9) } the next day; not cooled or reheated whole.
danger-eaten_raw = Raw meat, raw egg and what touched them can make one ill, in hours or days. Fever, bloody diarrhea, vomiting that does not stop, or anyone small, pregnant, old or ill: call a doctor. That spoon goes into the wash, not back.
danger-drive = Only cold: chill it first, then in a cooler with ice at { TEMPERATURE(4.44) } or below all the way. Not kept cold, or hot at { TEMPERATURE(60) }, 2 h is all, 1 h in a hot car.
danger-not-out = No: 2 h in all out of the cold or the heat, 1 h above { TEMPERATURE(32.22) }. By then it is in the refrigerator, or it is thrown away.
danger-brine-out = No: in the refrigerator, brine and bird at { TEMPERATURE(4.44) } or below all the time. What stood in brine out of the cold for over 2 h is thrown away.
danger-refreeze-cooked = Yes: once cooked it may be frozen again, within 3–4 days, if it was chilled within 2 h.
danger-hold_which = { TEMPERATURE(57.22) } by the Food Code in a licensed kitchen, { TEMPERATURE(60) } by the consumer guidance and many local codes: { TEMPERATURE(60) } keeps both.
