"""turnspit: a timed and safe plan for a roast dinner, computed backward from the minute it is served.

Rooms, from the ground up: `errors`, `message`, `spread` (values everyone shares); `reference` (published tables);
`quantities` (units and amounts); `words` (every sentence a reader sees); `heat`; `brine`, `safety`, `recipes`;
`planning`, `tracking`; `asking`, `storage`; `api`. Imports point down only.
"""
