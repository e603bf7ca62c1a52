from hypothesis import settings

settings.register_profile("no clock", deadline=None, max_examples=100)
settings.load_profile("no clock")
