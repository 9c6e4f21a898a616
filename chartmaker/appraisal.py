"""The one place where everything is computed that screens, sheets and the command line show."""

from dataclasses import dataclass

from chartmaker.checks.finding import Finding
from chartmaker.dye.plan import BathPlan
from chartmaker.knit.layout import Fabric
from chartmaker.knit.profile import Profile
from chartmaker.knit.yarn import Requirement
from chartmaker.model.design import Design
from chartmaker.shade.lot_shade import LotShade
