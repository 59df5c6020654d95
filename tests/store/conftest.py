"""How the store's own properties are tried: a process that starts is slow, and that is no fault."""

from hypothesis import HealthCheck, settings

settings.register_profile(
    "store", deadline=None, suppress_health_check=[HealthCheck.too_slow], print_blob=True
)
settings.load_profile("store")
