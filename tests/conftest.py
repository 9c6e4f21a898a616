"""What every test folder shares: Hypothesis draws the same examples on every machine, and no window needs a screen."""

import os

from hypothesis import HealthCheck, settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

settings.register_profile(
    "repeatable",
    derandomize=True,
    database=None,
    deadline=None,  # the checks run beside one another on slow machines; time is measured in tests/benchmarks
    max_examples=60,
    suppress_health_check=[HealthCheck.too_slow],  # whole designs take long to draw and are worth it
)
settings.load_profile("repeatable")
