"""No test is timed: a property may take as long as the machine needs."""

from hypothesis import settings

settings.register_profile("no clock", deadline=None, max_examples=100)
settings.load_profile("no clock")
