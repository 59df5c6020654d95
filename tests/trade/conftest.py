"""How the properties of the trade are tried: a busy machine is slow, and that is no fault."""

from hypothesis import HealthCheck, settings

settings.register_profile(
    "trade", deadline=None, suppress_health_check=[HealthCheck.too_slow], print_blob=True
)
settings.load_profile("trade")
