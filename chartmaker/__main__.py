"""Run the command line with `python -m chartmaker`."""

import sys

from chartmaker.cli import main

sys.exit(main())
