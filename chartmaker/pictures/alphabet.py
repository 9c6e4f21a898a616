"""Letters drawn for stitches, seven rounds high: our own alphabet of capitals, figures and a few marks."""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

HEIGHT = 7
"""Rounds of every letter."""
SPACE = 3
"""Stitches of a space between words, besides the gaps beside it."""
_DRAWINGS = """
A      B      C      D      E      F      G      H      I    J     K      L     M      N
.xxx.  xxxx.  .xxx.  xxxx.  xxxxx  xxxxx  .xxx.  x...x  xxx  ..xx  x...x  x...  x...x  x...x
x...x  x...x  x...x  x...x  x....  x....  x...x  x...x  .x.  ...x  x..x.  x...  xx.xx  xx..x
x...x  x...x  x....  x...x  x....  x....  x....  x...x  .x.  ...x  x.x..  x...  x.x.x  x.x.x
xxxxx  xxxx.  x....  x...x  xxxx.  xxxx.  x.xxx  xxxxx  .x.  ...x  xx...  x...  x.x.x  x.x.x
x...x  x...x  x....  x...x  x....  x....  x...x  x...x  .x.  ...x  x.x..  x...  x...x  x..xx
x...x  x...x  x...x  x...x  x....  x....  x...x  x...x  .x.  x..x  x..x.  x...  x...x  x...x
x...x  xxxx.  .xxx.  xxxx.  xxxxx  x....  .xxx.  x...x  xxx  .xx.  x...x  xxxx  x...x  x...x

O      P      Q      R      S      T      U      V      W      X      Y      Z
.xxx.  xxxx.  .xxx.  xxxx.  .xxxx  xxxxx  x...x  x...x  x...x  x...x  x...x  xxxxx
x...x  x...x  x...x  x...x  x....  ..x..  x...x  x...x  x...x  x...x  x...x  ....x
x...x  x...x  x...x  x...x  x....  ..x..  x...x  x...x  x...x  .x.x.  .x.x.  ...x.
x...x  xxxx.  x...x  xxxx.  .xxx.  ..x..  x...x  .x.x.  x.x.x  ..x..  ..x..  ..x..
x...x  x....  x.x.x  x.x..  ....x  ..x..  x...x  .x.x.  x.x.x  .x.x.  ..x..  .x...
x...x  x....  x..x.  x..x.  ....x  ..x..  x...x  .x.x.  xx.xx  x...x  ..x..  x....
.xxx.  x....  .xx.x  x...x  xxxx.  ..x..  .xxx.  ..x..  x...x  x...x  ..x..  xxxxx

0      1    2      3      4      5      6      7      8      9
.xxx.  .x.  .xxx.  .xxx.  ...x.  xxxxx  .xxx.  xxxxx  .xxx.  .xxx.
x...x  xx.  x...x  x...x  ..xx.  x....  x....  ....x  x...x  x...x
x..xx  .x.  ....x  ....x  .x.x.  x....  x....  ...x.  x...x  x...x
x.x.x  .x.  ...x.  ..xx.  x..x.  xxxx.  xxxx.  ...x.  .xxx.  .xxxx
xx..x  .x.  ..x..  ....x  xxxxx  ....x  x...x  ..x..  x...x  ....x
x...x  .x.  .x...  x...x  ...x.  ....x  x...x  ..x..  x...x  ....x
.xxx.  xxx  xxxxx  .xxx.  ...x.  xxxx.  .xxx.  ..x..  .xxx.  .xxx.

.  ,   :  !  ?      -    +      &      '  /      (   )
.  ..  .  x  .xxx.  ...  .....  .xx..  x  ....x  .x  x.
.  ..  .  x  x...x  ...  ..x..  x..x.  x  ....x  x.  .x
.  ..  x  x  ....x  ...  ..x..  x..x.  .  ...x.  x.  .x
.  ..  .  x  ...x.  xxx  xxxxx  .xx..  .  ..x..  x.  .x
.  ..  .  x  ..x..  ...  ..x..  x.x.x  .  .x...  x.  .x
.  .x  x  .  .....  ...  ..x..  x..x.  .  x....  x.  .x
x  x.  .  x  ..x..  ...  .....  .xx.x  .  x....  .x  x.
"""


@lru_cache(maxsize=1)
def glyphs() -> dict[str, NDArray[np.bool_]]:
    """Give each character's drawing, shape (7, width), as it is seen: row 0 at the top, column 0 at the left."""
    made = {" ": np.zeros((HEIGHT, SPACE), dtype=np.bool_)}
    for block in _DRAWINGS.strip().split("\n\n"):
        names, *rows = [line.split() for line in block.splitlines()]
        for place, name in enumerate(names):
            made[name] = np.array([[sign == "x" for sign in row[place]] for row in rows], dtype=np.bool_)
    return made
